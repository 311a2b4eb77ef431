import type { JointId, MaterialId } from '../../tables/pipe/names.ts';
import type { Device, Quantity } from '../job/job.ts';

export const layoutKinds = ['trunk', 'home-run', 'zones'] as const;
export type LayoutKind = (typeof layoutKinds)[number];

/** How a scheme is to be drawn up. What is left out is chosen as its comment says. */
export interface LayoutOptions {
  readonly kind: LayoutKind;
  /** Two halves behind the service, each with its own main. No. */
  readonly halves?: boolean;
  /** With halves: one heater for the house or one for each. One for each. */
  readonly heaters?: 'one' | 'each';
  /** Storage, or that of the job's chosen scheme. */
  readonly heater?: Extract<Device, { device: 'heater' }>;
  /** The kind of layout, with `-halves`. */
  readonly id?: string;
  readonly name?: string;
  /** PEX. */
  readonly material?: MaterialId;
  /** The material's usual. */
  readonly joint?: JointId;
  /** `new`: not that of the job's chosen scheme. What else stands here is of a new service only. */
  readonly service?: {
    readonly new?: boolean;
    /** PE. */
    readonly material?: MaterialId;
    /** By velocity, the code's least at least; the header to the first main has the same. */
    readonly size?: string;
    /** From the street to where the service comes in: 60 ft, from a well's tank 10 ft. */
    readonly length?: Quantity;
    /** By its safe maximum; from a well, none. */
    readonly meter?: string | 'none';
    /** Where static pressure asks for a reducing valve: under the limit by a step of 5 psi or 25 kPa. */
    readonly reducingValve?: Quantity;
  };
  /** Size of the mains of two halves, and the most behind the header. By velocity. */
  readonly mainSize?: string;
  /** Whether lines of PEX from a manifold are bent at their corners, and have no ells there. Yes; common practice, no source. */
  readonly bendHomeRuns?: boolean;
}
