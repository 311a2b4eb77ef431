import { randomBytes } from 'node:crypto';

/** Lower-case letters and digits that are not mistaken for each other; 32 of them, so that five bits choose one. */
const letters = 'abcdefghijkmnpqrstuvwxyz23456789';

/** An id for an address line that nobody guesses: 100 bits by chance, in 20 letters and digits. */
export function newId(): string {
  return Array.from(randomBytes(20), (byte) => letters[byte & 31]).join('');
}
