import type { Question } from '../../engine/takeoff/question.ts';
import { materials } from '../../tables/pipe/names.ts';

/** What a take-off asks about the drawing, in one sentence. */
export function questionText(question: Question): string {
  const { run } = question;
  switch (question.code) {
    case 'tee-not-drawn':
      return `${run} leaves ${question.from} where others do, and no tee is drawn in it; the tee is counted.`;
    case 'tee-without-junction': {
      const { legs } = question;
      const what = legs === 1 ? 'a leg of a tee is' : `${legs} legs of tees are`;
      return `In ${run} ${what} drawn where no tee is; not counted.`;
    }
    case 'straight-unclear':
      return `Behind ${run} the drawing does not say which run goes straight on through the tee; ${question.taken} is taken.`;
    case 'stop-not-drawn':
      return `${run} ends at ${question.fixture} without a shut-off; a stop is counted.`;
    case 'shared-inlet':
      return `${run} serves ${question.count} fixtures of ${question.fixture}; tees and pipe between them are not drawn and not counted.`;
    case 'open-end':
      return `${run} ends nowhere; a cap is counted.`;
    case 'ports-short':
      return `${question.lines} lines leave the manifold at ${run}, which has ${question.ports} ports.`;
    case 'mixing-valve-inlet':
      return `The other inlet of the mixing valve at ${run} is not drawn; its pipe and fittings are not counted.`;
    case 'no-support-spacing':
      return `The support table has no spacing for ${question.size} ${materials[question.material]} (${run}); no supports are counted.`;
  }
}
