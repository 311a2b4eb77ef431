import type { PsiPrice } from '../../engine/index.ts';

/** `run C4 from 3/4 to 1`, `meter at S1 from 3/4 to 1`, `run C4 shorter by 10 ft`, `scheme zones`. */
export function changeWords(change: PsiPrice['change']): string {
  switch (change.do) {
    case 'larger-pipe':
      return `run ${change.run} from ${change.from} to ${change.to}`;
    case 'larger-meter':
      return `meter at ${change.run} from ${change.from} to ${change.to}`;
    case 'shorter-run':
      return `run ${change.run} shorter by ${change.by.typed}`;
    case 'other-scheme':
      return `scheme ${change.scheme} as drawn`;
  }
}
