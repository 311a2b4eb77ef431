import { deviations, isChoice } from '../../engine/job/deviations.ts';
import type { Job } from '../../engine/job/job.ts';
import type { Part } from '../../views/part.ts';
import { AnswerBar, answerBarId } from '../../views/parts/answer-bar.tsx';
import { basisPart } from '../../views/parts/basis-form.tsx';
import { deviationPart } from '../../views/parts/deviation-list.tsx';
import { FindingsList, findingsId } from '../../views/parts/findings-list.tsx';
import { addFixturePart, fixtureListPart } from '../../views/parts/fixture-list.tsx';
import { JobTitle, jobFieldsPart, jobTitleId } from '../../views/parts/job-head.tsx';
import { addGroupPart, addLevelPart, groupListPart, levelListPart } from '../../views/parts/level-list.tsx';
import {
  pipeSizesPart,
  runEndsPart,
  runLinesPart,
  runListPart,
  runNamesPart,
} from '../../views/parts/run-list.tsx';
import { schemePart } from '../../views/parts/scheme-strip.tsx';
import { supplyPart } from '../../views/parts/supply-form.tsx';
import { trialPart } from '../../views/parts/trial-panel.tsx';
import type { Workbench } from '../../views/workbench.ts';
import { pipeChoices } from './pipe-choices.ts';

/** Every piece of the workbench that an edit may change, whatever path is shown. */
export interface PartList {
  readonly title: Part;
  readonly scheme: Part;
  readonly answer: Part;
  readonly trial: Part;
  readonly findings: Part;
  readonly runs: Part;
  readonly runNames: Part;
  readonly runEnds: Part;
  readonly pipeSizes: Part;
  readonly runLines: Part;
  readonly supply: Part;
  readonly fixtures: Part;
  readonly addFixture: Part;
  readonly levels: Part;
  readonly addLevel: Part;
  readonly groups: Part;
  readonly addGroup: Part;
  readonly basis: Part;
  readonly deviations: Part;
  readonly job: Part;
}

export function partList(bench: Workbench): PartList {
  const pipe = pipeChoices(bench);
  return {
    title: { id: jobTitleId, html: (<JobTitle job={bench.job} />) as string },
    scheme: schemePart(bench),
    answer: { id: answerBarId, html: (<AnswerBar bench={bench} />) as string },
    trial: trialPart(bench),
    findings: { id: findingsId, html: (<FindingsList bench={bench} />) as string },
    runs: runListPart(bench),
    runNames: runNamesPart(bench),
    runEnds: runEndsPart(bench),
    pipeSizes: pipeSizesPart(pipe),
    runLines: runLinesPart(pipe),
    supply: supplyPart(bench),
    fixtures: fixtureListPart(bench),
    addFixture: addFixturePart(bench),
    levels: levelListPart(bench),
    addLevel: addLevelPart(bench.job),
    groups: groupListPart(bench),
    addGroup: addGroupPart(),
    basis: basisPart(bench),
    deviations: deviationsOf(bench.job),
    job: jobFieldsPart(bench),
  };
}

/** Where the job departs from its code, as the workbench lists it. */
export function deviationsOf(job: Job): Part {
  const all = deviations(job);
  return deviationPart({
    own: all.filter((deviation) => !isChoice(deviation)),
    chosen: all.filter(isChoice),
    units: job.units,
  });
}
