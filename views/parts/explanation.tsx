import type { Explained, Step } from '../../engine/explain/step.ts';
import type { WrittenStep } from '../../engine/explain/write-out.ts';
import { units } from '../../tables/units/definitions.ts';
import { citedText, provenanceText } from '../text/citation-text.ts';

/** One step with its written form. */
export interface ExplainedStep {
  readonly step: Step;
  readonly written: WrittenStep;
  /** The result in the reader's unit, where the formula works in another. */
  readonly asRead?: string | undefined;
}

export interface ExplanationProps {
  readonly job: string;
  readonly title: string;
  /** How the figure is made up of the steps below, where it is more than one step. */
  readonly sum?: string;
  readonly steps: readonly ExplainedStep[];
}

/** How one figure was found: formula, inputs, arithmetic, sources; each input that was computed leads on. */
export function Explanation({ job, title, sum, steps }: ExplanationProps): JSX.Element {
  return (
    <article class="explanation">
      <header>
        <h2 tabindex="-1" id="explanation-title" safe>
          {title}
        </h2>
        <button type="button" class="close" data-close="explain">
          Close
        </button>
      </header>
      {sum === undefined ? (
        ''
      ) : (
        <p class="arithmetic" safe>
          {sum}
        </p>
      )}
      {steps.map((one) => (
        <StepSection job={job} {...one} />
      ))}
    </article>
  );
}

function StepSection({ job, step, written, asRead }: ExplainedStep & { job: string }): JSX.Element {
  const { formula } = step;
  const { source, at, verified } = formula.source;
  return (
    <section class="step">
      <h3 safe>{`${formula.title}: ${step.id}`}</h3>
      <p class="result">
        <strong safe>{asRead ?? written.result}</strong>
        {asRead === undefined ? '' : <span safe>{` (${written.result})`}</span>}
      </p>
      <p class="formula">
        <span class="caption">Formula </span>
        <code safe>{written.formula}</code>
      </p>
      <p class="arithmetic">
        <span class="caption">With numbers </span>
        <code safe>{`${written.arithmetic} = ${written.result}`}</code>
      </p>
      <section class="scroll" tabindex="0" aria-label="Inputs">
        <table>
          <thead>
            <tr>
              <th scope="col">Symbol</th>
              <th scope="col" class="numeric">
                Value
              </th>
              <th scope="col">What it is</th>
              <th scope="col">Where it comes from</th>
            </tr>
          </thead>
          <tbody>
            {Object.entries(formula.symbols).map(([symbol, { meaning }]) => {
              const term = step.terms[symbol];
              return (
                <tr>
                  <th scope="row" safe>
                    {symbol}
                  </th>
                  <td class="numeric" safe>
                    {written.inputs[symbol] ?? ''}
                  </td>
                  <td safe>{meaning}</td>
                  <td>{term === undefined ? '' : <Origin job={job} term={term} />}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
      <p class="source" safe>
        {`Formula: ${provenanceText(source, at, verified)}.${formula.note === undefined ? '' : ` ${formula.note}`}`}
      </p>
    </section>
  );
}

function Origin({ job, term }: { job: string; term: Explained }): JSX.Element {
  switch (term.from) {
    case 'given':
      return <span safe>{`${term.field}: ${term.typed}`}</span>;
    case 'table': {
      const { cite } = term;
      const cell = [cite.row, cite.column].filter((part) => part !== undefined).join(', ');
      return (
        <span safe>
          {`${cite.table.title}${cell === '' ? '' : `, ${cell}`}: ${cite.printed} ${units[cite.unit].symbol}`.trim() +
            `. ${citedText(cite)}${cite.note === undefined ? '' : `. ${cite.note}`}`}
        </span>
      );
    }
    case 'step': {
      const href = stepHref(job, term.step);
      return (
        <a href={href} hx-get={href} hx-target="#explain" hx-swap="innerHTML" safe>
          {`step ${term.step}`}
        </a>
      );
    }
  }
}

/** The address of a step `<owner>.<quantity>`. */
export function stepHref(job: string, step: string): string {
  const dot = step.indexOf('.');
  return `/jobs/${job}/explain/${encodeURIComponent(step.slice(0, dot))}/${encodeURIComponent(step.slice(dot + 1))}`;
}
