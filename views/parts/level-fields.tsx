import { TextField } from '../components/field.tsx';
import type { Refused } from '../workbench.ts';

/** One level on the form of a quick start. */
export function LevelRow(props: {
  readonly form: string;
  readonly row: number;
  readonly values: Readonly<Record<string, string>>;
  readonly refused: Refused | undefined;
}): JSX.Element {
  const { form, row, values, refused } = props;
  const word = row === 0 ? 'Lowest level' : `Level ${row + 1}`;
  const field = (name: string, label: string, numeric = false): JSX.Element => (
    <TextField
      form={form}
      name={`${name}${row}`}
      label={label}
      value={values[`${name}${row}`] ?? ''}
      refused={refused}
      numeric={numeric}
    />
  );
  const kitchen = `${form}:kitchen${row}`;
  return (
    <fieldset class="level-row">
      <legend safe>{word}</legend>
      {field('level', 'Name') as 'safe'}
      {field('height', 'Floor to floor') as 'safe'}
      {field('full', 'Full baths', true) as 'safe'}
      {field('half', 'Half baths', true) as 'safe'}
      {field('laundry', 'Laundries', true) as 'safe'}
      <div class="field tick">
        <input
          id={kitchen}
          name="kitchen"
          type="radio"
          value={String(row)}
          checked={values.kitchen === String(row)}
        />
        <label for={kitchen}>
          Kitchen<span class="visually-hidden" safe>{` on ${word}`}</span>
        </label>
      </div>
    </fieldset>
  );
}
