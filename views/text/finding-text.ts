import type { Finding, Mend } from '../../engine/checks/finding.ts';
import type { Job, UnitSystem } from '../../engine/job/job.ts';
import { materials } from '../../tables/pipe/names.ts';
import { units } from '../../tables/units/definitions.ts';
import type { Shown } from '../../tables/units/display.ts';
import { citedText, provenanceText } from './citation-text.ts';
import { figuresApart, figureWithUnit, fixed } from './figure.ts';
import { sizeText } from './size-text.ts';

/** One finding in words: what and where, what would mend it, and the rule's source. */
export interface FindingText {
  readonly what: string;
  readonly tryThis: string;
  readonly source: string;
}

/**
 * The sentences of a finding, in the units of the job.
 *
 * @param job gives names for the ids in the finding
 */
export function findingText(finding: Finding, job: Job): FindingText {
  const { what, tryThis } = words(finding, job);
  const mend = finding.mend === undefined ? undefined : mendText(finding.mend, job.units);
  return { what, tryThis: mend ?? tryThis, source: sourceText(finding.source) };
}

function sourceText(source: Finding['source']): string {
  if ('table' in source) return citedText(source);
  return provenanceText(source.source, source.at, source.verified);
}

function mendText(mend: Mend, system: UnitSystem): string {
  switch (mend.do) {
    case 'larger-pipe':
      return `Run ${mend.run} in ${sizeText(mend.size)} would gain ${figureWithUnit(mend.gain, 'pressure', system)}, ${enough(mend.mends)}.`;
    case 'larger-meter':
      return `A ${sizeText(mend.size)} meter on run ${mend.run} would gain ${figureWithUnit(mend.gain, 'pressure', system)}, ${enough(mend.mends)}.`;
    case 'slower-pipe':
      return `In ${sizeText(mend.size)} the water in run ${mend.run} moves at ${figureWithUnit(mend.velocity, 'velocity', system)}.`;
    case 'lower-setting':
      return `Set the reducing valve on run ${mend.run} to ${figureWithUnit(mend.set, 'pressure', system)} or lower.`;
    case 'raise-setting':
      return `Setting the reducing valve on run ${mend.run} to ${figureWithUnit(mend.set, 'pressure', system)}, the most that the limit at rest allows, would gain ${figureWithUnit(mend.gain, 'pressure', system)}, ${enough(mend.mends)}.`;
    case 'raise-pressure':
      return `No pipe size helps: ${figureWithUnit(mend.by, 'pressure', system)} more is needed at the street, or a booster pump.`;
    case 'add-reducing-valve':
      return 'Put a pressure reducing valve behind the meter.';
    case 'add-expansion-tank':
      return 'Put an expansion tank on the cold side of the heater.';
    case 'add-shut-off':
      return `Add a full-way shut-off valve on run ${mend.run}, for instance a ball valve.`;
    case 'add-arrester':
      return `End a short run off ${mend.run} in a water hammer arrester.`;
  }
}

function enough(mends: boolean): string {
  return mends ? 'which is enough' : 'which alone is not enough';
}

function fixtureName(job: Job, id: string): string {
  const fixture = job.fixtures.find((one) => one.id === id);
  return fixture === undefined ? id : `${fixture.name} (${fixture.id})`;
}

