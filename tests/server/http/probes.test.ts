import { describe, expect, it } from 'vitest';
import { failureWithoutWords } from '../../../server/http/log.ts';
import { testApp } from '../test-app.ts';

describe('probes', () => {
  it('say that the process and its store answer, and that the store does not', async () => {
    const { app, store } = await testApp();
    expect((await app.inject('/health')).statusCode).toBe(200);
    expect((await app.inject('/ready')).statusCode).toBe(200);
    await store.destroy();
    expect((await app.inject('/health')).statusCode).toBe(200);
    const ready = await app.inject('/ready');
    expect(ready.statusCode).toBe(503);
    expect(ready.body).toBe('the store does not answer\n');
  });

  it('give figures by route, and neither ids nor addresses', async () => {
    const { app, id, post } = await testApp();
    await app.inject(`/jobs/${id}`);
    await app.inject(`/jobs/${id}`);
    await post(`/jobs/${id}/runs/T1/line`, { line: 'x' });
    await app.inject('/nothing-of-the-kind');
    const answer = await app.inject('/metrics');
    expect(answer.headers['content-type']).toMatch(/^text\/plain; version=/);
    const { body } = answer;
    expect(body).toContain('hightap_http_answers_total{method="GET",route="/jobs/:id",status="2xx"} 2');
    expect(body).toContain('hightap_http_answers_total{method="GET",route="none",status="4xx"} 1');
    expect(body).toMatch(
      /hightap_http_answer_seconds_count\{method="POST",route="\/jobs\/:id\/runs\/:place\/line"\} 1/,
    );
    expect(body).toContain('hightap_process_resident_memory_bytes');
    expect(body).not.toContain(id);
    expect(body).not.toContain('nothing-of-the-kind');
  });
});

describe('failureWithoutWords', () => {
  it('keeps where a fault happened and none of what was typed', () => {
    const error = new TypeError('cannot read "Aunt May\'s house"\n at the second line');
    const told = failureWithoutWords(error);
    expect(told.type).toBe('TypeError');
    expect(told.stack).toContain('probes.test.ts');
    expect(JSON.stringify(told)).not.toContain('Aunt May');
  });
});
