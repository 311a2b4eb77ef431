import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { buildNetwork, priceTakeOff, takeOff } from '../../../engine/index.ts';
import { Exact } from '../../../engine/takeoff/money.ts';
import { readJob } from '../../../server/document/read-job.ts';
import { shippedPrices } from '../../../server/prices/shipped-prices.ts';
import { groupLines } from '../../../server/takeoff/group-lines.ts';
import { type TakeOffGrouping, takeOffGroupings } from '../../../views/take-off.ts';

const house = new URL('../../../examples/home-run-house.json', import.meta.url);

async function priced() {
  const read = await readJob(readFileSync(house));
  if (!read.ok) throw new Error(read.problems.join('; '));
  const built = buildNetwork(read.job, read.job.chosen);
  if (!built.ok) throw new Error('no tree');
  return { job: read.job, ...priceTakeOff(takeOff(built.network), await shippedPrices()) };
}

describe('the groups of a take-off', () => {
  it.each(Object.keys(takeOffGroupings) as TakeOffGrouping[])(
    'have the sum of the whole by %s',
    async (by) => {
      const { job, lines, total, hours } = await priced();
      const groups = groupLines(job, lines, by);
      expect(groups.length).toBeGreaterThan(1);
      expect(groups.reduce((sum, { cents }) => sum + cents, 0)).toBe(total!.times(100).toNumber());
      expect(groups.reduce((sum, group) => sum + group.hours, 0)).toBeCloseTo(hours, 9);
      const rows = groups.flatMap((group) => group.rows);
      const quantity = (of: readonly { quantity: InstanceType<typeof Exact> }[]) =>
        of.reduce((sum, one) => sum.plus(one.quantity), new Exact(0)).toString();
      expect(quantity(rows)).toBe(quantity(lines.map(({ line }) => line)));
    },
  );

  it('are the diameters from small to large, what has none last', async () => {
    const { job, lines } = await priced();
    const groups = groupLines(job, lines, 'size');
    expect(groups.map(({ title }) => title)).toEqual([
      '3/8 in',
      '1/2 in',
      '3/4 in',
      '1 in',
      '1-1/4 in',
      'Without a diameter',
    ]);
    // As counted by hand: 63 ft of the service, 56 of them in the ground.
    const pipe = groups[4]!.rows.find(({ item }) => item.includes('pipe'));
    expect(pipe?.quantity.toString()).toBe('63');
  });

  it('are the phases, with the 56 ft in the ground apart', async () => {
    const { job, lines } = await priced();
    const groups = groupLines(job, lines, 'phase');
    expect(groups.map(({ title }) => title)).toEqual(['Underground', 'Rough-in', 'Trim']);
    const pipe = groups[0]!.rows.filter(({ item }) => item.includes('pipe'));
    expect(pipe.map(({ quantity }) => quantity.toString())).toEqual(['56']);
  });

  it('are outdoors, the whole job and the levels as the job lists them', async () => {
    const { job, lines } = await priced();
    const titles = groupLines(job, lines, 'area').map(({ title }) => title);
    expect(titles.slice(0, 2)).toEqual(['Outdoors', 'The whole job']);
    const levels = job.levels.map(({ name }) => `Level ${name}`);
    expect(titles.slice(2)).toEqual(levels.filter((level) => titles.includes(level)));
    expect(titles.length).toBeGreaterThan(2);
  });
});
