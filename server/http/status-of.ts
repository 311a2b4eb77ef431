/** The status that an error is answered with: its own where it blames the client, else 500. */
export function statusOf(error: unknown): number {
  if (typeof error !== 'object' || error === null || !('statusCode' in error)) return 500;
  const { statusCode } = error;
  if (typeof statusCode !== 'number' || statusCode < 400 || statusCode > 599) return 500;
  // The parser of uploads says 406 where a body is of the wrong kind.
  return statusCode === 406 ? 415 : statusCode;
}
