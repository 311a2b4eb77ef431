import type { SheetSection } from '../../../views/sheet.ts';
import { paragraph } from '../blocks.ts';

/** What must not be overlooked, and the lines to sign on. */
export function cautionSection(): SheetSection {
  return {
    id: 'cautions',
    title: 'Cautions and signatures',
    whole: true,
    blocks: [
      paragraph(
        'Computed for planning. The adopted local code with its amendments, its inspector and the licensed plumber decide; compare what is marked as from memory with your copy of the code.',
        'caution',
      ),
      paragraph(
        'Hot water scalds within seconds: stored hot enough to keep bacteria down, it needs a listed mixing valve wherever the code names one.',
        'caution',
      ),
      paragraph(
        'Cross-connection: used or treated water can be drawn back into the drinking water. Every hose outlet needs its vacuum breaker, every system that is filled its backflow assembly.',
        'caution',
      ),
      paragraph(
        'Test pressure: as the local code asks, and never more than the weakest of pipe, joints and what is connected is rated for. Compressed air can burst what water would only wet; many makers of plastic pipe forbid it.',
        'caution',
      ),
      {
        is: 'blanks',
        labels: ['Computed by', 'Licence', 'Date', 'Reviewed by', 'Office or licence', 'Date'],
      },
    ],
  };
}
