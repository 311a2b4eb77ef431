import type { UnitSystem } from '../../engine/job/job.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { figure } from '../text/figure.ts';
import { wholeMoney } from '../text/money.ts';
import { type Corner, type CostLine, inSight } from './cost-curves.ts';
import { PlotGrid, PlotMark } from './plot-grid.tsx';
import { apart, type Scale, type Span, scale, tenth } from './plot-scale.ts';

export interface CostPlotProps {
  /** Id of the drawing's title, apart from the shape. */
  readonly id: string;
  /** All that the drawing says, in a sentence. */
  readonly title: string;
  readonly pressureLabel: string;
  readonly system: UnitSystem;
  readonly currency: string;
  readonly span: Span;
  readonly lines: readonly CostLine[];
  /** Upright lines at pressures. */
  readonly marks: readonly { readonly pressure: number; readonly label: string }[];
}

const shapes = {
  wide: { width: 1060, height: 420, left: 68, right: 34, top: 30, bottom: 48, across: 10, up: 6 },
  narrow: { width: 380, height: 340, left: 54, right: 22, top: 28, bottom: 44, across: 5, up: 5 },
} as const;

/** Cost upwards against pressure along, for screens and for phones; the table beside it holds the same figures. */
export function CostPlot(props: CostPlotProps): JSX.Element {
  return (
    <>
      <Plot {...props} shape="wide" />
      <Plot {...props} shape="narrow" />
    </>
  );
}

function Plot(props: CostPlotProps & { readonly shape: keyof typeof shapes }): JSX.Element {
  const { span, lines, shape, system, currency } = props;
  const { width, height, left, right, top, bottom, across, up } = shapes[shape];
  const x = scale(span, 1 / toSI(1, displayUnits[system].pressure.unit), left, width - right, across);
  const y = scale(costSpan(lines, span), 1 / 100, height - bottom, top, up);
  const titleId = `${props.id}-${shape}`;
  const base = height - bottom;
  return (
    <svg
      class={`cost-plot ${shape}`}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-labelledby={titleId}
      focusable="false"
    >
      <title id={titleId} safe>
        {props.title}
      </title>
      <PlotGrid
        sheet={shapes[shape]}
        x={x}
        y={y}
        xWords={(pressure) => wholeFigure(pressure, system)}
        yWords={(cents) => wholeMoney(cents, currency)}
        label={props.pressureLabel}
      />
      {props.marks.map(({ pressure, label }) => (
        <PlotMark sheet={shapes[shape]} at={x.at(pressure)} label={label} />
      ))}
      {lines
        .map((line, at) => ({ ...line, at }))
        .sort((one, other) => Number(one.strong) - Number(other.strong))
        .map(({ corners, strong, at }) => (
          <path
            class={`line dash-${at}${strong ? ' strong' : ''}`}
            d={pathOf(inSight(corners, span), x, y)}
          />
        ))}
      <EndLetters lines={lines} span={span} x={x} y={y} most={base} />
      {drawnMarks(lines, span, x, y).map(({ at: [across, down], letters, strong }) => {
        const half = 9 + 4.5 * (letters.length - 1);
        return (
          <g class={strong ? 'point strong' : 'point'}>
            <rect x={tenth(across - half)} y={tenth(down - 9)} width={2 * half} height="18" rx="9" />
            <text x={across} y={tenth(down + 4)} text-anchor="middle" safe>
              {letters}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

/** A scheme as drawn, on the sheet; schemes at the same place share a mark. */
interface DrawnMark {
  readonly at: readonly [across: number, down: number];
  readonly letters: string;
  readonly strong: boolean;
}

const nearby = 12;

function drawnMarks(lines: readonly CostLine[], span: Span, x: Scale, y: Scale): readonly DrawnMark[] {
  const marks: DrawnMark[] = [];
  for (const { letter, drawn, strong } of lines) {
    if (drawn === undefined || drawn.pressure < span.least || drawn.pressure > span.most) continue;
    const at = [x.at(drawn.pressure), y.at(drawn.cents)] as const;
    const near = marks.findIndex((mark) => Math.hypot(mark.at[0] - at[0], mark.at[1] - at[1]) < nearby);
    if (near < 0) marks.push({ at, letters: letter, strong });
    else {
      const mark = marks[near]!;
      marks[near] = { ...mark, letters: mark.letters + letter, strong: mark.strong || strong };
    }
  }
  return marks;
}

/** The letter of each line behind its last corner in sight. */
function EndLetters(props: {
  readonly lines: readonly CostLine[];
  readonly span: Span;
  readonly x: Scale;
  readonly y: Scale;
  readonly most: number;
}): JSX.Element {
  const { span, x, y } = props;
  const ends = props.lines.flatMap(({ letter, corners }) => {
    const end = inSight(corners, span).at(-1);
    return end === undefined || letter === '' ? [] : [{ letter, end }];
  });
  const heights = apart(
    ends.map(({ end }) => y.at(end.cents)),
    14,
    props.most,
  );
  return (
    <>
      {ends.map(({ letter, end }, at) => (
        <text class="end" x={x.at(end.pressure) + 5} y={tenth(heights[at]! + 4)} safe>
          {letter}
        </text>
      ))}
    </>
  );
}

function costSpan(lines: readonly CostLine[], span: Span): Span {
  const costs = lines.flatMap(({ corners, drawn }) => [
    ...inSight(corners, span).map(({ cents }) => cents),
    ...(drawn === undefined ? [] : [drawn.cents]),
  ]);
  if (costs.length === 0) return { least: 0, most: 100 };
  const [least, most] = [Math.min(...costs), Math.max(...costs)];
  const room = Math.max((most - least) * 0.08, most * 0.01, 100);
  return { least: Math.max(0, least - room), most: most + room };
}

/** A line through corners, without those that no eye could tell from the last. */
function pathOf(corners: readonly Corner[], x: Scale, y: Scale): string {
  const parts: string[] = [];
  let last: readonly [number, number] | undefined;
  corners.forEach(({ pressure, cents }, at) => {
    const here = [x.at(pressure), y.at(cents)] as const;
    const near = last !== undefined && Math.hypot(here[0] - last[0], here[1] - last[1]) < 0.7;
    if (near && at < corners.length - 1) return;
    parts.push(`${last === undefined ? 'M' : 'L'}${here[0]} ${here[1]}`);
    last = here;
  });
  return parts.join('');
}

function wholeFigure(pressure: number, system: UnitSystem): string {
  return figure(pressure, 'pressure', system).replace(/\.0$/, '');
}
