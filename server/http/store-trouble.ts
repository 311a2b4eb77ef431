import { type StoreFault, storeFault } from '../storage/store-fault.ts';

/** A store that fails, as an answer to a request. */
export interface StoreTrouble {
  readonly status: 503 | 507;
  readonly title: string;
  readonly sentence: string;
  /** Seconds after which the same request may do. */
  readonly retryAfter: number;
}

const troubles: Readonly<Record<StoreFault, StoreTrouble>> = {
  full: {
    status: 507,
    title: 'The disk is full',
    sentence:
      'The disk on which jobs are kept is full, so this change was not kept. Make room and try again; what was kept before is safe and can be read.',
    retryAfter: 60,
  },
  'read-only': {
    status: 507,
    title: 'Nothing can be kept',
    sentence:
      'The place where jobs are kept may only be read, so this change was not kept. What was kept before is safe.',
    retryAfter: 60,
  },
  busy: {
    status: 503,
    title: 'Busy',
    sentence: 'The store is busy, so nothing was changed. Try again in a few seconds.',
    retryAfter: 5,
  },
  // Where the connection breaks while a change is being kept, nobody can say yet whether it was.
  gone: {
    status: 503,
    title: 'The store does not answer',
    sentence:
      'The store of jobs does not answer. Nothing that was kept is lost. If you were changing something, open the page again when the store is back and see whether the change is there.',
    retryAfter: 5,
  },
  damaged: {
    status: 503,
    title: 'The store is damaged',
    sentence: 'The store of jobs cannot be read. It was left as it is. Restore a backup, or ask for help.',
    retryAfter: 60,
  },
};

/** What to answer where an error is the store's; undefined for any other error. */
export function storeTrouble(error: unknown): StoreTrouble | undefined {
  const fault = storeFault(error);
  return fault === undefined ? undefined : troubles[fault];
}
