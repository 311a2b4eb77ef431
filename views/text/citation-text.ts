import type { Cited, Locator, Source, Verification } from '../../tables/table.ts';

/** How far a value was compared with its document, in words. */
export function verificationText(verified: Verification): string {
  switch (verified) {
    case 'seen':
      return 'read in the document';
    case 'seen-secondary':
      return 'read in a page that quotes the document';
    case 'textbook':
      return 'standard hydraulics, as any textbook prints it';
    case 'corroborated':
      return 'recalled, and the same figure read in another code';
    case 'memory':
      return 'from memory, not verified';
    case 'computed':
      return 'computed here from other values';
    case 'common-practice':
      return 'common practice, no source';
    case 'given':
      return 'as the job gives it';
  }
}

/** A code's year stands behind its name as it is; all else that is said of an edition stands in brackets. */
function editionIsPlain({ title, edition }: Source): boolean {
  return edition === '' || (/^\d{4}$/.test(edition) && !title.includes(','));
}

/** Document and edition, and the place in it where one is known. */
export function placeText(source: Source, at: Locator): string {
  const { title, edition } = source;
  const document = editionIsPlain(source) ? `${title} ${edition}`.trim() : `${title} (${edition})`;
  return [document, ...placesIn(at)].join(', ');
}

function placesIn({ table, section, page }: Locator): string[] {
  return [
    table === undefined ? undefined : numbered('table', table),
    section === undefined ? undefined : numbered('section', section),
    page === undefined ? undefined : `page ${page}`,
  ].filter((part) => part !== undefined);
}

/** `table 604.5`, but `Appendix C` and `friction loss` as they are. */
function numbered(kind: string, place: string): string {
  return /^([A-Z]?\d|[A-Z][ .]|[A-Z]+$|[A-Z]\d)/.test(place) ? `${kind} ${place}` : place;
}

/** Where a rule, a formula or a value stands and how far that was verified, e.g. for the end of a finding. */
export function provenanceText(source: Source, at: Locator, verified: Verification): string {
  const place = placeText(source, at);
  if (source.id === 'job' || source.id === 'job-table') return place;
  if (verified === 'common-practice' && source.id === 'trade-practice') return `${place}, no source`;
  if (verified === 'common-practice' && source.id === 'hightap') return `${place} (no code asks for it)`;
  if (!editionIsPlain(source) && placesIn(at).length === 0) {
    return `${place.slice(0, -1)}; ${verificationText(verified)})`;
  }
  return `${place} (${verificationText(verified)})`;
}

/** Where one table value stands and how far it was verified. */
export function citedText({ table, source = table.source, at = table.at, verified }: Cited): string {
  return provenanceText(source, at, verified);
}
