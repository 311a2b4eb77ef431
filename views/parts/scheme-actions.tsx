import type { Children } from '@kitajs/html';
import { attribute } from '../components/attribute.ts';
import { isPast } from '../components/read-only.tsx';
import type { Comparison } from '../schemes.ts';

/** Hidden fields of every form of the page: the revision that it shows, and the schemes that the reader asked for. */
export function ComparedFields({ comparison }: { comparison: Comparison }): JSX.Element {
  return (
    <>
      <input type="hidden" name="revision" value={String(comparison.revision)} />
      <input type="hidden" name="show" value={attribute(comparison.asked.join(','))} />
    </>
  );
}

/** What can be done with one scheme, each a form of its own; of an earlier revision, what can be opened. */
export function SchemeActions(props: {
  readonly comparison: Comparison;
  readonly scheme: string;
  readonly name: string;
}): JSX.Element {
  const { comparison, scheme, name } = props;
  const chosen = comparison.job.chosen === scheme;
  const of = <span class="visually-hidden" safe>{` ${name}`}</span>;
  return (
    <div class="scheme-actions">
      {chosen ? (
        <a class="button act" href={`/jobs/${comparison.id}`}>
          Open the workbench
        </a>
      ) : (
        <ActionForm {...props} verb="choose">
          <button type="submit" class="act">
            Choose this one{of as 'safe'}
          </button>
        </ActionForm>
      )}
      {chosen ? (
        <a class="button" href={`/jobs/${comparison.id}/sizing`}>
          How it is sized
        </a>
      ) : (
        ''
      )}
      <a class="button" href={`/jobs/${comparison.id}/takeoff?scheme=${encodeURIComponent(scheme)}`}>
        Take-off{of as 'safe'}
      </a>
      <ActionForm {...props} verb="size">
        <button type="submit" name="as" value="replace">
          Size at least cost{of as 'safe'}
        </button>
        <button type="submit" name="as" value="copy">
          Size a copy{of as 'safe'}
        </button>
      </ActionForm>
      <ActionForm {...props} verb="copy">
        <button type="submit">Copy{of as 'safe'}</button>
      </ActionForm>
      {chosen ? (
        ''
      ) : (
        <ActionForm {...props} verb="remove">
          <button type="submit">Remove{of as 'safe'}</button>
        </ActionForm>
      )}
    </div>
  );
}

function ActionForm(props: {
  readonly comparison: Comparison;
  readonly scheme: string;
  readonly verb: string;
  readonly children: Children;
}): JSX.Element {
  const { comparison, scheme, verb } = props;
  if (isPast(comparison.id)) return '';
  return (
    <form method="post" action={`/jobs/${comparison.id}/schemes/${encodeURIComponent(scheme)}/${verb}`}>
      <ComparedFields comparison={comparison} />
      {props.children as 'safe'}
    </form>
  );
}
