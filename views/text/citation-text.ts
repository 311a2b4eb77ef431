import type { Cited, Locator, Source, Verification } from '../../tables/table.ts';

/** How far a value was compared with its document, in words. */
export function verificationText(verified: Verification): string {
  switch (verified) {
    case 'seen':
      return 'read in the document';
    case 'seen-secondary':
      return 'read in a page that quotes the document';
    case 'corroborated':
      return 'recalled, and the same figure read in another code';
    case 'memory':
      return 'from memory, not verified';
    case 'computed':
      return 'computed here from other values';
    case 'common-practice':
      return 'common practice, no source';
  }
}

/** Document, edition, and the place in it. */
export function placeText(source: Source, at: Locator): string {
  const place = [
    at.table === undefined ? undefined : `table ${at.table}`,
    at.section === undefined ? undefined : `section ${at.section}`,
    at.page === undefined ? undefined : `page ${at.page}`,
  ].filter((part) => part !== undefined);
  return [`${source.title} ${source.edition}`.trim(), ...place].join(', ');
}

/** Where one table value stands and how far it was verified, e.g. for the end of a finding. */
export function citedText(cited: Cited): string {
  return `${placeText(cited.table.source, cited.table.at)} (${verificationText(cited.verified)})`;
}
