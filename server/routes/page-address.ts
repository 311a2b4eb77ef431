/** The address of a workbench with a chosen path, what was just done there, and the place to go on at. */
export function pageAddress(id: string, path: string, anchor: string, done = ''): string {
  const query = new URLSearchParams(Object.entries({ path, done }).filter(([, value]) => value !== ''));
  const asked = query.size === 0 ? '' : `?${query}`;
  return `/jobs/${encodeURIComponent(id)}${asked}#${encodeURIComponent(anchor)}`;
}
