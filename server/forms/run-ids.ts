/** Names of runs as a reader types them: apart by commas, semicolons or spaces; each once, in order. */
export function splitIds(typed: string): readonly string[] {
  return [...new Set(typed.split(/[\s,;]+/).filter((word) => word !== ''))];
}
