import { describe, expect, it } from 'vitest';
import { editActions } from '../../../server/routes/edits.ts';
import { swapped, testApp } from '../test-app.ts';

const basis = {
  profile: 'irc-2021',
  between: 'interpolate',
  friction: 'hazen-williams',
  coldTemperature: '60 F',
  hotTemperature: '120 F',
  units: 'us',
};

interface Case {
  readonly path: string;
  readonly place: string;
  readonly fields: Record<string, string>;
  /** Stands in the document afterwards. */
  readonly kept: string;
  /** Stands in the document afterwards no more. */
  readonly gone?: string;
  /** A form that is refused, the field that says why, and what it says. */
  readonly bad?: readonly [fields: Record<string, string>, field: string, says: RegExp];
}

const cases: readonly Case[] = [
  {
    path: '/runs',
    place: '',
    fields: { from: 'T1', id: 'X1', line: "1/2 PEX 7' 1 ell" },
    kept: "1/2 PEX 7' 1 ell",
    bad: [{ from: 'NONE', id: '', line: "1/2 PEX 7'" }, 'add-run:from', /no run NONE/],
  },
  {
    path: '/runs/:place/line',
    place: 'SHH',
    fields: { line: "3/4 PEX 16' up 6' 2 ells to SH hot" },
    kept: "3/4 PEX 16' up 6' 2 ells to SH hot",
    gone: "1/2 PEX 15' up 6'",
    bad: [{ line: "9/9 PEX 16' to SH hot" }, '', /9\/9/],
  },
  {
    path: '/runs/:place',
    place: 'T2',
    fields: {
      id: 'T2',
      from: 'T1',
      size: '1',
      material: 'copper-l',
      joint: '',
      length: '11',
      rise: '',
      fittings: '1 through tee',
      end: '',
      note: 'joist bay',
    },
    kept: '1 copper L 11 ft 1 through tee',
    gone: "3/4 PEX 10'",
    bad: [
      {
        id: 'T2',
        from: 'T1',
        size: '1',
        material: 'pex',
        joint: '',
        length: '62 psi',
        rise: '',
        fittings: '',
        end: '',
        note: '',
      },
      'run:T2:edit:length',
      /62 psi.*pressure.*length/,
    ],
  },
  {
    path: '/runs/:place/under',
    place: 'T2',
    fields: { line: "1/2 PEX 3'", insert: 'yes' },
    kept: "1/2 PEX 3'",
  },
  {
    path: '/runs/:place/after',
    place: 'T2',
    fields: { line: "1/2 PEX 7' 1 ell" },
    kept: "1/2 PEX 7' 1 ell",
    bad: [{ line: "9/9 PEXX 16'" }, 'run:T2:after:line', /PEXX/],
  },
  {
    path: '/runs/:place/move',
    place: 'T2',
    fields: { move: 'copy' },
    kept: '"R1"',
    bad: [{ move: 'in' }, '', /HBR.*ends at a fixture/],
  },
  {
    path: '/runs/:place/delete',
    place: 'RC',
    fields: {},
    kept: 'T2',
    gone: '"id": "RC"',
  },
  {
    path: '/fixtures',
    place: '',
    fields: {
      name: 'Second lavatory',
      kind: 'lavatory',
      level: 'L2',
      room: '',
      coldFrom: 'RC',
      coldLine: "1/2 PEX 4'",
      hotFrom: 'RH',
      hotLine: "1/2 PEX 5'",
    },
    kept: 'Second lavatory',
    bad: [
      {
        name: 'Second lavatory',
        kind: 'lavatory',
        coldFrom: 'RC',
        coldLine: "1/2 PEX 4'",
        hotFrom: '',
        hotLine: '',
      },
      'add-fixture:hotFrom',
      /hot side/,
    ],
  },
  {
    path: '/fixtures/:place',
    place: 'SH',
    fields: {
      id: 'SH',
      name: 'Overhead shower',
      kind: 'shower',
      count: '1',
      use: 'private',
      level: 'L2',
      flow: '2',
    },
    kept: 'Overhead shower',
    gone: 'Rain shower',
    bad: [
      { id: 'SH', name: 'x', kind: 'shower', count: '0', use: 'private' },
      'fixture:SH:edit:count',
      /whole number/,
    ],
  },
  { path: '/fixtures/:place/delete', place: 'HB', fields: {}, kept: '"KS"', gone: '"HB"' },
  {
    path: '/levels',
    place: '',
    fields: { name: 'Attic', elevation: '22' },
    kept: '"elevation": "22 ft"',
    bad: [{ name: 'Attic', elevation: 'high' }, 'add-level:elevation', /high/],
  },
  {
    path: '/levels/:place',
    place: 'L1',
    fields: { name: 'Garden floor', elevation: '3 ft' },
    kept: 'Garden floor',
    gone: 'Ground floor',
    bad: [{ name: '', elevation: '3 ft' }, 'level:L1:name', /name/],
  },
  { path: '/levels/:place/delete', place: 'L3', fields: {}, kept: 'L1', gone: '"L3"' },
  {
    path: '/groups',
    place: '',
    fields: { name: 'Scullery', kind: 'kitchen' },
    kept: 'Scullery',
    bad: [{ name: 'x', kind: 'sauna' }, 'add-group:kind', /full-bath/],
  },
  {
    path: '/groups/:place',
    place: 'G1',
    fields: { name: 'Top bath', kind: 'half-bath' },
    kept: 'Top bath',
    gone: 'Upper bath',
  },
  { path: '/groups/:place/delete', place: 'G1', fields: {}, kept: 'L1', gone: 'G1' },
  {
    path: '/supply',
    place: '',
    fields: { kind: 'flow-test', static: '70', residual: '50', flow: '40', elevation: '0 ft' },
    kept: '"residual": "50 psi"',
    gone: '"low": "55 psi"',
    bad: [{ kind: 'static', low: '80 psi', high: '60 psi', elevation: '0 ft' }, '', /low.*high/],
  },
  {
    path: '/basis',
    place: '',
    fields: { ...basis, friction: 'darcy-weisbach', fittingAllowancePercent: '50' },
    kept: 'darcy-weisbach',
    gone: 'hazen-williams',
    bad: [{ ...basis, hotTemperature: '120 psi' }, 'basis:hotTemperature', /temperature/],
  },
  {
    path: '/scheme',
    place: '',
    fields: { chosen: 'S1' },
    kept: '"chosen": "S1"',
    bad: [{ chosen: 'S9' }, '', /no scheme S9/],
  },
  {
    path: '/job',
    place: '',
    fields: { name: 'Renamed cottage', note: '', chosen: 'S1' },
    kept: 'Renamed cottage',
    gone: 'Fern End',
    bad: [{ name: '', note: '', chosen: 'S1' }, 'job:name', /name/],
  },
];

