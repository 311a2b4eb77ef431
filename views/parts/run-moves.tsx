import { formPartId } from '../components/edit-form.tsx';
import { FormProblem } from '../components/field.tsx';
import type { Refused } from '../workbench.ts';
import { moveForm } from './run-ids.ts';

/** Where a run can go in the outline, what hangs on it with it: the words on the button, and the key on its line. */
export const runMoves = {
  up: { label: 'Up', key: 'ArrowUp' },
  down: { label: 'Down', key: 'ArrowDown' },
  in: { label: 'Hang on the one before', key: 'ArrowRight' },
  out: { label: 'One step outwards', key: 'ArrowLeft' },
  copy: { label: 'Copy', key: 'D' },
} as const;

/** The buttons that move a run, each of which sends its own name. */
export function MoveFields({ run, refused }: { run: string; refused?: Refused | undefined }): JSX.Element {
  return (
    <div id={formPartId(moveForm(run))} class="fields moves">
      <FormProblem refused={refused} />
      {Object.entries(runMoves).map(([move, { label, key }]) => (
        <button
          id={`${moveForm(run)}:${move}`}
          type="submit"
          class="act"
          name="move"
          value={move}
          aria-keyshortcuts={`Alt+Shift+${key}`}
        >
          {label}
        </button>
      ))}
      <p class="hint">What hangs on the run goes with it. Copies end at no fixture: an inlet has one run.</p>
    </div>
  );
}

const keys = [
  ['↑ ↓', 'the line before, the line after'],
  ['Alt Shift ↑, Alt Shift ↓', 'move the run, with what hangs on it, up or down among those on the same run'],
  ['Alt Shift →', 'hang it on the run before it'],
  ['Alt Shift ←', 'hang it one step nearer to the street'],
  ['Alt Shift D', 'copy it with what hangs on it'],
  ['Alt Enter', 'add a run under it'],
  ['Alt Shift Enter', 'add a run after it'],
  ['Alt Shift Delete', 'delete it; what it feeds comes from the run before it'],
  ['Ctrl Z, Ctrl Y', 'undo, redo'],
] as const;

/** The keys of the layout, folded. */
export function RunKeys(): JSX.Element {
  return (
    <details id="run-keys" class="keys">
      <summary>Keys</summary>
      <p class="hint">
        On the line of a run. Each change is also a button, under Fields of the run or at the top of the page.
      </p>
      <dl>
        {keys.map(([key, does]) => (
          <div>
            <dt>
              <kbd>{key}</kbd>
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
