import type { RunVelocity } from '../../engine/checks/run-velocities.ts';
import type { Run, UnitSystem } from '../../engine/job/job.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { figure, fixed, unitSymbol } from '../text/figure.ts';
import { sizeText } from '../text/size-text.ts';
import { scale, tenth } from './plot-scale.ts';

interface Props {
  readonly title: string;
  readonly bars: readonly RunVelocity[];
  readonly runs: readonly Run[];
  readonly system: UnitSystem;
}

const shapes = {
  wide: { width: 1060, left: 230, right: 150, across: 8, letters: 17 },
  narrow: { width: 380, left: 112, right: 82, across: 4, letters: 7 },
} as const;

const pitch = 20;
const thick = 12;
const top = 8;
const bottom = 44;

/** A bar for each run, cold filled and hot hatched, each with an upright stroke at its own limit. */
export function VelocityBars(props: Props): JSX.Element {
  return (
    <>
      <Bars {...props} shape="wide" />
      <Bars {...props} shape="narrow" />
    </>
  );
}

function Bars(props: Props & { readonly shape: keyof typeof shapes }): JSX.Element {
  const { bars, runs, system, shape } = props;
  const { width, left, right, across, letters } = shapes[shape];
  const height = top + bars.length * pitch + bottom;
  const base = height - bottom;
  const most = Math.max(...bars.flatMap(({ velocity, limit }) => [velocity, limit]));
  const perUnit = 1 / toSI(1, displayUnits[system].velocity.unit);
  const x = scale({ least: 0, most }, perUnit, left, width - right, across);
  const titleId = `velocity-bars-${shape}`;
  const hatch = `hot-water-${shape}`;
  return (
    <svg
      class={`plot velocity-bars ${shape}`}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-labelledby={titleId}
      focusable="false"
    >
      <title id={titleId} safe>
        {props.title}
      </title>
      <defs>
        <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line class="hatch" x1="1.5" x2="1.5" y1="0" y2="6" />
        </pattern>
      </defs>
      {x.marks.map((value) => (
        <g class="grid">
          <line x1={x.at(value)} x2={x.at(value)} y1={top} y2={base + 5} />
          <text x={x.at(value)} y={base + 18} text-anchor="middle" safe>
            {fixed(value * perUnit, 2).replace(/\.?0+$/, '') || '0'}
          </text>
        </g>
      ))}
      <text class="axis" x={width - right} y={height - 8} text-anchor="end" safe>
        {`velocity, ${unitSymbol('velocity', system)}`}
      </text>
      {bars.map(({ run, hot, velocity, limit, over }, at) => {
        const y = top + at * pitch + (pitch - thick) / 2;
        const { id, size } = runs[run]!;
        const side = hot ? 'hot' : 'cold';
        const words = shape === 'wide' ? `${clip(id, letters)} · ${sizeText(size)}` : clip(id, letters);
        return (
          <g class={over ? 'bar over' : 'bar'}>
            <text x={left - 8} y={y + thick - 2} text-anchor="end" safe>
              {`${words} ${side}`}
            </text>
            <rect
              class={side}
              x={left}
              y={y}
              width={tenth(x.at(velocity) - left)}
              height={thick}
              {...(hot ? { fill: `url(#${hatch})` } : {})}
            />
            <line class="limit" x1={x.at(limit)} x2={x.at(limit)} y1={y - 3} y2={y + thick + 3} />
            <text x={Math.max(x.at(velocity), x.at(limit)) + 7} y={y + thick - 2} safe>
              {`${figure(velocity, 'velocity', system)}${over ? ' OVER' : ''}`}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

function clip(text: string, most: number): string {
  return text.length <= most ? text : `${text.slice(0, most - 1)}…`;
}
