/** A request that is answered by a page in words; thrown by handlers, shown by the error handler. */
export class Refusal extends Error {
  readonly statusCode: number;
  readonly title: string;

  constructor(statusCode: number, title: string, message: string) {
    super(message);
    this.statusCode = statusCode;
    this.title = title;
  }
}

/** 404 for an address that names no job. */
export function noSuchJob(): Refusal {
  return new Refusal(404, 'No such job', 'There is no job at this address. It may have been deleted.');
}
