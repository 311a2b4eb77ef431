export function fixtureRowId(fixture: string): string {
  return `fixture:${fixture}`;
}

export function fixtureForm(fixture: string): string {
  return `fixture:${fixture}:edit`;
}

export function deleteFixtureForm(fixture: string): string {
  return `fixture:${fixture}:delete`;
}

export function fixturePanel(fixture: string): string {
  return `fixture:${fixture}:panel`;
}

/** Address of a fixture: its fields as a page, and where they are posted. */
export function fixtureAction(job: string, fixture: string): string {
  return `/jobs/${job}/fixtures/${encodeURIComponent(fixture)}`;
}
