import type { Deviation } from '../../engine/job/deviations.ts';
import type { UnitSystem } from '../../engine/job/job.ts';
import type { Part } from '../part.ts';
import { deviationText } from '../text/deviation-text.ts';

/** More than these are counted: makers' figures may stand at every fixture of a large building. */
const most = 12;

interface Listed {
  /** Departures from the code: the makers' figures last. */
  readonly own: readonly Deviation[];
  /** What the code leaves open. */
  readonly chosen: readonly Deviation[];
  readonly units: UnitSystem;
}

/** Where a job departs from its code and what it chooses where the code leaves it open, a line each. */
export function deviationPart(listed: Listed): Part {
  return { id: 'deviations', html: (<DeviationList {...listed} />) as string };
}

function DeviationList({ own, chosen, units }: Listed): JSX.Element {
  const further = own.length - most;
  return (
    <div id="deviations">
      <h3>Departures from the code, and choices</h3>
      <ul>
        {[...own.slice(0, most), ...chosen].map((deviation) => (
          <li safe>{deviationText(deviation, units)}</li>
        ))}
      </ul>
      {further > 0 ? <p safe>{`Further figures of makers at fixtures: ${further}.`}</p> : ''}
    </div>
  );
}
