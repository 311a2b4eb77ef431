/** What one client may take of the server's time and memory; milliseconds. */
export interface HttpLimits {
  /** For the head of a request to come. */
  readonly head: number;
  /** For the whole of a request to come. */
  readonly request: number;
  /** How often connections are held against the two above. */
  readonly check: number;
  /** A connection on which nothing moves, either way. */
  readonly silence: number;
  /** A connection kept open for the next request. */
  readonly keepAlive: number;
  /** Open connections; one more is closed at once. */
  readonly connections: number;
  /** Requests in flight are waited for when the server stops, then cut off. */
  readonly stop: number;
}

/** Far above a phone at a job site, far below what a slow client could use to hold the server. */
export const httpLimits: HttpLimits = {
  head: 10_000,
  request: 30_000,
  check: 2_000,
  silence: 60_000,
  keepAlive: 10_000,
  connections: 2_000,
  stop: 10_000,
};
