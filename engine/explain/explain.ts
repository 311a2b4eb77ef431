import { citePoint, citeValue } from '../../tables/look-up.ts';
import { flowTestExponent } from '../../tables/supply/flow-test.ts';
import type { CurveTable } from '../../tables/table.ts';
import { waterDensity, waterViscosity } from '../../tables/water/liquid-water.ts';
import { flowTestCurve } from '../hydraulics/supply-pressure.ts';
import { rowsAround } from '../hydraulics/water.ts';
import type { InletSide, Quantity } from '../job/job.ts';
import type { Inlet } from '../network/network.ts';
import type { Report } from '../network/report.ts';
import { between, largestOf, lessAll, readOff } from './arithmetic.ts';
import { explainDemand } from './explain-demand.ts';
import { explainPressure } from './explain-pressure.ts';
import { xOf } from './explain-table.ts';
import { terms } from './fed-runs.ts';
import { cited, given, givenQuantity } from './leaf.ts';
import type { Steps } from './step.ts';
import { type Worksheet, worksheet } from './worksheet.ts';

/**
 * The steps behind one run's figures, made when somebody looks: `<run>.<quantity>` for units, demand, flow, velocity,
 * gradient, pipe-loss, fitting-loss, elevation-loss, device-loss, residual and static, with the water and the street
 * they rest on. Terms may name steps of other runs.
 *
 * @returns undefined where the scheme has no such run
 */
export function explainRun(report: Report, runId: string): Steps | undefined {
  const at = report.network.positionOf.get(runId);
  if (at === undefined) return undefined;
  const sheet = worksheet();
  explainCommon(report, sheet);
  explainDemand(report, at, sheet);
  explainPressure(report, at, sheet);
  for (const inlet of report.network.inlets) if (inlet.run === at) explainMargin(report, inlet, sheet);
  return sheet.steps;
}

/** The steps behind what is left at an inlet over its need: `<fixture>.<side>-margin`, with those of its run. */
export function explainInlet(report: Report, fixtureId: string, side: InletSide): Steps | undefined {
  const inlet = report.network.inlets.find((one) => one.fixture.id === fixtureId && one.side === side);
  return inlet === undefined ? undefined : explainRun(report, report.network.runs[inlet.run]!.id);
}

/** Every step of a scheme, each after those it uses: demand from the taps inwards, pressure from the street outwards. */
export function explainAll(report: Report): Steps {
  const { network } = report;
  const sheet = worksheet();
  for (let at = network.size - 1; at >= 0; at--) explainDemand(report, at, sheet);
  explainCommon(report, sheet);
  for (let at = 0; at < network.size; at++) explainPressure(report, at, sheet);
  for (const inlet of network.inlets) explainMargin(report, inlet, sheet);
  return sheet.steps;
}

function explainMargin({ network, solution }: Report, inlet: Inlet, sheet: Worksheet): void {
  const { fixture, side, run } = inlet;
  const need =
    inlet.pressureFrom === 'maker'
      ? givenQuantity(fixture.pressure!, 'psi', `fixture ${fixture.id}, pressure`)
      : cited(inlet.pressureFrom);
  const formula = lessAll({
    id: 'margin',
    title: `What is left over the need of ${fixture.name}, ${side}`,
    unit: 'psi',
    meaning: 'left over what the fixture needs',
    terms: ['pressure left', 'pressure needed'],
  });
  const left = {
    from: 'step',
    value: solution.residual[run]!,
    step: `${network.runs[run]!.id}.residual`,
  } as const;
  sheet.apply(`${fixture.id}.${side}-margin`, formula, terms([left, need]));
}

/** Water at both temperatures, and the street. */
function explainCommon(report: Report, sheet: Worksheet): void {
  const { basis } = report.network;
  for (const side of ['cold', 'hot'] as const) {
    const temperature = side === 'cold' ? basis.coldTemperature : basis.hotTemperature;
    explainWater(
      `water-${side}.density`,
      waterDensity,
      `Density of water, ${side}`,
      temperature,
      side,
      sheet,
    );
    explainWater(
      `water-${side}.viscosity`,
      waterViscosity,
      `Viscosity of water, ${side}`,
      temperature,
      side,
      sheet,
    );
  }
  explainStreet(report, sheet);
}

function explainWater(
  id: string,
  table: CurveTable,
  title: string,
  temperature: Quantity,
  side: 'cold' | 'hot',
  sheet: Worksheet,
): void {
  const { below, above, share } = rowsAround(table, temperature.si);
  if (share === 0) {
    sheet.apply(id, readOff('water-row', title, table.y, title), { y: cited(citePoint(table, below)) });
    return;
  }
  const formula = between(
    'water',
    title,
    { unit: 'C', meaning: 'temperature' },
    { unit: table.y, meaning: title },
  );
  sheet.apply(id, formula, {
    x: givenQuantity(temperature, 'C', `basis, ${side} temperature`),
    'x₁': xOf(table, below),
    'y₁': cited(citePoint(table, below)),
    'x₂': xOf(table, above),
    'y₂': cited(citePoint(table, above)),
  });
}

function explainStreet({ network, solution }: Report, sheet: Worksheet): void {
  const { supply } = network;
  const typed = (id: string, title: string, quantity: Quantity, field: string): void => {
    sheet.apply(id, readOff('street', title, 'psi', title), {
      y: givenQuantity(quantity, 'psi', `supply, ${field}`),
    });
  };
  const low = 'Pressure at the street, low';
  const high = 'Pressure at the street, high';
  switch (supply.kind) {
    case 'static':
      typed('street.pressure', low, supply.low, 'low');
      typed('street.static', high, supply.high, 'high');
      return;
    case 'well':
      typed('street.pressure', low, supply.cutIn, 'cut-in');
      typed('street.static', high, supply.cutOut, 'cut-out');
      return;
    case 'flow-test': {
      const still = givenQuantity(supply.static, 'psi', 'supply, static');
      sheet.apply('street.pressure', flowTestCurve, {
        p_low: supply.low === undefined ? still : givenQuantity(supply.low, 'psi', 'supply, low'),
        p_s: still,
        p_r: givenQuantity(supply.residual, 'psi', 'supply, residual'),
        Q: { from: 'step', value: solution.flow[0]!, step: `${network.runs[0]!.id}.flow` },
        Q_t: givenQuantity(supply.flow, 'gpm', 'supply, flow'),
        n: cited(citeValue(flowTestExponent)),
      });
      const top =
        supply.high === undefined
          ? given(0, 'psi', 'supply, high', 'not given')
          : givenQuantity(supply.high, 'psi', 'supply, high');
      const formula = largestOf({
        id: 'street',
        title: high,
        unit: 'psi',
        meaning: high,
        terms: ['static', 'high'],
      });
      sheet.apply('street.static', formula, terms([still, top]));
    }
  }
}
