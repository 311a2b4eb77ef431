import { escapeHtml } from '@kitajs/html';
import { markupOf, type Part } from '../../views/part.ts';
import { freshTextsId } from '../../views/parts/here.tsx';
import type { Change } from './changed-parts.ts';

/** A part as htmx swaps it out of band: the element of the same id is replaced. */
export function outOfBand(part: Part): string {
  const html = markupOf(part);
  const mark = ` id="${part.id}"`;
  const at = html.indexOf(mark);
  if (at < 0 || at > html.indexOf('>')) throw new Error(`the root of part ${part.id} does not carry its id`);
  return `${html.slice(0, at)} hx-swap-oob="true"${html.slice(at)}`;
}

/**
 * Changes as one answer. Texts go together in one hidden list, from which the page's script puts each in its place:
 * one change of a trunk is another figure in every row behind it, and a swap for each would be slow.
 */
export function changesOutOfBand(changes: readonly Change[]): string {
  const texts = changes.flatMap((change) => (change.what === 'text' ? [change] : []));
  const fresh = texts
    .map(({ id, text }) => `<data value="${escapeHtml(id)}">${escapeHtml(text)}</data>`)
    .join('');
  return [
    ...changes.map(changeOutOfBand),
    texts.length === 0 ? '' : `<div hx-swap-oob="true" id="${freshTextsId}" hidden>${fresh}</div>`,
  ].join('');
}

function changeOutOfBand(change: Change): string {
  switch (change.what) {
    case 'replace':
      return outOfBand(change.part);
    case 'remove':
      return `<li hx-swap-oob="delete" id="${change.id}"></li>`;
    case 'insert': {
      const { list, after, rows } = change;
      const where = after === undefined ? `afterbegin:[id='${list}']` : `afterend:[id='${after}']`;
      return `<ul hx-swap-oob="${where}">${rows.map(markupOf).join('')}</ul>`;
    }
    case 'text':
      return '';
  }
}
