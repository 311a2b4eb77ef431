import type { PsiPrice } from '../../engine/index.ts';

/** `run C4 from 3/4 to 1`, `meter at S1 from 3/4 to 1`. */
export function changeWords(change: PsiPrice['change']): string {
  const what = change.do === 'larger-pipe' ? `run ${change.run}` : `meter at ${change.run}`;
  return `${what} from ${change.from} to ${change.to}`;
}
