import type { UnitSystem } from '../../engine/job/job.ts';
import type { PairedPath } from '../pictures.ts';
import { figure, figuresApart, figureWithUnit, signedPressure, unitSymbol } from '../text/figure.ts';
import { lossWords } from '../text/loss-step.ts';
import { type PairedLine, type PathLines, pairLines } from './pair-lines.ts';
import { Staircase, stairsSpan } from './staircase.tsx';
import { type Stair, stairsOf } from './stairs.ts';

interface Props {
  /** Begins the ids of the drawings and of the table. */
  readonly id: string;
  readonly pair: readonly [PairedPath, PairedPath];
  readonly system: UnitSystem;
}

/** Kinds of loss in the words of the summary. */
const kinds = [
  ['pipe', 'pipe'],
  ['fittings', 'fittings'],
  ['device', 'devices'],
  ['elevation', 'height'],
] as const;

/** Two staircases on one scale of pressure, the difference in words, and step by step as a table. */
export function StaircasePair({ id, pair, system }: Props): JSX.Element {
  const drawn = pair.map((one) => ({ ...one, stairs: stairsOf(one.path.lines, one.runs) }));
  const spans = drawn.map(stairsSpan);
  const span = {
    least: Math.min(...spans.map(({ least }) => least)),
    most: Math.max(...spans.map(({ most }) => most)),
  };
  const lines = pairLines(linesOf(pair[0]), linesOf(pair[1]));
  return (
    <>
      <p safe>{pairSummary(pair, lines, system)}</p>
      <div class="stairs-pair">
        {drawn.map(({ letter, path, when, stairs, start }) => (
          <figure class="stairs">
            <figcaption>
              <strong safe>{`${letter}: ${pathName({ path, when })}`}</strong>
            </figcaption>
            <Staircase
              id={`${id}-${letter}`}
              path={path}
              stairs={stairs}
              start={start}
              system={system}
              shape="narrow"
              span={span}
            />
          </figure>
        ))}
      </div>
      <PairTable id={id} pair={pair} system={system} lines={lines} stairs={drawn.map((one) => one.stairs)} />
    </>
  );
}

function linesOf({ path, runs }: PairedPath): PathLines {
  return { lines: path.lines, runs };
}

function pathName({ path, when }: { path: PairedPath['path']; when: PairedPath['when'] }): string {
  const name = `${path.fixture.name}, ${path.side}`;
  return when === undefined ? name : `${name}, ${when}`;
}

/** Both answers, the difference between them, and what makes it. */
function pairSummary(pair: Props['pair'], lines: readonly PairedLine[], system: UnitSystem): string {
  const [first, second] = pair;
  const answers = pair.map(({ letter, path, when, start }) => {
    const [left, needed] = figuresApart(path.residual, path.required, 'pressure', system);
    return `${letter}, ${pathName({ path, when })}: ${left} left of ${figureWithUnit(start, 'pressure', system)} at the street, ${signedPressure(path.margin, system)} against its need of ${needed}.`;
  });
  const more = second.path.residual - first.path.residual;
  const than = `${figureWithUnit(Math.abs(more), 'pressure', system)} ${more < 0 ? 'less' : 'more'} than A`;
  const byKind = kinds.map(([what, word]) => {
    const sum = lines.reduce((total, line) => (line.what === what ? total + line.difference : total), 0);
    const read = figureWithUnit(sum, 'pressure', system);
    return `${word} ${read.startsWith('−') ? read : `+${read}`}`;
  });
  return `${answers.join(' ')} B is left with ${than}. What B loses more than A: ${byKind.join(', ')}.`;
}

function PairTable(
  props: Props & { readonly lines: readonly PairedLine[]; readonly stairs: readonly (readonly Stair[])[] },
): JSX.Element {
  const { id, pair, system, lines } = props;
  const unit = unitSymbol('pressure', system);
  const steps = props.stairs.map(
    (stairs) => new Map(stairs.flatMap((stair, at) => stair.lines.map((line) => [line, at + 1] as const))),
  );
  const [first, second] = pair;
  const ends = [
    ['left at the fixture', first.path.residual, second.path.residual],
    ['needed there', first.path.required, second.path.required],
    ['to spare; with − it is SHORT', first.path.margin, second.path.margin],
  ] as const;
  return (
    <details class="ledger" id={`${id}-table`}>
      <summary id={`${id}-table:summary`}>Step by step as a table</summary>
      <section class="scroll" tabindex="0" aria-label="Differences step by step">
        <table>
          <thead>
            <tr>
              <th scope="col">Run</th>
              <th scope="col">What</th>
              {pair.map(({ letter }) => (
                <>
                  <th scope="col" class="numeric" safe>{`Step in ${letter}`}</th>
                  <th scope="col" class="numeric" safe>{`Loss in ${letter}, ${unit}`}</th>
                  <th scope="col" class="numeric" safe>{`Left in ${letter}, ${unit}`}</th>
                </>
              ))}
              <th scope="col" class="numeric" safe>{`B loses more, ${unit}`}</th>
            </tr>
          </thead>
          <tbody>
            <EndRow what="at the street, under demand" values={[first.start, second.start]} system={system} />
            {lines.map((line) => (
              <tr>
                <td safe>{line.run}</td>
                <th scope="row" safe>
                  {wordsOf(pair, line)}
                </th>
                {pair.map(({ path }, at) => {
                  const place = at === 0 ? line.first : line.second;
                  const own = path.lines[place];
                  return (
                    <>
                      <td class="numeric" safe>
                        {String(steps[at]!.get(place) ?? '')}
                      </td>
                      <td class="numeric" safe>
                        {own === undefined ? '–' : figure(own.loss, 'pressure', system)}
                      </td>
                      <td class="numeric" safe>
                        {own === undefined ? '–' : figure(own.after, 'pressure', system)}
                      </td>
                    </>
                  );
                })}
                <td class="numeric" safe>
                  {figure(line.difference, 'pressure', system)}
                </td>
              </tr>
            ))}
            {ends.map(([what, ...values]) => (
              <EndRow what={what} values={values} system={system} total />
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}

/** A pressure of each path, which is no loss. */
function EndRow(props: {
  readonly what: string;
  readonly values: readonly number[];
  readonly system: UnitSystem;
  readonly total?: boolean;
}): JSX.Element {
  return (
    <tr class={props.total ? 'total' : undefined}>
      <td></td>
      <th scope="row" safe>
        {props.what}
      </th>
      {props.values.map((value) => (
        <>
          <td></td>
          <td></td>
          <td class="numeric" safe>
            {figure(value, 'pressure', props.system)}
          </td>
        </>
      ))}
      <td></td>
    </tr>
  );
}

/** What a line takes pressure for; both ways where the two paths differ in it. */
function wordsOf(pair: Props['pair'], { first, second }: PairedLine): string {
  const words = pair.flatMap(({ path, runs }, at) => {
    const line = path.lines[at === 0 ? first : second];
    return line === undefined ? [] : [lossWords(runs[line.run]!, line.what, line.loss)];
  });
  return [...new Set(words)].join(' against ');
}
