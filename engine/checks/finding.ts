import type { MaterialId } from '../../tables/pipe/names.ts';
import type { Cited, Locator, Source, Verification } from '../../tables/table.ts';

export type Severity = 'error' | 'warning' | 'note';

/** The rule behind a finding where it is no table cell. */
export interface Rule {
  readonly source: Source;
  readonly at: Locator;
  readonly verified: Verification;
}

/** One change that would mend a finding, and what it gains at the place, Pa. */
export type Mend =
  | {
      readonly do: 'larger-pipe';
      readonly run: string;
      readonly size: string;
      readonly gain: number;
      readonly mends: boolean;
    }
  | {
      readonly do: 'larger-meter';
      readonly run: string;
      readonly size: string;
      readonly gain: number;
      readonly mends: boolean;
    }
  /** The least size whose velocity holds, and that velocity, m/s. */
  | { readonly do: 'slower-pipe'; readonly run: string; readonly size: string; readonly velocity: number }
  | { readonly do: 'add-reducing-valve' }
  /** Pa. */
  | { readonly do: 'lower-setting'; readonly run: string; readonly set: number }
  | {
      readonly do: 'raise-setting';
      readonly run: string;
      readonly set: number;
      readonly gain: number;
      readonly mends: boolean;
    }
  /** No pipe is large enough: the street gives too little for the height and the devices. */
  | { readonly do: 'raise-pressure'; readonly by: number }
  | { readonly do: 'add-expansion-tank' }
  | { readonly do: 'add-shut-off'; readonly run: string }
  | { readonly do: 'add-arrester'; readonly run: string };

interface Common {
  readonly severity: Severity;
  readonly source: Cited | Rule;
  readonly mend?: Mend;
}

/** One check against a rule: facts only, SI; the sentence is made by the reader's side. `run` is a run's id. */
export type Finding = Common &
  (
    | {
        readonly code: 'residual-short';
        readonly fixture: string;
        readonly inlet: 'cold' | 'hot';
        readonly run: string;
        readonly residual: number;
        readonly required: number;
      }
    | {
        readonly code: 'static-high';
        readonly run: string;
        readonly pressure: number;
        readonly limit: number;
      }
    | {
        readonly code: 'velocity-high';
        readonly run: string;
        readonly velocity: number;
        readonly limit: number;
      }
    | { readonly code: 'service-small'; readonly run: string; readonly size: string; readonly least: string }
    | {
        readonly code: 'fixture-supply-small';
        readonly run: string;
        readonly fixture: string;
        readonly size: string;
        readonly least: string;
      }
    | {
        readonly code: 'manifold-over-capacity';
        readonly run: string;
        readonly size: string;
        readonly flow: number;
        readonly limit: number;
      }
    | {
        readonly code: 'manifold-ports-short';
        readonly run: string;
        readonly ports: number;
        readonly used: number;
      }
    | {
        readonly code: 'home-run-long';
        readonly run: string;
        readonly length: number;
        readonly limit: number;
      }
    | {
        readonly code: 'home-run-pressure-low';
        readonly run: string;
        readonly pressure: number;
        readonly limit: number;
      }
    | {
        readonly code: 'meter-over-maximum';
        readonly run: string;
        readonly size: string;
        readonly flow: number;
        readonly limit: number;
      }
    | { readonly code: 'pump-short'; readonly run: string; readonly flow: number; readonly limit: number }
    | {
        readonly code: 'hot-length-long';
        readonly run: string;
        readonly fixture: string;
        readonly length: number;
        readonly limit: number;
      }
    | {
        readonly code: 'hot-volume-large';
        readonly run: string;
        readonly fixture: string;
        readonly volume: number;
        readonly limit: number;
      }
    | { readonly code: 'expansion-uncontrolled'; readonly run: string; readonly heater: string }
    | {
        readonly code: 'hot-cold-apart';
        readonly fixture: string;
        readonly cold: number;
        readonly hot: number;
        readonly limit: number;
      }
    | {
        readonly code: 'rating-exceeded';
        readonly run: string;
        readonly pressure: number;
        readonly temperature: number;
        readonly limit: number;
      }
    | { readonly code: 'rating-unknown'; readonly run: string; readonly temperature: number }
    | {
        readonly code: 'shut-off-missing';
        readonly where: 'main' | 'outdoor' | 'manifold';
        readonly run: string;
      }
    | { readonly code: 'arrester-missing'; readonly run: string; readonly fixture: string }
    | {
        readonly code: 'arrester-small';
        readonly run: string;
        readonly size: string;
        /** Left out where no size serves so many. */
        readonly least?: string;
        readonly units: number;
      }
    | {
        readonly code: 'laws-apart';
        readonly run: string;
        readonly hazenWilliams: number;
        readonly darcyWeisbach: number;
      }
    | { readonly code: 'pressure-negative'; readonly run: string; readonly pressure: number }
    | { readonly code: 'curve-exceeded'; readonly run: string; readonly flow: number; readonly limit: number }
    | {
        readonly code: 'height-mismatch';
        readonly run: string;
        readonly fixture: string;
        readonly piped: number;
        readonly scheduled: number;
      }
    | { readonly code: 'static-low'; readonly run: string; readonly pressure: number; readonly limit: number }
    | {
        readonly code: 'street-beyond-test';
        readonly run: string;
        readonly flow: number;
        readonly limit: number;
      }
    | {
        readonly code: 'material-cold-only';
        readonly run: string;
        readonly material: MaterialId;
        readonly temperature: number;
      }
    | { readonly code: 'make-up-unprotected'; readonly fixtures: readonly string[] }
    | { readonly code: 'dead-end'; readonly run: string }
    | { readonly code: 'hot-water-scalds'; readonly temperature: number; readonly limit: number }
    | { readonly code: 'hose-outlets'; readonly fixtures: readonly string[] }
    | {
        readonly code: 'demand-beyond-table';
        readonly run: string;
        readonly unit: 'wsfu' | 'lu';
        readonly units: number;
        readonly limit: number;
      }
  );

export type FindingCode = Finding['code'];
