import type { Job } from '../../engine/job/job.ts';
import type { Missing } from '../../engine/layout/missing.ts';
import { defectText } from './defect-text.ts';

/** In a sentence, what a job does not say and a layout has to know. */
export function missingText(missing: Missing, job: Job): string {
  switch (missing.code) {
    case 'places':
      return 'The job does not say where the service comes in, where the mechanical room is and where pipe may rise; add "places" to its file, or begin with a quick start.';
    case 'fixtures':
      return 'The schedule has no fixtures yet.';
    case 'fixture-level':
      return `${fixtureName(job, missing.fixture)} stands on no level of the job.`;
    case 'fixture-place':
      return `${fixtureName(job, missing.fixture)} has no place on the plan; give x and y, or a length of pipe.`;
    case 'place-level': {
      const place = { serviceEntry: 'service entry', mechanicalRoom: 'mechanical room' }[missing.place];
      return `The ${place} stands on no level of the job.`;
    }
    case 'halves':
      return 'There is nothing to make two halves of; draw it up in one piece.';
    case 'sound-job':
      return missing.defects.map((defect) => defectText(defect, job.units)).join(' ');
  }
}

function fixtureName(job: Job, id: string): string {
  const fixture = job.fixtures.find((one) => one.id === id);
  return fixture === undefined ? id : `${fixture.name} (${fixture.id})`;
}
