import { z } from 'zod';
import { mostCompared } from '../../engine/index.ts';
import { materials } from '../../tables/pipe/names.ts';
import { fileLimits } from '../document/file-limits.ts';
import { choiceOf, idOf, keysOf, textOf, yesOrNo } from '../document/schema-parts.ts';
import { checkJson } from './check-json.ts';
import { chooseInlet } from './choose-inlet.ts';
import { chooseSteps } from './choose-steps.ts';
import { compareJson } from './compare-json.ts';
import { comparisonOf } from './comparison.ts';
import { type Computation, computation } from './computation.ts';
import { explainJson } from './explain-json.ts';
import { pressureJson } from './pressure-json.ts';
import { isRefusal } from './refusal.ts';
import { reportOf, servingReportOf } from './report-of.ts';
import { checkAnswer } from './schema-check.ts';
import { compareAnswer } from './schema-compare.ts';
import { explainAnswer } from './schema-explain.ts';
import { pressureAnswer } from './schema-pressure.ts';
import { sizeAnswer } from './schema-size.ts';
import { takeOffAnswer } from './schema-takeoff.ts';
import { sizeJson } from './size-json.ts';
import { studySize } from './study-size.ts';
import { takenOff } from './taken-off.ts';
import { takeOffJson } from './takeoff-json.ts';

/** How a job that came in a question is named in sentences. */
const place = 'the job';

const scheme = z.exactOptional(idOf('another scheme than the one that the job has chosen'));
const runIds = (what: string) => z.array(idOf('id of a run'), { error: `a list of runs: ${what}` }).max(2000);
const typed = (what: string) => z.exactOptional(textOf(fileLimits.quantity, what));

/** Everything that the JSON interface works out; the command line's commands of the same names print the same. */
export const computations: readonly Computation[] = [
  computation({
    name: 'pressure',
    about: 'What is left at the worst fixture, at every other, and the path there as a ledger.',
    asks: { scheme, path: typed('an inlet whose path is told, FIXTURE or FIXTURE.cold or FIXTURE.hot') },
    answer: pressureAnswer,
    compute: ({ job }, asked) => {
      const report = reportOf(job, asked.scheme, place);
      if (isRefusal(report)) return report;
      const shown = asked.path === undefined ? report.worst : chooseInlet(report, asked.path);
      return shown !== undefined && isRefusal(shown) ? shown : pressureJson(report, shown);
    },
  }),
  computation({
    name: 'check',
    about: 'Every finding with its rule, and what would mend it.',
    asks: { scheme },
    answer: checkAnswer,
    compute: ({ job }, asked) => {
      const report = reportOf(job, asked.scheme, place);
      return isRefusal(report) ? report : checkJson(report);
    },
  }),
  computation({
    name: 'explain',
    about: 'The formula, inputs, sources and arithmetic behind the figures of a run or an inlet.',
    asks: { scheme, of: textOf(140, 'what is explained: RUN, RUN.quantity, FIXTURE.cold or FIXTURE.hot') },
    answer: explainAnswer,
    compute: ({ job }, asked) => {
      const report = reportOf(job, asked.scheme, place);
      if (isRefusal(report)) return report;
      const steps = chooseSteps(report, asked.of);
      return isRefusal(steps) ? steps : explainJson(report, asked.of, steps);
    },
  }),
  computation({
    name: 'size',
    about: 'Every run at the least total cost that holds every limit, exact for its prices.',
    takes: ['prices'],
    asks: {
      scheme,
      keep: z.exactOptional(runIds('those that stay as they are drawn')),
      notLarger: z.exactOptional(yesOrNo('no run larger than the one that feeds it')),
      trunks: z.exactOptional(
        z.array(runIds('one behind the other, that keep one size'), { error: 'a list of trunks' }).max(200),
      ),
      materials: z.exactOptional(
        z
          .array(choiceOf(keysOf(materials), 'a material to choose among'), { error: 'a list of materials' })
          .max(Object.keys(materials).length),
      ),
    },
    answer: sizeAnswer,
    compute: ({ job, prices }, { keep = [], notLarger = false, trunks = [], ...asked }) => {
      const report = servingReportOf(job, asked.scheme, place);
      if (isRefusal(report)) return report;
      const { materials: among } = asked;
      const question = { keep, notLarger, trunks, ...(among === undefined ? {} : { materials: among }) };
      const study = studySize(report, question, prices);
      return isRefusal(study) ? study : sizeJson(study, prices.book);
    },
  }),
  computation({
    name: 'compare',
    about: 'Up to six schemes of a job side by side, as drawn or each at its least cost.',
    takes: ['prices'],
    asks: {
      schemes: z.exactOptional(
        z
          .array(idOf('id of a scheme'), { error: 'a list of schemes' })
          .min(1, { error: `1 to ${mostCompared} schemes` })
          .max(mostCompared, { error: `1 to ${mostCompared} schemes` }),
      ),
      size: z.exactOptional(yesOrNo('each scheme sized at the least cost first')),
    },
    answer: compareAnswer,
    compute: ({ job, prices }, { schemes, size = false }) => {
      const question = { size, ...(schemes === undefined ? {} : { schemes }) };
      const comparison = comparisonOf(job, question, prices, place);
      return isRefusal(comparison) ? comparison : compareJson(comparison, prices.book);
    },
  }),
  computation({
    name: 'takeoff',
    about: 'What a scheme takes: pipe, fittings, valves, supports and joints, with their price.',
    takes: ['prices', 'before'],
    asks: {
      scheme,
      rate: typed('labor, money for an hour: builds a price up'),
      tax: typed('sales tax on material, percent'),
      overhead: typed('on material, tax and labor, percent'),
      margin: typed('as a part of the price, percent'),
    },
    answer: takeOffAnswer,
    compute: ({ job, prices, before }, { rate = '', tax = '', overhead = '', margin = '', scheme: of }) => {
      const report = reportOf(job, of, place);
      if (isRefusal(report)) return report;
      const earlier = before === undefined ? undefined : reportOf(before, undefined, 'before');
      if (earlier !== undefined && isRefusal(earlier)) return earlier;
      const made = takenOff(report, prices, { laborRate: rate, tax, overhead, margin }, earlier);
      return isRefusal(made) ? made : takeOffJson(report.network.job, made, prices.book);
    },
  }),
];
