import type { FastifyRequest } from 'fastify';
import { fileLimits } from '../document/file-limits.ts';

export type Upload =
  | { readonly ok: true; readonly bytes: Uint8Array }
  | { readonly ok: false; readonly status: 413 | 415 | 422; readonly problem: string };

/** The one file of an upload form, or a sentence that says what came instead. */
export async function readUpload(request: FastifyRequest): Promise<Upload> {
  if (!request.isMultipart()) {
    return {
      ok: false,
      status: 415,
      problem: 'The upload did not come as a file; choose a file and try again.',
    };
  }
  try {
    const part = await request.file();
    if (part === undefined)
      return { ok: false, status: 422, problem: 'No file came; choose a file and try again.' };
    const bytes = await part.toBuffer();
    if (bytes.length === 0) return { ok: false, status: 422, problem: 'The file is empty.' };
    return { ok: true, bytes };
  } catch (error) {
    if (codeOf(error) === 'FST_REQ_FILE_TOO_LARGE') {
      const most = fileLimits.bytes / 1e6;
      return {
        ok: false,
        status: 413,
        problem: `The file is larger than ${most} MB, more than any job file.`,
      };
    }
    // The parser of multipart bodies throws for whatever a client can get wrong; none of it is ours.
    return { ok: false, status: 422, problem: 'The upload was cut short or malformed; try again.' };
  }
}

function codeOf(error: unknown): unknown {
  return typeof error === 'object' && error !== null && 'code' in error ? error.code : undefined;
}