function words(finding: Finding, job: Job): { readonly what: string; readonly tryThis: string } {
  const show = (value: number, dimension: Shown) => figureWithUnit(value, dimension, job.units);
  const apart = (value: number, limit: number, dimension: Shown) =>
    figuresApart(value, limit, dimension, job.units);
  switch (finding.code) {
    case 'residual-short': {
      const [value, limit] = apart(finding.residual, finding.required, 'pressure');
      return {
        what: `${fixtureName(job, finding.fixture)} has ${value} left at its ${finding.inlet} inlet, run ${finding.run}; it needs ${limit}.`,
        tryThis:
          'Try a larger size where the staircase falls most, a shorter path, or a device that loses less.',
      };
    }
    case 'static-high': {
      const [value, limit] = apart(finding.pressure, finding.limit, 'pressure');
      return {
        what: `The pressure at rest at the end of run ${finding.run} is ${value}; no more than ${limit} is allowed. Parts may leak or burst.`,
        tryThis: 'Put a pressure reducing valve on the service.',
      };
    }
    case 'static-low': {
      const [value, limit] = apart(finding.pressure, finding.limit, 'pressure');
      return {
        what: `The street gives the service, run ${finding.run}, ${value} at rest at its daily low; at least ${limit} is asked at the building.`,
        tryThis: 'Ask the utility what it holds, or plan a booster pump.',
      };
    }
    case 'street-beyond-test': {
      const [value, limit] = apart(finding.flow, finding.limit, 'flow');
      return {
        what: `The service, run ${finding.run}, draws ${value}, more than the ${limit} at which the street was tested; its pressure there is carried on beyond what was measured.`,
        tryThis: 'Test the street at a larger flow.',
      };
    }
    case 'material-cold-only':
      return {
        what: `Run ${finding.run} carries water of ${show(finding.temperature, 'temperature')} in ${materials[finding.material]}, which is pipe for cold water only. It may soften and burst.`,
        tryThis: 'Choose a pipe that is listed for hot water.',
      };
    case 'make-up-unprotected':
      return {
        what: `${finding.fixtures.map((id) => fixtureName(job, id)).join(', ')}: what it fills can be drawn back into the drinking water.`,
        tryThis: 'Fit the backflow assembly that the local code asks for what it fills.',
      };
    case 'velocity-high': {
      const [value, limit] = apart(finding.velocity, finding.limit, 'velocity');
      return {
        what: `Water in run ${finding.run} moves at ${value}; the limit for this pipe and temperature is ${limit}.`,
        tryThis: `Try the next larger size for run ${finding.run}.`,
      };
    }
    case 'service-small':
      return {
        what: `The service, run ${finding.run}, is ${sizeText(finding.size)}; it may not be smaller than ${sizeText(finding.least)}`,
        tryThis: `Make run ${finding.run} ${sizeText(finding.least)} or larger.`,
      };
    case 'fixture-supply-small':
      return {
        what: `Run ${finding.run} to ${fixtureName(job, finding.fixture)} is ${sizeText(finding.size)}; the least supply for this fixture is ${sizeText(finding.least)}`,
        tryThis: `Make run ${finding.run} ${sizeText(finding.least)} or larger.`,
      };
    case 'manifold-over-capacity': {
      const [value, limit] = apart(finding.flow, finding.limit, 'flow');
      return {
        what: `The ${sizeText(finding.size)} manifold at the end of run ${finding.run} would carry ${value}; it is good for ${limit}.`,
        tryThis: 'Take a larger manifold, or split the fixtures over two.',
      };
    }
    case 'manifold-ports-short':
      return {
        what: `The manifold at the end of run ${finding.run} has ${finding.ports} ports, and ${finding.used} runs leave it.`,
        tryThis: 'Take a manifold with more ports, or move a run to another one.',
      };
    case 'home-run-long': {
      const [value, limit] = apart(finding.length, finding.limit, 'length');
      return {
        what: `Home run ${finding.run} is ${value} long; below the usual supply size it may be ${limit}.`,
        tryThis: 'Move the manifold closer, or make the run the usual supply size.',
      };
    }
    case 'home-run-pressure-low': {
      const [value, limit] = apart(finding.pressure, finding.limit, 'pressure');
      return {
        what: `The street gives ${value} under flow; home run ${finding.run}, below the usual supply size, asks for ${limit} at the meter.`,
        tryThis: `Make run ${finding.run} the usual supply size.`,
      };
    }
    case 'meter-over-maximum': {
      const [value, limit] = apart(finding.flow, finding.limit, 'flow');
      return {
        what: `The ${sizeText(finding.size)} meter on run ${finding.run} would carry ${value}; its safe maximum is ${limit}.`,
        tryThis: 'Take the next larger meter.',
      };
    }
    case 'pump-short': {
      const [value, limit] = apart(finding.flow, finding.limit, 'flow');
      return {
        what: `The house may draw ${value} at once through run ${finding.run}; the pump gives ${limit}. The tank bridges only a short draw.`,
        tryThis: 'Take a larger pump or tank, or lower the flow that runs at the same time.',
      };
    }
    case 'hot-length-long': {
      const [value, limit] = apart(finding.length, finding.limit, 'length');
      return {
        what: `Hot water reaches ${fixtureName(job, finding.fixture)} by run ${finding.run} through ${value} of pipe; without circulation the limit is ${limit}.`,
        tryThis: 'Move the heater closer, put another one near, or circulate.',
      };
    }
    case 'hot-volume-large': {
      const [value, limit] = apart(finding.volume, finding.limit, 'volume');
      return {
        what: `The hot pipe to ${fixtureName(job, finding.fixture)} by run ${finding.run} holds ${value}; no more than ${limit} is recommended.`,
        tryThis: 'Shorten the hot path, run it smaller where the pressure allows, or circulate.',
      };
    }
    case 'expansion-uncontrolled':
      return {
        what: `Heater run ${finding.heater} stands in a closed system (run ${finding.run} lets no water back), and nothing takes up the expansion of heated water.`,
        tryThis: 'Put an expansion tank on the cold side of the heater; the relief valve is no substitute.',
      };
    case 'hot-cold-apart':
      return {
        what: `At ${fixtureName(job, finding.fixture)} ${show(finding.cold, 'pressure')} is left on the cold side and ${show(finding.hot, 'pressure')} on the hot; more than ${show(finding.limit, 'pressure')} apart, the mixed temperature may swing and can scald.`,
        tryThis: 'Even out the sizes of the two paths. The mixing valve must be listed for scald protection.',
      };
    case 'rating-exceeded': {
      const [value, limit] = apart(finding.pressure, finding.limit, 'pressure');
      return {
        what: `Run ${finding.run} sees ${value} at ${show(finding.temperature, 'temperature')}; its pipe is rated for ${limit} at that temperature.`,
        tryThis: 'Lower the pressure or the temperature, or choose another material.',
      };
    }
    case 'rating-unknown':
      return {
        what: `No rating is on file for the pipe of run ${finding.run} at ${show(finding.temperature, 'temperature')}.`,
        tryThis: 'Read the rating printed on the pipe, or choose a material that is rated for it.',
      };
    case 'shut-off-missing':
      return {
        what: `${shutOffPlace(finding.where)} run ${finding.run} has no shut-off valve.`,
        tryThis: `Add a ball valve to run ${finding.run}.`,
      };
    case 'arrester-missing':
      return {
        what: `${fixtureName(job, finding.fixture)} on run ${finding.run} closes quickly, and no water hammer arrester is near it.`,
        tryThis: 'Put a water hammer arrester at the valve.',
      };
    case 'arrester-small': {
      const has = `The arrester on run ${finding.run} is size ${finding.size};`;
      const units = `${fixed(finding.units, 1)} WSFU`;
      return finding.least === undefined
        ? {
            what: `${has} no size serves the ${units} of the run that it stands on.`,
            tryThis: 'Put arresters on the branches, each near the valves that close quickly.',
          }
        : {
            what: `${has} for ${units} size ${finding.least} is asked.`,
            tryThis: `Take size ${finding.least}.`,
          };
    }
    case 'laws-apart':
      return {
        what: `On the path to run ${finding.run} the two friction laws part: Hazen-Williams loses ${show(finding.hazenWilliams, 'pressure')}, Darcy-Weisbach ${show(finding.darcyWeisbach, 'pressure')}.`,
        tryThis: 'Read the answer under both laws (see basis) and size for the lower pressure.',
      };
    case 'pressure-negative':
      return {
        what: `At the end of run ${finding.run} the pressure would be ${show(finding.pressure, 'pressure')}, below the air's: this flow cannot be had, and water could be drawn back.`,
        tryThis: 'Take larger pipe before this run, or lower the flow.',
      };
    case 'curve-exceeded': {
      const [value, limit] = apart(finding.flow, finding.limit, 'flow');
      return {
        what: `The device on run ${finding.run} carries ${value}; its loss curve ends at ${limit}, and the loss beyond is carried on by the square of the flow.`,
        tryThis: 'Take a larger device, or type in the maker’s points up to this flow.',
      };
    }
    case 'height-mismatch':
      return {
        what: `The runs to ${fixtureName(job, finding.fixture)} end at ${show(finding.piped, 'length')} (run ${finding.run}), while the schedule puts it at ${show(finding.scheduled, 'length')}.`,
        tryThis: 'Correct the rises on the path, the level, or the height of the fixture.',
      };
    case 'dead-end':
      return {
        what: `Run ${finding.run} serves nothing: a dead end where water stands.`,
        tryThis: `Connect a fixture to run ${finding.run}, or delete it.`,
      };
    case 'hot-water-scalds': {
      const [value, limit] = apart(finding.temperature, finding.limit, 'temperature');
      return {
        what: `Hot water is set to ${value}; the usual caution starts at ${limit}: hotter water can scald within seconds at a bath, shower or lavatory.`,
        tryThis:
          'Temper the water with a listed mixing valve. The local code and the licensed plumber decide.',
      };
    }
    case 'hose-outlets':
      return {
        what: `${finding.fixtures.map((id) => fixtureName(job, id)).join(', ')}: used or treated water can be drawn back from a hose or from the ground into the drinking water.`,
        tryThis:
          'Fit a vacuum breaker at each, or for irrigation the backflow assembly that the local code asks for.',
      };
    case 'demand-beyond-table':
      return {
        what: `Run ${finding.run} serves ${fixed(finding.units, 1)} ${units[finding.unit].symbol}; the demand table ends at ${fixed(finding.limit, 1)} ${units[finding.unit].symbol}, and its last step is carried on.`,
        tryThis: 'Have the demand of this run judged by an engineer.',
      };
  }
}

function shutOffPlace(where: 'main' | 'outdoor' | 'manifold'): string {
  switch (where) {
    case 'main':
      return 'The main,';
    case 'outdoor':
      return 'The outdoor group on';
    case 'manifold':
      return 'The manifold port of';
  }
}
