import type { FixtureGroup, Job, Level } from '../../engine/job/job.ts';
import { changed, type Edited, nextId, refused } from './edited.ts';

export function addLevel(job: Job, level: Omit<Level, 'id'>): Edited {
  const id = nextId(
    'L',
    job.levels.map((other) => other.id),
  );
  return changed({ ...job, levels: [...job.levels, { id, ...level }] });
}

export function changeLevel(job: Job, id: string, level: Omit<Level, 'id'>): Edited {
  if (!job.levels.some((other) => other.id === id)) return refused({ '': `There is no level ${id}.` });
  return changed({ ...job, levels: job.levels.map((other) => (other.id === id ? { id, ...level } : other)) });
}

/** Deletes a level that no fixture stands on. */
export function removeLevel(job: Job, id: string): Edited {
  const level = job.levels.find((other) => other.id === id);
  if (level === undefined) return refused({ '': `There is no level ${id}.` });
  const on = job.fixtures.filter((fixture) => fixture.level === id);
  if (on.length > 0)
    return refused({
      '': `${level.name} still holds ${on.map(({ name }) => name).join(', ')}; move these first.`,
    });
  return changed({ ...job, levels: job.levels.filter((other) => other.id !== id) });
}

export function addGroup(job: Job, group: Omit<FixtureGroup, 'id'>): Edited {
  const id = nextId(
    'G',
    job.groups.map((other) => other.id),
  );
  return changed({ ...job, groups: [...job.groups, { id, ...group }] });
}

export function changeGroup(job: Job, id: string, group: Omit<FixtureGroup, 'id'>): Edited {
  if (!job.groups.some((other) => other.id === id)) return refused({ '': `There is no group ${id}.` });
  return changed({ ...job, groups: job.groups.map((other) => (other.id === id ? { id, ...group } : other)) });
}

/** Dissolves a group; its fixtures are then counted one by one. */
export function removeGroup(job: Job, id: string): Edited {
  if (!job.groups.some((other) => other.id === id)) return refused({ '': `There is no group ${id}.` });
  return changed({
    ...job,
    groups: job.groups.filter((other) => other.id !== id),
    fixtures: job.fixtures.map((fixture) => {
      if (fixture.group !== id) return fixture;
      const { group: _gone, ...rest } = fixture;
      return rest;
    }),
  });
}
