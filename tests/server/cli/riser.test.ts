import { describe, expect, it } from 'vitest';
import { writeJob } from '../../../server/document/write-job.ts';
import { buildingJob } from '../../bench/building-job.ts';
import { exampleFiles, fileOf, jobFile, run } from './run.ts';

describe('hightap riser', () => {
  it.each(exampleFiles())('prints one SVG that needs nothing beside it: %s', async (file) => {
    const { code, stdout, stderr } = await run(['riser', file]);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect(stdout).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg".*<\/svg>\n$/s);
    expect(stdout).not.toMatch(/<a |<script|<style|href=|url\(/);
    expect(stdout).toMatch(/<text[^>]* class="text-end">/);
  });

  it('escapes what somebody typed', async () => {
    const { stdout } = await run(['riser', jobFile({ name: '<b>Ford & "Son"</b>' })]);
    expect(stdout).toContain('&lt;b>Ford &amp; &#34;Son&#34;&lt;/b>');
    expect(stdout).not.toContain('<b>');
  });

  it('refuses a scheme that is too large to draw, and one that is not there', async () => {
    const large = await run(['riser', fileOf(writeJob(buildingJob(601)))]);
    expect(large.code).toBe(2);
    expect(large.stderr).toContain('601 runs; no more than 600');
    expect((await run(['riser', jobFile(), '--scheme', 'none'])).code).toBe(2);
  });
});
