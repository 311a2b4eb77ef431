import type { PublishedDemand } from './demand/methods.ts';
import type { FixtureKindId } from './fixtures/kinds.ts';
import type { MaterialId } from './pipe/names.ts';
import type { CurveTable, GridTable, Locator, Source, ValueTable, Verification } from './table.ts';

/** Where one kind of fixture stands in the tables of a code; `null` where the code prints no such row. */
export interface FixtureRows {
  /** Row of the fixture-unit table by use; `null`: the code has none, and the own flow counts as continuous flow. */
  readonly units: { readonly private: string | null; readonly public: string | null };
  /** Row of the table of flow and flowing pressure. */
  readonly outlet: string;
  /** Row of the table of least supply sizes. */
  readonly supply: string | null;
  /** Why a row of another name was taken. */
  readonly note?: string;
}

/** A section of a code that a finding cites. */
export interface CitedRule {
  readonly source: Source;
  readonly at: Locator;
  readonly verified: Verification;
}

/** What a code says without a value. */
export interface CodeRules {
  /** A storage heater behind a check valve, reducing valve or backflow preventer. */
  readonly thermalExpansion: CitedRule;
  /** Arresters where quick-closing valves are. */
  readonly waterHammer: CitedRule;
  readonly mainShutOff: CitedRule;
  readonly outdoorShutOff: CitedRule;
  readonly manifoldShutOff: CitedRule;
  /** A vacuum breaker or other backflow preventer on every hose connection. */
  readonly hoseConnection: CitedRule;
  /** Backflow protection of what fills a boiler or another system. */
  readonly makeUp: CitedRule;
  readonly rating: CitedRule;
  /** Pipe that may carry hot water. */
  readonly hotMaterial: CitedRule;
}

/**
 * A named set of rules of one code and edition: units and curve belong together, so a basis takes them together.
 */
export interface Profile {
  readonly title: string;
  readonly edition: string;
  /** The demand method of a job whose basis names none; the profile's own units and curve where it is left out. */
  readonly demand?: PublishedDemand;
  readonly fixtureUnits: GridTable<string, 'cold' | 'hot' | 'total'>;
  readonly demandTank: CurveTable;
  readonly demandValve: CurveTable;
  readonly outlets: GridTable<string, 'flow' | 'pressure'>;
  readonly supplySizes: GridTable<string, 'size'>;
  readonly fixtureRows: { readonly [kind in FixtureKindId]: FixtureRows };
  /** Rows of `fixtureUnits` for whole groups; `valve` where the group's closet has a flushometer valve. */
  readonly groupRows: {
    readonly [group in 'full-bath' | 'half-bath' | 'kitchen' | 'laundry']: {
      readonly tank: string | null;
      readonly valve: string | null;
    };
  };
  /** Kinds whose line from a manifold may be smaller than the table of supply sizes. */
  readonly homeRunKinds: readonly FixtureKindId[];
  /** Most flow through a manifold, by its nominal size. */
  readonly manifoldCapacity: GridTable<string, 'plastic' | 'metallic'>;
  readonly velocityLimits: GridTable<MaterialId, 'cold' | 'hot'>;
  readonly limits: {
    readonly maximumStatic: ValueTable;
    /** Least static pressure at the building, where the code states one. */
    readonly minimumStatic?: ValueTable;
    readonly minimumService: ValueTable;
    /** Longest individual line under a manifold that may be smaller than the supply table, and the pressure it asks. */
    readonly homeRunLength: ValueTable;
    readonly homeRunPressure: ValueTable;
    readonly homeRunLeastSize: ValueTable;
    /** From this size on, the individual line needs no exception. */
    readonly homeRunUsualSize: ValueTable;
    /** Longest developed length of uncirculated hot pipe. */
    readonly hotLength: ValueTable;
    readonly hotVolume: ValueTable;
    readonly hotColdApart: ValueTable;
    readonly scaldTemperature: ValueTable;
    /** Where the two friction laws part by more than this on the worst path, it is said. */
    readonly lawsApart: ValueTable;
    /** A parting smaller than this is not worth a word. */
    readonly lawsApartLeast: ValueTable;
  };
  readonly rules: CodeRules;
}
