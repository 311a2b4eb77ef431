import type {
  KeyLine,
  PlacedDrawing,
  PlacedPipe,
  PlacedSymbol,
  PlacedText,
  Point,
} from '../../engine/drawing/placed.ts';
import { attribute } from '../components/attribute.ts';
import { tenth } from './plot-scale.ts';

/** Sans-serifs drawn to the widths that the texts were measured with. */
const lettering = 'Helvetica, Arial, "Liberation Sans", "Nimbus Sans", sans-serif';

/** Tones of paper, for a file of its own and for print; a page's style sheet has its own for light and dark. */
const tone = {
  paper: '#ffffff',
  ink: '#1d2125',
  soft: '#5d625f',
  rule: '#b9b3a3',
  cold: '#14586b',
  hot: '#9a4a22',
  band: '#ffe9a8',
};

/** Id of the run that was asked for, for an address that leads to it. */
export const markedId = 'marked-run';

export interface DrawingSvgProps {
  readonly drawing: PlacedDrawing;
  /** All that the drawing says, in a sentence or two. */
  readonly title: string;
  /** Id of the title. */
  readonly id: string;
  /** What a reader is told of a run when the pointer rests on it. */
  readonly about: (run: number) => string;
  /** Where a click on a run leads; without it the drawing has no links. */
  readonly link?: (run: number) => string;
  /** A run that was asked for. */
  readonly marked?: number | undefined;
}

/** A placed drawing as SVG that needs no style sheet. */
export function DrawingSvg(props: DrawingSvgProps): JSX.Element {
  const { drawing, title, id } = props;
  const { width, height } = drawing;
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      class="drawing"
      viewBox={`0 0 ${width} ${height}`}
      width={`${width}pt`}
      height={`${height}pt`}
      role={props.link === undefined ? 'img' : 'group'}
      aria-labelledby={id}
      font-family={attribute(lettering)}
      stroke-linejoin="round"
      text-rendering="geometricPrecision"
    >
      <title id={id} safe>
        {title}
      </title>
      <rect class="paper" width={width} height={height} fill={tone.paper} />
      <g class="sheet-lines" stroke={tone.rule} stroke-width="0.6" stroke-dasharray="1 2.5">
        {drawing.sheetLines.map(({ from, to }) => (
          <line x1={tenth(from.x)} y1={tenth(from.y)} x2={tenth(to.x)} y2={tenth(to.y)} />
        ))}
      </g>
      <g class="bands" fill="none" stroke={tone.band} stroke-width="9" stroke-linecap="round">
        {drawing.bands.map((band) => (
          <path d={pathOf(band)} />
        ))}
        {drawing.keys
          .filter(({ what }) => what === 'worst')
          .map((key) => (
            <KeyPath line={key} />
          ))}
      </g>
      <Pipes {...props} side="cold" />
      <Pipes {...props} side="hot" />
      <g class="joints" fill={tone.ink}>
        {drawing.joints.map(({ x, y, radius }) => (
          <circle cx={tenth(x)} cy={tenth(y)} r={tenth(radius)} />
        ))}
      </g>
      <g class="symbols" fill={tone.paper} stroke={tone.ink} stroke-width="1.1">
        {drawing.symbols.map((symbol) => (
          <DeviceSymbol symbol={symbol} />
        ))}
      </g>
      <g class="leaders" stroke={tone.soft} stroke-width="0.5">
        {drawing.leaders.map(({ from, to }) => (
          <line x1={tenth(from.x)} y1={tenth(from.y)} x2={tenth(to.x)} y2={tenth(to.y)} />
        ))}
      </g>
      <g class="texts" fill={tone.ink}>
        {drawing.texts.map((text) => (
          <Text text={text} />
        ))}
      </g>
    </svg>
  );
}

const dashes = { cold: undefined, hot: '7 2.6' } as const;

function Pipes(props: DrawingSvgProps & { readonly side: 'cold' | 'hot' }): JSX.Element {
  const { drawing, side } = props;
  const pipes = drawing.pipes.filter(({ hot }) => hot === (side === 'hot'));
  const keys = drawing.keys.filter(({ what }) => what === side || (what === 'worst' && side === 'cold'));
  return (
    <g class={side} fill="none" stroke={tone[side]} stroke-dasharray={dashes[side]}>
      {pipes.map((pipe) => (
        <Pipe {...props} pipe={pipe} />
      ))}
      {keys.map((key) => (
        <KeyPath line={key} weight />
      ))}
    </g>
  );
}

function Pipe({ pipe, about, link, marked }: DrawingSvgProps & { readonly pipe: PlacedPipe }): JSX.Element {
  const { run, weight, pieces, way, worst } = pipe;
  const name = about(run);
  const classes = [worst ? 'worst' : '', marked === run ? 'marked' : '']
    .filter((one) => one !== '')
    .join(' ');
  const drawn = (
    <>
      {marked === run ? (
        <path
          id={markedId}
          class="mark"
          d={pathOf(way)}
          stroke-width={tenth(weight + 8)}
          stroke-opacity="0.35"
          stroke-dasharray="none"
          stroke-linecap="round"
        />
      ) : (
        ''
      )}
      {link === undefined ? (
        ''
      ) : (
        <path class="reach" d={pathOf(way)} stroke="none" pointer-events="stroke" stroke-width="12" />
      )}
      <path
        d={pieces.map(pathOf).join('')}
        stroke-width={tenth(weight)}
        class={classes === '' ? undefined : classes}
      >
        <title safe>{name}</title>
      </path>
    </>
  );
  if (link === undefined) return drawn;
  return (
    <a href={attribute(link(run))} aria-label={attribute(name)} tabindex="-1">
      {drawn as 'safe'}
    </a>
  );
}

function KeyPath({ line, weight }: { readonly line: KeyLine; readonly weight?: true }): JSX.Element {
  return <path d={pathOf([line.from, line.to])} stroke-width={weight ? line.weight : undefined} />;
}

function DeviceSymbol({ symbol }: { readonly symbol: PlacedSymbol }): JSX.Element {
  const { left, top, right, bottom } = symbol.box;
  const box = { x: tenth(left), y: tenth(top), width: tenth(right - left), height: tenth(bottom - top) };
  switch (symbol.shape) {
    case 'circle':
      return <rect {...box} rx={tenth((bottom - top) / 2)} />;
    case 'tank':
      return <rect {...box} rx="4" />;
    case 'box':
      return <rect {...box} />;
    case 'bar':
      return <rect {...box} rx="1.5" />;
    case 'street':
      return (
        <path
          d={`M${box.x} ${box.y}h${box.width}M${box.x} ${tenth(bottom)}h${box.width}M${box.x + box.width / 2} ${box.y}v${box.height}`}
        />
      );
  }
}

function Text({ text }: { readonly text: PlacedText }): JSX.Element {
  const at = text.turned
    ? { transform: `translate(${tenth(text.x)} ${tenth(text.y)}) rotate(-90)` }
    : { x: tenth(text.x), y: tenth(text.y) };
  return (
    <text
      {...at}
      font-size={text.size}
      font-weight={text.bold ? '700' : undefined}
      class={`text-${text.role}`}
      safe
    >
      {text.text}
    </text>
  );
}

function pathOf(points: readonly Point[]): string {
  return points.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${tenth(x)} ${tenth(y)}`).join('');
}
