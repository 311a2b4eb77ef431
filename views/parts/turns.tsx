import { EditForm } from '../components/edit-form.tsx';
import { readAddress } from '../job-address.ts';

/** Takes back the last change of the job, and brings back what was taken back; Ctrl+Z and Ctrl+Y press them. From here begins a trial. */
export function Turns({ job }: { readonly job: string }): JSX.Element {
  return (
    <div class="turns">
      <Turn id="undo" job={job} label="Undo" keys="Control+Z Meta+Z" />
      <Turn id="redo" job={job} label="Redo" keys="Control+Y Control+Shift+Z Meta+Shift+Z" />
      {readAddress(job).at === 'job' ? (
        <form method="post" action={`/jobs/${job}/try`} class="turn">
          <button type="submit">Try without saving</button>
        </form>
      ) : (
        ''
      )}
    </div>
  );
}

function Turn(props: {
  readonly id: 'undo' | 'redo';
  readonly job: string;
  readonly label: string;
  readonly keys: string;
}): JSX.Element {
  const { id, job, label, keys } = props;
  return (
    <EditForm id={id} action={`/jobs/${job}/${id}`} class="turn">
      <button id={`${id}:button`} type="submit" class="act" aria-keyshortcuts={keys} safe>
        {label}
      </button>
    </EditForm>
  );
}