type Refusal = Case & { readonly bad: NonNullable<Case['bad']> };

const refusals = cases.filter((one): one is Refusal => one.bad !== undefined);

function addressOf(id: string, path: string, place: string): string {
  return `/jobs/${id}${path.replace(':place', place)}`;
}

/** What the page's script says of the panel that a form stands in. */
function unfolded(path: string, place: string): Record<string, string> {
  const panel = editActions.find((action) => action.path === path)?.panel?.(place);
  return panel === undefined ? {} : { livePanels: panel };
}

/** A level without fixtures, so that it may be deleted. */
async function appWithSpareLevel() {
  const test = await testApp();
  for (const name of ['Attic']) await test.post(`/jobs/${test.id}/levels`, { name, elevation: '22 ft' });
  return test;
}

describe('every form of the workbench', () => {
  it('has a case here', () => {
    expect(cases.map(({ path }) => path).sort()).toEqual(editActions.map(({ path }) => path).sort());
  });

  describe.each(cases)('$path', ({ path, place, fields, kept, gone }) => {
    const address = (id: string) => addressOf(id, path, place);

    it('works without the script', async () => {
      const { post, id, document, app } = place === 'L3' ? await appWithSpareLevel() : await testApp();
      const answer = await post(address(id), fields);
      expect(answer.statusCode).toBe(303);
      expect(answer.headers.location).toMatch(new RegExp(`^/jobs/${id}#`));
      expect(await document()).toContain(kept);
      if (gone !== undefined) expect(await document()).not.toContain(gone);
      expect((await app.inject(`/jobs/${id}`)).statusCode).toBe(200);
    });

    it('works with the script', async () => {
      const { postInPlace, id, document } = place === 'L3' ? await appWithSpareLevel() : await testApp();
      const answer = await postInPlace(address(id), { ...fields, ...unfolded(path, place) });
      expect(answer.statusCode).toBe(200);
      expect(answer.body).not.toContain('<!doctype html>');
      expect(answer.body).not.toContain('<!--here-->');
      expect(swapped(answer.body)).toContain('here');
      expect(swapped(answer.body).length).toBeGreaterThan(2);
      expect(await document()).toContain(kept);
    });
  });

  it.each(refusals)('refuses what does not do, and changes nothing: $path', async ({ path, place, bad }) => {
    const { post, postInPlace, id, document } = await testApp();
    const before = await document();
    const [wrong, field, says] = bad;
    const page = await post(addressOf(id, path, place), wrong);
    expect(page.statusCode).toBe(422);
    expect(page.body).toContain('<!doctype html>');
    expect(page.body).toMatch(says);
    expect(page.body).toContain('Nothing was changed');
    if (field !== '') {
      expect(page.body).toContain(`id="${field}:problem"`);
      expect(page.body).toMatch(new RegExp(`id="${field}"[^>]*aria-describedby="${field}:problem`));
    }
    const parts = await postInPlace(addressOf(id, path, place), { ...wrong, ...unfolded(path, place) });
    expect(parts.statusCode).toBe(422);
    expect(parts.body).toMatch(says);
    expect(swapped(parts.body)).toHaveLength(2);
    expect(await document()).toBe(before);
  });
});

