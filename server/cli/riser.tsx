import { DrawingSvg } from '../../views/parts/drawing-svg.tsx';
import { drawingTitle, runText } from '../../views/text/riser-text.ts';
import { drawScheme, viewNamed } from '../drawing/draw-scheme.ts';
import { shownWord } from '../words/shown-word.ts';
import type { Call } from './command.ts';
import { openJob } from './open-job.ts';
import { isRefusal, type Outcome, refuse } from './outcome.ts';

/** `hightap riser JOB`: the drawing of a scheme as an SVG file that needs no style sheet. */
export async function riser({ words, values, input }: Call): Promise<Outcome> {
  const report = await openJob(words[0]!, values.get('scheme'), input);
  if (isRefusal(report)) return report;
  const asked = values.get('view');
  const view = asked === undefined ? undefined : viewNamed(asked);
  if (asked !== undefined && view === undefined)
    return refuse(`--view: ${shownWord(asked)} is no view; expected riser or plan`);
  const drawing = drawScheme(report, view);
  if (typeof drawing === 'string') return refuse(drawing);
  const svg = await (
    <DrawingSvg
      id="drawing-title"
      drawing={drawing}
      title={drawingTitle(report, drawing.view)}
      about={(at) => runText(report, at)}
    />
  );
  return { is: 'file', text: `${svg}\n` };
}
