import type { UnitSystem } from '../../engine/job/job.ts';
import type { SupplyCurve, SupplyPoint } from '../../engine/network/supply-curve.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { figureWithUnit, fixed, unitSymbol } from '../text/figure.ts';
import { PlotGrid, PlotMark } from './plot-grid.tsx';
import { apart, scale, tenth } from './plot-scale.ts';

interface Props {
  /** All that the drawing says, in a sentence. */
  readonly title: string;
  readonly curve: SupplyCurve;
  readonly system: UnitSystem;
  /** Upright lines at flows beside the demand's. */
  readonly marks: readonly { readonly flow: number; readonly label: string }[];
}

const shapes = {
  wide: { width: 1060, height: 400, left: 56, right: 150, top: 34, bottom: 48, across: 10, up: 6 },
  narrow: { width: 380, height: 320, left: 38, right: 100, top: 30, bottom: 44, across: 4, up: 5 },
} as const;

/** Pressure upwards against flow along: at the street, behind the service, and both at the demand. */
export function SupplyPlot(props: Props): JSX.Element {
  return (
    <>
      <Plot {...props} shape="wide" />
      <Plot {...props} shape="narrow" />
    </>
  );
}

function Plot(props: Props & { readonly shape: keyof typeof shapes }): JSX.Element {
  const { curve, shape, system } = props;
  const sheet = shapes[shape];
  const { points, demand } = curve;
  const perFlow = 1 / toSI(1, displayUnits[system].flow.unit);
  const perPressure = 1 / toSI(1, displayUnits[system].pressure.unit);
  const all = [...points, demand];
  const flows = { least: 0, most: Math.max(...all.map(({ flow }) => flow)) };
  const pressures = {
    least: Math.min(0, ...all.map(({ behindService }) => behindService)),
    most: Math.max(...all.map(({ atStreet, behindService }) => Math.max(atStreet, behindService))) * 1.08,
  };
  const x = scale(flows, perFlow, sheet.left, sheet.width - sheet.right, sheet.across);
  const y = scale(pressures, perPressure, sheet.height - sheet.bottom, sheet.top, sheet.up);
  const titleId = `supply-plot-${shape}`;
  const last = points.at(-1) ?? demand;
  const lines = [
    { name: 'street', words: 'at the street', of: (point: SupplyPoint) => point.atStreet },
    { name: 'behind', words: 'behind the service', of: (point: SupplyPoint) => point.behindService },
  ] as const;
  const heights = apart(
    lines.map(({ of }) => y.at(of(last))),
    16,
    sheet.height - sheet.bottom,
  );
  return (
    <svg
      class={`plot supply-plot ${shape}`}
      viewBox={`0 0 ${sheet.width} ${sheet.height}`}
      role="img"
      aria-labelledby={titleId}
      focusable="false"
    >
      <title id={titleId} safe>
        {props.title}
      </title>
      <PlotGrid
        sheet={sheet}
        x={x}
        y={y}
        xWords={(flow) => markWords(flow * perFlow)}
        yWords={(pressure) => markWords(pressure * perPressure)}
        label={`flow, ${unitSymbol('flow', system)}`}
      />
      <text class="axis" x={4} y={12} safe>
        {unitSymbol('pressure', system)}
      </text>
      {props.marks.map(({ flow, label }) => (
        <PlotMark sheet={sheet} at={x.at(flow)} label={label} atFoot />
      ))}
      <PlotMark
        sheet={sheet}
        at={x.at(demand.flow)}
        label={`demand ${figureWithUnit(demand.flow, 'flow', system)}`}
      />
      {lines.map(({ name, words, of }, at) => (
        <>
          <path
            class={`line ${name}`}
            d={points
              .map((point, step) => `${step ? 'L' : 'M'}${x.at(point.flow)} ${y.at(of(point))}`)
              .join('')}
          />
          <circle class={`met ${name}`} cx={x.at(demand.flow)} cy={y.at(of(demand))} r="5" />
          <text x={x.at(last.flow) + 6} y={tenth(heights[at]! + 4)} safe>
            {shape === 'wide' ? words : words.replace('behind the ', 'behind ')}
          </text>
        </>
      ))}
    </svg>
  );
}

/** A round value of an axis, in no more digits than it takes. */
function markWords(value: number): string {
  return fixed(value, 2).replace(/\.?0+$/, '') || '0';
}
