import { describe, expect, it } from 'vitest';
import { testApp } from '../test-app.ts';

describe('adding many runs', () => {
  it('shows what each line becomes before anything changes, then adds them', async () => {
    const { app, post, id, document } = await testApp();
    const before = await document();
    const address = `/jobs/${id}/add-runs`;
    expect((await app.inject(address)).statusCode).toBe(200);
    const fields = { revision: '1', from: 'T1', lines: "A; 3/4 PEX 8' 1 tee\n  1/2 PEX 6' <b>" };
    const looked = await post(address, { ...fields, step: 'look' });
    expect(looked.statusCode).toBe(422);
    expect(looked.body).toContain('1 of 2 lines will not do');
    expect(looked.body).not.toContain('<b>');
    expect(looked.body).not.toContain('value="add"');
    const good = { ...fields, lines: "A; 3/4 PEX 8' 1 tee\n  1/2 PEX 6'" };
    const shown = await post(address, { ...good, step: 'look' });
    expect(shown.statusCode).toBe(200);
    expect(shown.body).toContain('Add 2 runs');
    expect(await document()).toBe(before);
    const added = await post(address, { ...good, step: 'add' });
    expect([added.statusCode, added.headers.location]).toEqual([303, `/jobs/${id}#layout`]);
    expect(JSON.parse(await document()).schemes[0].runs.slice(-2)).toMatchObject([
      { id: 'A', from: 'T1', line: "3/4 PEX 8' 1 tee" },
      { id: 'R1', from: 'A', line: "1/2 PEX 6'" },
    ]);
  });

  it('adds none where one will not do, or where they make no tree', async () => {
    const { post, id, document } = await testApp();
    const before = await document();
    const add = (lines: string) =>
      post(`/jobs/${id}/add-runs`, { revision: '1', from: '', lines, step: 'add' });
    expect((await add("A; T1; 3/4 PEX 8'\nB; A; nonsense")).statusCode).toBe(422);
    const loop = await add("A; B; 3/4 PEX 8'\nB; A; 1/2 PEX 5'");
    expect(loop.statusCode).toBe(422);
    const behind = await add("A; KSC; 3/4 PEX 8'");
    expect(behind.statusCode).toBe(422);
    expect(behind.body).toContain('nothing can follow there');
    expect(await document()).toBe(before);
  });
});
