import { deviations, type InletResult, ledger, type Report } from '../../engine/index.ts';
import { unverifiedOnPath } from '../../engine/network/unverified.ts';
import { profiles } from '../../tables/profiles.ts';
import { deviationText } from '../../views/text/deviation-text.ts';
import { jobHash } from '../document/job-hash.ts';
import { citedJson, findingJson } from './finding-json.ts';
import type { PressureAnswer } from './schema-pressure.ts';

/**
 * The answer for programs: SI, unrounded, the unit at the end of each key. A key may be added; none changes its
 * meaning while `version` stays.
 */
export function pressureJson(report: Report, shown: InletResult | undefined): PressureAnswer {
  const { network, solution, worst } = report;
  const { job, scheme, basis, supply } = network;
  return {
    format: 'hightap-pressure',
    version: 1,
    job: job.name,
    jobFile_sha256: jobHash(job),
    scheme: { id: scheme.id, name: scheme.name },
    basis: {
      profile: basis.profile,
      code: profiles[basis.profile].title,
      edition: profiles[basis.profile].edition,
      between: basis.between,
      friction: basis.friction,
      coldTemperature_K: basis.coldTemperature.si,
      hotTemperature_K: basis.hotTemperature.si,
    },
    deviations: deviations(job).map((deviation) => ({
      what: deviation.what,
      says: deviationText(deviation, job.units),
    })),
    supply: {
      kind: supply.kind,
      elevation_m: supply.elevation.si,
      pressure_Pa: solution.supplyPressure,
      static_Pa: solution.supplyStatic,
    },
    demand: { flow_m3_per_s: solution.flow[0] ?? 0, fixtureUnits: solution.units[0] ?? 0 },
    passes: report.passes,
    worst: worst === undefined ? null : inletJson(report, worst),
    inlets: report.inlets.map((result) => inletJson(report, result)),
    path: shown === undefined ? null : pathJson(report, shown),
    runs: network.runs.map((_, at) => runJson(report, at)),
    findings: report.findings.map((finding) => findingJson(finding, job)),
    unverified: report.unverified.map(citedJson),
  };
}

function inletJson(
  { network }: Report,
  { inlet, residual, staticPressure, margin }: InletResult,
): PressureAnswer['inlets'][number] {
  return {
    fixture: inlet.fixture.id,
    side: inlet.side,
    name: inlet.fixture.name,
    run: network.runs[inlet.run]!.id,
    residual_Pa: residual,
    required_Pa: inlet.requiredPressure,
    margin_Pa: margin,
    static_Pa: staticPressure,
    requiredFlow_m3_per_s: inlet.requiredFlow,
  };
}

function pathJson({ network, solution }: Report, { inlet }: InletResult): PressureAnswer['path'] {
  return {
    fixture: inlet.fixture.id,
    side: inlet.side,
    lines: ledger(network, solution, inlet.run).map(({ run, what, loss, before, after }) => ({
      run: network.runs[run]!.id,
      what,
      loss_Pa: loss,
      before_Pa: before,
      after_Pa: after,
    })),
    unverified: unverifiedOnPath(network, solution, inlet).map(citedJson),
  };
}

function runJson({ network, solution }: Report, at: number): PressureAnswer['runs'][number] {
  const { id, from, size, material } = network.runs[at]!;
  return {
    id,
    from,
    size,
    material,
    water: network.hot[at] === 1 ? 'hot' : 'cold',
    length_m: network.length[at]!,
    rise_m: network.rise[at]!,
    fixtureUnits: solution.units[at]!,
    flow_m3_per_s: solution.flow[at]!,
    velocity_m_per_s: solution.velocity[at]!,
    gradient_Pa_per_m: solution.gradient[at]!,
    pipeLoss_Pa: solution.pipeLoss[at]!,
    fittingLoss_Pa: solution.fittingLoss[at]!,
    deviceLoss_Pa: solution.deviceLoss[at]!,
    elevationLoss_Pa: solution.elevationLoss[at]!,
    residual_Pa: solution.residual[at]!,
    static_Pa: solution.staticPressure[at]!,
  };
}
