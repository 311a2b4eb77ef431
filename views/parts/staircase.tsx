import type { UnitSystem } from '../../engine/job/job.ts';
import { units } from '../../tables/units/definitions.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { figure, figureWithUnit, fixed, unitSymbol } from '../text/figure.ts';
import type { ShownPath } from '../workbench.ts';
import { gridStep } from './grid-step.ts';
import type { Span } from './plot-scale.ts';
import type { Stair } from './stairs.ts';

interface Props {
  readonly path: ShownPath;
  readonly stairs: readonly Stair[];
  readonly start: number;
  readonly system: UnitSystem;
  /** `wide` names each step below it; `narrow` numbers it as the ledger does. */
  readonly shape: 'wide' | 'narrow';
  /** Begins the id of its title, where several staircases stand on one page. */
  readonly id?: string;
  /** Pressures that the drawing reaches over, Pa; its own where it is left out. */
  readonly span?: Span;
}

const shapes = {
  wide: { width: 1060, height: 380, left: 56, right: 118, top: 28, bottom: 76, type: 12 },
  narrow: { width: 380, height: 320, left: 34, right: 84, top: 26, bottom: 30, type: 12 },
} as const;

/** All pressures that a staircase shows, and zero. */
export function stairsSpan({ path, stairs, start }: Pick<Props, 'path' | 'stairs' | 'start'>): Span {
  const levels = [
    start,
    path.residual,
    path.required,
    0,
    ...stairs.flatMap((stair) => [stair.before, stair.after]),
  ];
  return { least: Math.min(...levels), most: Math.max(...levels) };
}

/** The path from street to tap as descending steps, down to what is left; the fixture's need is the floor line. */
export function Staircase(props: Props): JSX.Element {
  const { path, stairs, start, system, shape, id = 'staircase' } = props;
  const { width, height, left, right, top, bottom } = shapes[shape];
  const { least: lowest, most: highest } = props.span ?? stairsSpan(props);
  const span = highest - lowest || 1;
  const y = (pressure: number) => round(top + ((highest - pressure) / span) * (height - top - bottom));
  const stride = (width - left - right) / (stairs.length + 1);
  const x = (step: number) => round(left + step * stride);
  const base = y(lowest);
  const outline = [`M${x(0)} ${y(start)}H${x(1)}`];
  stairs.forEach((stair, index) => {
    outline.push(`V${y(stair.after)}H${x(index + 2)}`);
  });
  const end = x(stairs.length + 1);
  const short = path.margin < 0;
  const needsBelow = y(path.required) > y(path.residual);
  const perUnit = 1 / units[displayUnits[system].pressure.unit].factor;
  const step = gridStep(span * perUnit);
  const lines: number[] = [];
  for (let value = Math.ceil((lowest * perUnit) / step) * step; value <= highest * perUnit; value += step)
    lines.push(value);
  const titleId = `${id}-${shape}-title`;
  return (
    <svg
      class={`staircase ${shape}`}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-labelledby={titleId}
      focusable="false"
    >
      <title id={titleId} safe>
        {`From ${figureWithUnit(start, 'pressure', system)} at the street down ${stairs.length} steps to ${figureWithUnit(path.residual, 'pressure', system)} at ${path.fixture.name}, ${path.side}; it needs ${figureWithUnit(path.required, 'pressure', system)}. The table below holds the same figures.`}
      </title>
      {lines.map((value) => (
        <g class="grid">
          <line x1={left} x2={end} y1={y(value / perUnit)} y2={y(value / perUnit)} />
          <text x={left - 6} y={y(value / perUnit) + 4} text-anchor="end" safe>
            {fixed(value, 0)}
          </text>
        </g>
      ))}
      <text class="unit" x={left - 6} y={top - 12} text-anchor="end" safe>
        {unitSymbol('pressure', system)}
      </text>
      <path class="under" d={`${outline.join('')}V${base}H${x(0)}Z`} />
      <path class="steps" d={outline.join('')} />
      {shape === 'wide' ? (
        <text class="loss" x={x(0) + 4} y={y(start) - 7} safe>
          {figure(start, 'pressure', system)}
        </text>
      ) : (
        ''
      )}
      {stairs.map((stair, index) => (
        <StepLabel
          {...props}
          stair={stair}
          index={index}
          x={x(index + 1)}
          stride={stride}
          y={y}
          base={height - bottom}
        />
      ))}
      <line class="need" x1={left} x2={end + 8} y1={y(path.required)} y2={y(path.required)} />
      <text class="need" x={end + 8} y={y(path.required) + (needsBelow ? 14 : -6)} safe>
        {shape === 'wide'
          ? `needs ${figureWithUnit(path.required, 'pressure', system)}`
          : `needs ${figure(path.required, 'pressure', system)}`}
      </text>
      <circle class={short ? 'left short' : 'left'} cx={end} cy={y(path.residual)} r="5" />
      <text class="left" x={end + 8} y={y(path.residual) + (needsBelow ? -6 : 14)} safe>
        {shape === 'wide'
          ? `${figureWithUnit(path.residual, 'pressure', system)} left`
          : `${figure(path.residual, 'pressure', system)} left`}
      </text>
    </svg>
  );
}

function StepLabel(
  props: Props & {
    readonly stair: Stair;
    readonly index: number;
    readonly x: number;
    readonly stride: number;
    readonly base: number;
    readonly y: (pressure: number) => number;
  },
): JSX.Element {
  const { stair, index, x, stride, y, base, shape, system } = props;
  const middle = round(x + stride / 2);
  const drop = figure(stair.after - stair.before, 'pressure', system);
  if (shape === 'narrow') {
    return (
      <text class="name" x={middle} y={base + 18} text-anchor="middle" safe>
        {String(index + 1)}
      </text>
    );
  }
  const [run, what] = stair.label;
  const room = Math.max(6, Math.floor(stride / 6.4));
  return (
    <g>
      <text class="loss" x={middle} y={Math.min(y(stair.after), base - 2) - 7} text-anchor="middle" safe>
        {drop.startsWith('−') ? drop : `+${drop}`}
      </text>
      <text class="number" x={middle} y={base + 16} text-anchor="middle" safe>
        {String(index + 1)}
      </text>
      <text class="name" x={middle} y={base + 32} text-anchor="middle" safe>
        {clip(run, room)}
      </text>
      {what.split(', ').map((word, line) => (
        <text class="name" x={middle} y={base + 47 + line * 14} text-anchor="middle" safe>
          {clip(word, room)}
        </text>
      ))}
    </g>
  );
}

function clip(text: string, room: number): string {
  return text.length <= room ? text : `${text.slice(0, room - 1)}…`;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
