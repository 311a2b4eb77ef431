import { setImmediate } from 'node:timers/promises';

/** Lets other requests be answered between two pieces of heavy work. */
export async function nextTurn(): Promise<void> {
  await setImmediate();
}
