import { clearBin } from './bin-store.ts';
import type { Store } from './database.ts';

const day_ms = 24 * 60 * 60 * 1000;

/**
 * Clears the bin of what is too old, at once and then every day; a store that does not answer is asked again the day
 * after. @returns what stops it
 */
export function keepBinCleared(store: Store, now: () => Date): () => void {
  const clear = () => void clearBin(store, now()).catch(() => undefined);
  clear();
  const daily = setInterval(clear, day_ms);
  daily.unref();
  return () => clearInterval(daily);
}
