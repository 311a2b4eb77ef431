import type { Report } from '../../../engine/index.ts';
import type { SheetSection } from '../../../views/sheet.ts';
import { figure, fixed, unitSymbol } from '../../../views/text/figure.ts';
import { endWords, pipeWords } from '../../../views/text/loss-step.ts';
import { figures, row, table, words } from '../blocks.ts';
import { demandUnit } from '../demand-sources.ts';

/** Every run with its demand, what it loses and to what, and what is left at its end. */
export function runSection({ network, solution }: Report): SheetSection {
  const { units } = network.job;
  const pressure = unitSymbol('pressure', units);
  const rows = network.runs.map((run, at) =>
    row(
      run.id,
      run.from,
      endWords(run),
      `${pipeWords(run)}${network.hot[at] === 1 ? ', hot' : ''}`,
      figure(network.length[at]!, 'length', units),
      network.rise[at] === 0 ? '' : figure(network.rise[at]!, 'length', units),
      fixed(network.demand.from.units[at]!, 1),
      figure(solution.flow[at]!, 'flow', units),
      figure(solution.velocity[at]!, 'velocity', units),
      figure(solution.pipeLoss[at]!, 'pressure', units),
      figure(solution.fittingLoss[at]!, 'pressure', units),
      network.deviceAt[at]! < 0 ? '' : figure(solution.deviceLoss[at]!, 'pressure', units),
      network.rise[at] === 0 ? '' : figure(solution.elevationLoss[at]!, 'pressure', units),
      figure(solution.residual[at]!, 'pressure', units),
      figure(solution.staticPressure[at]!, 'pressure', units),
    ),
  );
  return {
    id: 'runs',
    title: 'Runs',
    blocks: [
      table(
        'Every run at its design demand',
        [
          words('Run'),
          words('From'),
          words('Ends at'),
          words('Pipe'),
          figures(`Length, ${unitSymbol('length', units)}`),
          figures(`Rise, ${unitSymbol('length', units)}`),
          figures(demandUnit(network)),
          figures(`Flow, ${unitSymbol('flow', units)}`),
          figures(`Velocity, ${unitSymbol('velocity', units)}`),
          figures(`Pipe loss, ${pressure}`),
          figures(`Fittings, ${pressure}`),
          figures(`Device, ${pressure}`),
          figures(`Height, ${pressure}`),
          figures(`Left, ${pressure}`),
          figures(`At rest, ${pressure}`),
        ],
        rows,
        'Left: at the end of the run, behind its device, while every run carries its design demand. At rest: nothing flows and the street is at its high. Developed length, the rise in it. A height with a minus is given back.',
      ),
    ],
  };
}
