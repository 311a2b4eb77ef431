import type { UnitSystem } from '../../engine/job/job.ts';
import type { PipeAllowed, PipeBought, TakeOffPipe, TakeOffStick } from '../take-off.ts';
import { figureWithUnit, fixed } from '../text/figure.ts';
import { tapeLength } from '../text/tape-length.ts';

/** One pipe: its length by service, what is bought of it, and behind a fold the cuts of each stick or coil. */
export function PipeCutList(props: {
  readonly pipe: TakeOffPipe;
  readonly coupled: boolean;
  readonly units: UnitSystem;
}): JSX.Element {
  const { pipe, coupled, units } = props;
  const { name, pieces, lengths, cut } = pipe;
  const all = lengths.reduce((sum, { metres }) => sum + metres, 0);
  const length = (metres: number): string => figureWithUnit(metres, 'length', units);
  const services = lengths.map(({ service, metres }) => `${service} ${length(metres)}`).join(', ');
  const head = `${length(all)} in ${pieces} ${pieces === 1 ? 'piece' : 'pieces'}: ${services}.`;
  return (
    <div class="pipe-cuts">
      <h3 safe>{name}</h3>
      <p safe>{head}</p>
      {typeof cut === 'string' ? (
        <p safe>{cut}</p>
      ) : 'allowed' in cut ? (
        <p>
          <strong safe>{countsText(cut, units)}</strong> <span safe>{allowedText(cut, units)}</span>
        </p>
      ) : (
        <Bought bought={cut} coupled={coupled} name={name} units={units} />
      )}
    </div>
  );
}

function Bought(props: {
  readonly bought: PipeBought;
  readonly coupled: boolean;
  readonly name: string;
  readonly units: UnitSystem;
}): JSX.Element {
  const { bought, coupled, name, units } = props;
  return (
    <>
      <p>
        <strong safe>{countsText(bought, units)}</strong>{' '}
        <span safe>{wasteText(bought, coupled, units)}</span>
      </p>
      <details>
        <summary>
          Cuts and off-cuts<span class="visually-hidden" safe>{` of ${name}`}</span>
        </summary>
        <table class="cuts">
          <caption class="visually-hidden" safe>{`Cuts of ${name}`}</caption>
          <thead>
            <tr>
              <th scope="col">Length</th>
              <th scope="col">Cuts, run by run</th>
              <th scope="col" class="numeric">
                Off-cut
              </th>
            </tr>
          </thead>
          <tbody>
            {bought.sticks.map((stick, at) => (
              <tr>
                <th scope="row" safe>{`${at + 1}: ${stockText(stick, units)}`}</th>
                <td>
                  {stick.cuts.map((cut, place) => (
                    <>
                      {place > 0 ? ' · ' : ''}
                      <span class="cut" safe>
                        {cutText(cut, units)}
                      </span>
                    </>
                  ))}
                </td>
                <td class="numeric" safe>
                  {tapeLength(stick.offCut, units)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </>
  );
}

/** `3 sticks of 20 ft, 1 coil of 100 ft`. */
function countsText({ counts }: Pick<PipeBought, 'counts'>, units: UnitSystem): string {
  return counts
    .map(
      ({ count, form, metres }) =>
        `${count} ${form}${count === 1 ? '' : 's'} of ${tapeLength(metres, units)}`,
    )
    .join(', ');
}

function allowedText({ percent, allowed, bought }: PipeAllowed, units: UnitSystem): string {
  return `${tapeLength(bought, units)} for ${tapeLength(allowed, units)} with ${percent} % for waste, the estimator’s figure. No cutting is planned: the pieces may not all come whole out of these lengths.`;
}

function wasteText(
  { bought, offCuts, couplings, gap }: PipeBought,
  coupled: boolean,
  units: UnitSystem,
): string {
  const part = fixed((100 * offCuts) / bought, 1);
  const most = fixed(Math.ceil(gap * 1000) / 10, 1);
  const sentences = [
    `Off-cuts ${tapeLength(offCuts, units)}, ${part} % of what is bought.`,
    couplings === 0
      ? ''
      : `${couplings} ${couplings === 1 ? 'coupling' : 'couplings'} where a piece is made of parts.`,
    gap === 0
      ? `No less will do${coupled ? '' : ' without more couplings'}.`
      : `At most ${most} % more than the least there is.`,
  ];
  return sentences.filter((sentence) => sentence !== '').join(' ');
}

function stockText({ form, metres }: Pick<TakeOffStick, 'form' | 'metres'>, units: UnitSystem): string {
  return `${form} ${tapeLength(metres, units)}`;
}

function cutText({ run, metres, part, parts }: TakeOffStick['cuts'][number], units: UnitSystem): string {
  const of = parts === 1 ? '' : ` (part ${part} of ${parts})`;
  return `${run} ${tapeLength(metres, units)}${of}`;
}