describe('an edit in place', () => {
  it('sends the row that changed and the rows that it changes, not the forms beside it', async () => {
    const { postInPlace, id } = await testApp();
    const answer = await postInPlace(`/jobs/${id}/runs/SHH/line`, {
      line: "1/2 PEX 45' up 6' 1 tee 2 ells to SH hot",
    });
    const ids = swapped(answer.body);
    expect(ids).toContain('answer');
    expect(ids).toContain('path');
    expect(ids).toContain('fresh');
    expect(answer.body).toContain('<data value="run:SHH:residual">');
    expect(answer.body).not.toContain('<data value="run:KSC:');
    expect(ids).not.toContain('runs');
    expect(ids).not.toContain('basis:fields');
  });

  it('changes nothing and sends little where nothing changed', async () => {
    const { postInPlace, id, document } = await testApp();
    await postInPlace(`/jobs/${id}/job`, { name: 'Other', note: '', chosen: 'S1' });
    const before = await document();
    const answer = await postInPlace(`/jobs/${id}/job`, { name: 'Other', note: '', chosen: 'S1' });
    expect(swapped(answer.body)).toEqual(['here', 'notice', 'job:fields']);
    expect(await document()).toBe(before);
  });

  it('is merged with what was saved since the page was loaded, and says so', async () => {
    for (const how of ['post', 'postInPlace'] as const) {
      const test = await testApp();
      const { post, id, document } = test;
      await post(`/jobs/${id}/levels`, { name: 'Attic', elevation: '22 ft', revision: '1' });
      const answer = await test[how](`/jobs/${id}/runs/SHH/line`, {
        line: "1/2 PEX 45' up 6' 1 tee 2 ells to SH hot",
        revision: '1',
      });
      expect(answer.statusCode).toBe(200);
      expect(answer.body).toContain('merged with a change made elsewhere: Level Attic (L3) added.');
      expect(answer.body).toContain('id="level:L3');
      expect(await document()).toContain('Attic');
      expect(await document()).toContain('45');
    }
  });

  it('gives two people who each add something both of it', async () => {
    const { post, id, document } = await testApp();
    await post(`/jobs/${id}/levels`, { name: 'Attic', elevation: '22 ft', revision: '1' });
    const answer = await post(`/jobs/${id}/levels`, { name: 'Cellar', elevation: '-8 ft', revision: '1' });
    expect(answer.body).toContain('Your L3 is called L4 now');
    expect(await document()).toContain('Attic');
    expect(await document()).toContain('Cellar');
  });

  it('shows both sides where the same was changed elsewhere, and keeps what was typed', async () => {
    for (const how of ['post', 'postInPlace'] as const) {
      const test = await testApp();
      const { post, id, document } = test;
      await post(`/jobs/${id}/runs/SHH/line`, { line: "1/2 PEX 45' up 6' 1 tee 2 ells to SH hot" });
      const before = await document();
      const mine = { line: "1/2 PEX 30' up 6' 1 tee 2 ells to SH hot" };
      const answer = await test[how](`/jobs/${id}/runs/SHH/line`, { ...mine, revision: '1' });
      expect(answer.statusCode).toBe(409);
      expect(answer.body).toContain('Yours: Run SHH: length 15&#39; becomes 30&#39;.');
      expect(answer.body).toContain('Elsewhere: Run SHH: length 15&#39; becomes 45&#39;.');
      expect(answer.body).toMatch(/id="run:SHH:line:line"[^>]*value="1\/2 PEX 30' up 6'/);
      expect(await document()).toBe(before);
      const again = await test[how](`/jobs/${id}/runs/SHH/line`, { ...mine, revision: '2' });
      expect(again.statusCode).toBeLessThan(400);
      expect(await document()).toContain("30'");
    }
  });

  it('is refused in words where nobody knows the revision of its page', async () => {
    const { post, postInPlace, id, document } = await testApp();
    const before = await document();
    for (const send of [post, postInPlace]) {
      const answer = await send(`/jobs/${id}/levels`, { name: 'Cellar', elevation: '-8 ft', revision: '77' });
      expect(answer.statusCode).toBe(409);
      expect(answer.body).toContain('was changed elsewhere');
    }
    expect(await document()).toBe(before);
  });

  it('goes by the revision of the page as it is now, not as it was loaded', async () => {
    const { postInPlace, id } = await testApp();
    await postInPlace(`/jobs/${id}/levels`, {
      name: 'Attic',
      elevation: '22 ft',
      revision: '1',
      liveRevision: '1',
    });
    const answer = await postInPlace(`/jobs/${id}/levels`, {
      name: 'Loft',
      elevation: '30 ft',
      revision: '1',
      liveRevision: '2',
    });
    expect(answer.statusCode).toBe(200);
  });

  it('gets a whole page back for a history restore', async () => {
    const { app, id } = await testApp();
    const headers = { 'hx-request': 'true', 'hx-history-restore-request': 'true' };
    expect((await app.inject({ url: `/jobs/${id}/path?path=KS.cold`, headers })).body).toContain(
      '<!doctype html>',
    );
  });

  it('keeps the chosen path', async () => {
    const { postInPlace, post, id } = await testApp();
    const answer = await postInPlace(`/jobs/${id}/runs/KSC/line`, {
      line: "1/2 PEX 22' to KS cold",
      livePath: 'KS.cold',
    });
    expect(answer.body).toContain('Kitchen sink, cold:');
    const page = await post(`/jobs/${id}/levels`, { name: 'Attic', elevation: '22 ft', path: 'KS.cold' });
    expect(page.headers.location).toContain('?path=KS.cold#');
  });
});

describe('the kind of supply', () => {
  it('asks for the fields of the new kind before anything changes', async () => {
    const { post, id, document } = await testApp();
    const before = await document();
    const answer = await post(`/jobs/${id}/supply`, {
      kind: 'well',
      low: '55 psi',
      high: '75 psi',
      elevation: '0 ft',
    });
    expect(answer.statusCode).toBe(422);
    expect(answer.body).toContain('id="supply:cutIn"');
    expect(answer.body).toContain('Fill in these fields');
    expect(await document()).toBe(before);
  });
});
