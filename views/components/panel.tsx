import { attribute } from './attribute.ts';

/**
 * The way to the fields of a row, and the place where the script unfolds them. Without the script they are a page of
 * their own; a row that carried all its fields would make the page of a building many times as heavy.
 */
export function PanelLink(props: {
  readonly id: string;
  readonly href: string;
  /** Of what, for those who do not see the row. */
  readonly of: string;
}): JSX.Element {
  return (
    <>
      <a
        id={`${props.id}:open`}
        class="more"
        href={attribute(props.href)}
        aria-expanded="false"
        aria-controls={props.id}
      >
        Fields<span class="visually-hidden" safe>{` ${props.of}`}</span>
      </a>
      {emptyPanel(props.id) as 'safe'}
    </>
  );
}

/** A panel that is folded; filled by {@link fillPanel}. */
export function emptyPanel(id: string): string {
  return `<div id="${id}" class="panel"></div>`;
}

/** Markup with a panel unfolded; as it was where it holds no such panel. */
export function fillPanel(html: string, id: string, content: string): string {
  if (!html.includes(emptyPanel(id))) return html;
  return html
    .replace(emptyPanel(id), () => `<div id="${id}" class="panel">${content}</div>`)
    .replace(`aria-expanded="false" aria-controls="${id}"`, `aria-expanded="true" aria-controls="${id}"`);
}
