import { describe, expect, it } from 'vitest';
import { readDemandForm } from '../../../server/forms/demand-form.ts';
import { toSI } from '../../../tables/units/definitions.ts';

const gpm = (value: number) => ({ typed: `${value} gpm`, si: expect.closeTo(toSI(value, 'gpm'), 12) });

const own = (table: string) =>
  readDemandForm(
    { demandMethod: 'own-table', demandTableName: 'County', demandTable: table },
    'us',
    'ipc-2018',
  );

describe('the demand method of a form', () => {
  it('is left to the code where none is chosen or sent', () => {
    expect(readDemandForm({}, 'us', 'ipc-2018')).toEqual({ ok: true, value: undefined });
    expect(readDemandForm({ demandMethod: '' }, 'us', 'ipc-2018')).toEqual({ ok: true, value: undefined });
  });

  it('is refused where there is no such method', () => {
    expect(readDemandForm({ demandMethod: 'guess' }, 'us', 'ipc-2018')).toMatchObject({
      ok: false,
      problems: { demandMethod: expect.stringContaining('Choose a demand method') },
    });
  });

  it('begins a table of the job’s own as that of the code', () => {
    const read = readDemandForm({ demandMethod: 'own-table' }, 'us', 'irc-2021');
    expect(read).toMatchObject({ ok: true, value: { method: 'own-table' } });
    if (!read.ok || read.value?.method !== 'own-table') return;
    expect(read.value.points[9]).toEqual({ units: 10, flow: gpm(14.6) });
    expect(read.value.points).toHaveLength(42);
  });

  it('reads a row from each line, in the unit of the field or its own', () => {
    expect(own('10 14.6\n\n 20,19.6 gpm\r\n 50 2 L/s ')).toEqual({
      ok: true,
      value: {
        method: 'own-table',
        name: 'County',
        points: [
          { units: 10, flow: gpm(14.6) },
          { units: 20, flow: gpm(19.6) },
          { units: 50, flow: { typed: '2 L/s', si: 0.002 } },
        ],
      },
    });
  });

  it.each([
    ['10 14.6', /Give 2 to 100 rows/],
    ['10 14.6\nten', /ten.* is no row/],
    ['10 14.6\n20 psi', /expected a flow/],
    ['10 14.6\n20 0', /above zero/],
    ['10 14.6\n10 15', /units that rise/],
    ['10 14.6\n20 14', /flows that never fall/],
  ])('refuses %j in one sentence', (table, problem) => {
    expect(own(table)).toMatchObject({
      ok: false,
      problems: { demandTable: expect.stringMatching(problem) },
    });
  });
});
