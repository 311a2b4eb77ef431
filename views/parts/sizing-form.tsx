import { materials } from '../../tables/pipe/names.ts';
import { attribute } from '../components/attribute.ts';
import { FormProblem, TextField, TickField } from '../components/field.tsx';
import { isPast } from '../components/read-only.tsx';
import type { SizingQuestion, SizingView } from '../sizing.ts';

const form = 'sizing';

/** The question as fields of text, as the address and the forms carry it. */
function questionFields({
  keep,
  trunks,
  notLarger,
  materials: chosen,
}: SizingQuestion): Record<string, string> {
  return {
    keep: keep.join(', '),
    trunk: trunks.map((trunk) => trunk.join(', ')).join('; '),
    notLarger: notLarger ? 'yes' : '',
    material: chosen.join(','),
  };
}

/** The question behind the question mark of an address, with one more run to keep. */
export function sizingQuery(question: SizingQuestion, keep?: string): string {
  const more = keep === undefined ? question : { ...question, keep: [...question.keep, keep] };
  const query = new URLSearchParams(Object.entries(questionFields(more)).filter(([, value]) => value !== ''));
  return String(query).replaceAll('&', '&amp;');
}

/** What the sizing may decide; asks by a plain address, so that the answer can be kept as a bookmark. */
export function SizingForm({ view }: { view: SizingView }): JSX.Element {
  const { refused, question } = view;
  const typed = refused?.values ?? questionFields(question);
  const chosen = new Set((typed.material ?? '').split(','));
  const problem = refused?.problems.material;
  return (
    <form id={form} method="get" action={`/jobs/${view.id}/sizing`} class="edit">
      <div class="fields sizing-fields">
        <FormProblem refused={refused} />
        <TextField
          form={form}
          name="keep"
          label="Runs that stay as drawn"
          value={typed.keep ?? ''}
          hint="names with commas between them: pipe in the slab, or your own choice"
          refused={refused}
          wide
        />
        <TextField
          form={form}
          name="trunk"
          label="Runs that keep one size among them"
          value={typed.trunk ?? ''}
          hint="a trunk; a semicolon parts two"
          refused={refused}
          wide
        />
        <TickField
          form={form}
          name="notLarger"
          label="No run larger than the one that feeds it"
          value={typed.notLarger ?? ''}
          refused={refused}
        />
        <fieldset class="materials" aria-describedby="sizing:material:hint">
          <legend>Pipe to choose among</legend>
          {Object.entries(materials).map(([id, name]) => (
            <div class="field tick">
              <input
                id={`sizing:material:${id}`}
                name="material"
                type="checkbox"
                value={id}
                checked={chosen.has(id)}
              />
              <label for={`sizing:material:${id}`}>{name}</label>
            </div>
          ))}
          <span class="hint" id="sizing:material:hint">
            none ticked: each run stays what it is made of
          </span>
          {problem === undefined ? (
            ''
          ) : (
            <span class="problem" safe>
              {problem}
            </span>
          )}
        </fieldset>
        <button type="submit" class="act">
          Size it
        </button>
      </div>
    </form>
  );
}

/** Puts the sizes found to use, in the scheme itself or in a copy; not in an earlier revision. */
export function UseSizesForm({ view }: { view: SizingView }): JSX.Element {
  if (isPast(view.id)) return '';
  return (
    <form id="use-sizes" method="post" action={`/jobs/${view.id}/sizing`} class="actions">
      <input type="hidden" name="revision" value={String(view.revision)} />
      {Object.entries(questionFields(view.question)).map(([name, value]) => (
        <input type="hidden" name={name} value={attribute(value)} />
      ))}
      <button type="submit" class="act" name="as" value="replace">
        Use these sizes
      </button>
      <button type="submit" name="as" value="copy">
        Use them in a copy
      </button>
    </form>
  );
}
