import { promisify } from 'node:util';
import { deflate, inflate } from 'node:zlib';

const pack = promisify(deflate);
const unpack = promisify(inflate);

/** A document as it is kept: UTF-8 in the zlib format (RFC 1950), whose check sum tells a damaged one when it is read. */
export async function packText(text: string): Promise<Uint8Array> {
  return await pack(text);
}

/** @throws where the bytes are damaged */
export async function unpackText(packed: Uint8Array | ArrayBuffer): Promise<string> {
  return (await unpack(packed)).toString('utf8');
}
