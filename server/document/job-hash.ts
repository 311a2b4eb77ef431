import { createHash } from 'node:crypto';
import type { Job } from '../../engine/job/job.ts';
import { writeJob } from './write-job.ts';

/** Digits of a hash that a page of paper carries; enough to tell the files of a firm apart. */
const markDigits = 12;
const leastDigits = 8;

/**
 * SHA-256 of a job as Hightap writes its file, in hexadecimal: two files that say the same, however they are laid out,
 * have one hash, and any change of what they say gives another.
 */
export function jobHash(job: Job): string {
  return createHash('sha256').update(writeJob(job), 'utf8').digest('hex');
}

/** The first digits of a hash as they stand on paper, in groups that an eye can follow: `3f9a-1c2b-77de`. */
export function hashMark(hash: string): string {
  return (
    hash
      .slice(0, markDigits)
      .match(/.{1,4}/g)
      ?.join('-') ?? ''
  );
}

/**
 * Whether a hash read off paper is that of a file: in whole or its first digits, with or without hyphens and spaces, in
 * capitals or not; `undefined` where it is no such hash.
 */
export function hashMatches(hash: string, read: string): boolean | undefined {
  const digits = read.replace(/[\s-]/g, '').toLowerCase();
  const isHash = /^[0-9a-f]+$/.test(digits) && digits.length >= leastDigits && digits.length <= hash.length;
  return isHash ? hash.startsWith(digits) : undefined;
}
