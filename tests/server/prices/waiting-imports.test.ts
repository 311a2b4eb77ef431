import { describe, expect, it } from 'vitest';
import { waitingImports } from '../../../server/prices/waiting-imports.ts';
import { smallBook } from '../../engine/takeoff/small-book.ts';

const table = new TextEncoder().encode('item,material,size,price,hours\npipe,pex,3/4 in,0.9,0.03\n');
const at = (minute: number) => new Date(Date.UTC(2026, 0, 1, 0, minute));

describe('uploaded files that wait to be confirmed', () => {
  it('are read, and found by their token in their book only', async () => {
    const waiting = waitingImports();
    const started = waiting.start(table, 'a', 4, at(0), smallBook);
    expect(started.result).toBeUndefined();
    await started.done;
    expect(started.result?.ok === true && started.result.preview.changes.changed).toHaveLength(1);
    expect(waiting.find(started.token, 'a', at(1))).toBe(started);
    expect(waiting.find(started.token, 'b', at(1))).toBeUndefined();
    waiting.forget(started.token);
    expect(waiting.find(started.token, 'a', at(1))).toBeUndefined();
  });

  it('wait an hour, and eight of them at most', async () => {
    const waiting = waitingImports();
    const started = Array.from({ length: 9 }, () => waiting.start(table, 'a', 1, at(0), smallBook));
    await Promise.all(started.map(({ done }) => done));
    const found = (minute: number) =>
      started.filter(({ token }) => waiting.find(token, 'a', at(minute)) !== undefined).length;
    expect(found(60)).toBe(8);
    expect(waiting.find(started[0]!.token, 'a', at(0))).toBeUndefined();
    expect(found(61)).toBe(0);
    expect(found(0)).toBe(0);
  });
});
