import type { Scale } from './plot-scale.ts';

/** The sheet of a plot, in its own units, and the margins around what is plotted. */
export interface PlotSheet {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Lines across at the round values upwards, ticks at those along, and what is measured along. */
export function PlotGrid(props: {
  readonly sheet: PlotSheet;
  readonly x: Scale;
  readonly y: Scale;
  readonly xWords: (value: number) => string;
  readonly yWords: (value: number) => string;
  readonly label: string;
}): JSX.Element {
  const { x, y } = props;
  const { width, height, left, right, bottom } = props.sheet;
  const base = height - bottom;
  return (
    <>
      {y.marks.map((value) => (
        <g class="grid">
          <line x1={left} x2={width - right} y1={y.at(value)} y2={y.at(value)} />
          <text x={left - 7} y={y.at(value) + 4} text-anchor="end" safe>
            {props.yWords(value)}
          </text>
        </g>
      ))}
      {x.marks.map((value) => (
        <g class="grid">
          <line x1={x.at(value)} x2={x.at(value)} y1={base} y2={base + 5} />
          <text x={x.at(value)} y={base + 18} text-anchor="middle" safe>
            {props.xWords(value)}
          </text>
        </g>
      ))}
      <text class="axis" x={width - right} y={height - 8} text-anchor="end" safe>
        {props.label}
      </text>
    </>
  );
}

/** An upright line at a value, with its words above or at its foot; they turn to the left where the sheet ends. */
export function PlotMark(props: {
  readonly sheet: PlotSheet;
  readonly at: number;
  readonly label: string;
  readonly atFoot?: boolean;
}): JSX.Element {
  const { at, label } = props;
  const { width, height, top, bottom } = props.sheet;
  const words = props.atFoot ? height - bottom - 8 : top - 12;
  const turned = at > width * 0.75;
  return (
    <g class="mark">
      <line x1={at} x2={at} y1={top - 8} y2={height - bottom} />
      <text x={at + (turned ? -5 : 5)} y={words} text-anchor={turned ? 'end' : 'start'} safe>
        {label}
      </text>
    </g>
  );
}
