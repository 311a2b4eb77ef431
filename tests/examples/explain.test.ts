import { describe, expect, it } from 'vitest';
import { type Basis, explainAll, type Report, type Step, type Steps, writeOut } from '../../engine/index.ts';
import { fromSI, toSI } from '../../tables/units/definitions.ts';
import { exampleNames, openExample, reportOf } from './open-example.ts';

const relative = (one: number, other: number): number =>
  one === other ? 0 : Math.abs(one - other) / Math.max(Math.abs(one), Math.abs(other));

/** The step worked again from what it says of itself. */
function again({ formula, terms }: Step): number {
  const printed = Object.entries(formula.symbols).map(([name, { unit }]) => {
    const term = terms[name];
    if (term === undefined) throw new Error(`${formula.id} has no ${name}`);
    return [name, fromSI(term.value, unit)] as const;
  });
  return toSI(formula.compute(Object.fromEntries(printed)), formula.result.unit);
}

/** What the solver found, by the id of the step that explains it. */
function solved({ network, solution, inlets }: Report): Map<string, number> {
  const figures = new Map<string, number>();
  network.runs.forEach(({ id }, at) => {
    const arrays = {
      units: solution.units,
      flow: solution.flow,
      continuous: solution.continuous,
      velocity: solution.velocity,
      gradient: solution.gradient,
      'pipe-loss': solution.pipeLoss,
      'fitting-loss': solution.fittingLoss,
      'elevation-loss': solution.elevationLoss,
      residual: solution.residual,
      static: solution.staticPressure,
      ...(network.deviceAt[at]! >= 0 ? { 'device-loss': solution.deviceLoss } : {}),
    };
    for (const [quantity, values] of Object.entries(arrays)) figures.set(`${id}.${quantity}`, values[at]!);
  });
  for (const { inlet, margin } of inlets) figures.set(`${inlet.fixture.id}.${inlet.side}-margin`, margin);
  figures.set('street.pressure', solution.supplyPressure);
  figures.set('street.static', solution.supplyStatic);
  return figures;
}

/** As the job has it, and with every other choice of the basis, so that each formula is met. */
const choices: readonly (readonly [string, Partial<Basis>])[] = [
  ['its own basis', {}],
  [
    'the other choices',
    {
      friction: 'darcy-weisbach',
      between: 'round-up',
      fittingAllowancePercent: 50,
      elevationFactor: { typed: '0.433 psi/ft', si: toSI(0.433, 'psi/ft') },
    },
  ],
  ['loading units', { demand: { method: 'en-806-3' } }],
  [
    'a table of its own',
    {
      demand: {
        method: 'own-table',
        name: 'Invented',
        points: [
          { units: 2, flow: { typed: '3 gpm', si: toSI(3, 'gpm') } },
          { units: 80, flow: { typed: '2 L/s', si: toSI(2, 'L/s') } },
        ],
      },
    },
  ],
];

describe.each(exampleNames.flatMap((name) => choices.map(([choice, basis]) => ({ name, choice, basis }))))(
  '$name, $choice',
  ({ name, basis }) => {
    const open = async (): Promise<{ report: Report; steps: Steps }> => {
      const job = await openExample(name);
      const report = reportOf({ ...job, basis: { ...job.basis, ...basis } });
      return { report, steps: explainAll(report) };
    };

    it('every step gives its value when it is worked again from its terms', async () => {
      const { steps } = await open();
      expect(steps.size).toBeGreaterThan(100);
      for (const step of steps.values()) {
        expect(relative(again(step), step.value), step.id).toBeLessThanOrEqual(1e-12);
      }
    });

    it('every term that names a step names one that came before and has its value', async () => {
      const { steps } = await open();
      const before = new Map<string, number>();
      for (const { id, terms, value } of steps.values()) {
        for (const [symbol, term] of Object.entries(terms)) {
          if (term.from !== 'step') continue;
          const named = before.get(term.step);
          expect(named, `${id}, ${symbol}: ${term.step} comes before`).toBeDefined();
          // Terms carry the solver's figure, steps their own: sums may differ in the last digits.
          expect(relative(named!, term.value), `${id}, ${symbol}: ${term.step}`).toBeLessThanOrEqual(1e-9);
        }
        before.set(id, value);
      }
    });

    it('every figure of the solver is explained, and equal to a part in a thousand million', async () => {
      const { report, steps } = await open();
      for (const [id, value] of solved(report)) {
        const step = steps.get(id);
        expect(step, id).toBeDefined();
        expect(relative(step!.value, value), `${id}: ${step!.value}, solved ${value}`).toBeLessThanOrEqual(
          1e-9,
        );
      }
    });

    it('every formula is made of its symbols, numbers and signs alone, and written out holds no symbol', async () => {
      const { steps } = await open();
      const known = new Set(['max', 'min', 'log10', 'π', 'f₄₀₀₀']);
      for (const step of steps.values()) {
        const { formula, arithmetic } = writeOut(step);
        const inside = formula.includes('√f') ? ['f'] : [];
        const right = formula.replace(/^[\p{L}]+ = /u, '');
        const words = right.match(/[\p{L}_](?:(?![²³])[\p{L}\p{N}_])*/gu) ?? [];
        for (const word of words) {
          expect([...known, ...inside, ...Object.keys(step.terms)], `${formula}: ${word}`).toContain(word);
        }
        // A product has its sign: two factors side by side could not be told from one once they are numbers.
        expect(right, step.id).not.toMatch(/[\p{L}\p{N})²] +[\p{L}\p{N}√(]/u);
        for (const word of arithmetic.replace('; so f', '').match(/[\p{L}_][\p{L}\p{N}_]*/gu) ?? []) {
          if (/^e$/.test(word)) continue;
          expect([...known, ...inside], `${step.id}: ${arithmetic}`).toContain(word);
        }
      }
    });

    it('every term from a table carries the value of its cell', async () => {
      const { steps } = await open();
      for (const { id, terms } of steps.values()) {
        for (const term of Object.values(terms)) {
          if (term.from !== 'table') continue;
          expect(relative(term.value, toSI(term.cite.printed, term.cite.unit)), id).toBeLessThanOrEqual(
            1e-12,
          );
        }
      }
    });
  },
);
