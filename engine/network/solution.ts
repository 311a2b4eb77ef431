import type { Served } from './network.ts';

/**
 * What one solve gives, by position in the network, SI. `residual` and `staticPressure` are at the end of the run,
 * behind its device.
 */
export interface Solution extends Served {
  readonly flow: Float64Array;
  readonly velocity: Float64Array;
  /** Pa/m in the pipe. */
  readonly gradient: Float64Array;
  readonly pipeLoss: Float64Array;
  readonly fittingLoss: Float64Array;
  /** A reducing valve's drop to its set pressure is in here. */
  readonly deviceLoss: Float64Array;
  /** Pressure given up to height; negative where the run goes down. */
  readonly elevationLoss: Float64Array;
  readonly residual: Float64Array;
  readonly staticPressure: Float64Array;
  /** At the street: under demand, and the static high. */
  readonly supplyPressure: number;
  readonly supplyStatic: number;
}
