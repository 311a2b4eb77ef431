import type { Refused } from '../workbench.ts';
import { attribute } from './attribute.ts';

interface Common {
  /** Id of the form; ids of its fields grow from it, so that focus survives a swap. */
  readonly form: string;
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly refused?: Refused | undefined;
  readonly hint?: string;
}

interface TextProps extends Common {
  readonly list?: string;
  readonly required?: boolean;
  readonly wide?: boolean;
  readonly hiddenLabel?: boolean;
  readonly numeric?: boolean;
}

function described(props: Common): {
  id: string;
  value: string;
  problem: string | undefined;
  by: string | undefined;
} {
  const id = `${props.form}:${props.name}`;
  const problem = props.refused?.problems[props.name];
  const by = [
    problem === undefined ? undefined : `${id}:problem`,
    props.hint === undefined ? undefined : `${id}:hint`,
  ]
    .filter((part) => part !== undefined)
    .join(' ');
  return {
    id,
    value: props.refused?.values[props.name] ?? props.value,
    problem,
    by: by === '' ? undefined : by,
  };
}

function Notes(props: { id: string; problem: string | undefined; hint: string | undefined }): JSX.Element {
  return (
    <>
      {props.hint === undefined ? (
        ''
      ) : (
        <span class="hint" id={`${props.id}:hint`} safe>
          {props.hint}
        </span>
      )}
      {props.problem === undefined ? (
        ''
      ) : (
        <span class="problem" id={`${props.id}:problem`} safe>
          {props.problem}
        </span>
      )}
    </>
  );
}

/** A labelled line of text, with its problem tied to it. */
export function TextField(props: TextProps): JSX.Element {
  const { id, value, problem, by } = described(props);
  return (
    <div class={props.wide ? 'field wide' : 'field'}>
      <label for={id} class={props.hiddenLabel ? 'visually-hidden' : undefined} safe>
        {props.label}
      </label>
      <input
        id={id}
        name={props.name}
        type="text"
        value={attribute(value)}
        list={props.list}
        required={props.required}
        class={props.numeric ? 'numeric' : undefined}
        aria-invalid={problem === undefined ? undefined : 'true'}
        aria-describedby={by}
      />
      <Notes id={id} problem={problem} hint={props.hint} />
    </div>
  );
}

/** A labelled text of several lines. */
export function AreaField(props: Common): JSX.Element {
  const { id, value, problem, by } = described(props);
  return (
    <div class="field wide">
      <label for={id} safe>
        {props.label}
      </label>
      <textarea
        id={id}
        name={props.name}
        rows="8"
        aria-invalid={problem === undefined ? undefined : 'true'}
        aria-describedby={by}
        safe
      >
        {value}
      </textarea>
      <Notes id={id} problem={problem} hint={props.hint} />
    </div>
  );
}

/** A labelled choice; `choices` are value and words. */
export function SelectField(
  props: Common & { readonly choices: readonly (readonly [value: string, words: string])[] },
): JSX.Element {
  const { id, value, problem, by } = described(props);
  return (
    <div class="field">
      <label for={id} safe>
        {props.label}
      </label>
      <select
        id={id}
        name={props.name}
        aria-invalid={problem === undefined ? undefined : 'true'}
        aria-describedby={by}
      >
        {props.choices.map(([choice, words]) => (
          <option value={choice} selected={choice === value} safe>
            {words}
          </option>
        ))}
      </select>
      <Notes id={id} problem={problem} hint={props.hint} />
    </div>
  );
}

/** A labelled tick box; sends `yes` where ticked. */
export function TickField(props: Common): JSX.Element {
  const { id, value, by, problem } = described(props);
  return (
    <div class="field tick">
      <input
        id={id}
        name={props.name}
        type="checkbox"
        value="yes"
        checked={value === 'yes'}
        aria-describedby={by}
      />
      <label for={id} safe>
        {props.label}
      </label>
      <Notes id={id} problem={problem} hint={props.hint} />
    </div>
  );
}

/** What is wrong with a form as a whole. */
export function FormProblem(props: { refused: Refused | undefined }): JSX.Element {
  const problem = props.refused?.problems[''];
  if (problem === undefined) return '';
  return (
    <p class="problem" role="alert" safe>
      {problem}
    </p>
  );
}
