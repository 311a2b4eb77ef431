import { attribute } from '../components/attribute.ts';

export const hereId = 'here';
export const noticeId = 'notice';
/** The hidden list of texts that an edit changed. */
export const freshTextsId = 'fresh';

/** Where the reader is: the revision that the page shows and the chosen path. */
export interface Here {
  readonly revision: number;
  /** Empty: the worst fixture's. */
  readonly path: string;
}

export function HereInputs({ revision, path }: Here): JSX.Element {
  return (
    <>
      <input type="hidden" name="revision" value={String(revision)} />
      <input type="hidden" name="path" value={attribute(path)} />
    </>
  );
}

/**
 * The same for edits in place, under names of its own: a form keeps what the page was loaded with, and htmx lets a
 * form's own field win over an included one of the same name.
 */
export function HerePart({ revision, path }: Here): JSX.Element {
  return (
    <div id={hereId} hidden>
      <input type="hidden" name="liveRevision" value={String(revision)} />
      <input type="hidden" name="livePath" value={attribute(path)} />
    </div>
  );
}

/** A sentence about the page as a whole; empty most of the time. */
export function Notice({ text }: { text: string }): JSX.Element {
  return (
    <div id={noticeId} role="alert" class={text === '' ? 'notice empty' : 'notice'}>
      {text === '' ? '' : <p safe>{text}</p>}
    </div>
  );
}
