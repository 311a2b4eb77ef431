import type { Cited, CurveTable } from '../../tables/table.ts';
import { toSI } from '../../tables/units/definitions.ts';

/** Loss against flow, SI: points in order of flow, and what the points were read from. */
export interface Curve {
  readonly flow: Float64Array;
  readonly loss: Float64Array;
  readonly from: CurveTable | Cited | 'maker' | 'none';
}

/** A printed curve in SI. */
export function curveOf(table: CurveTable): Curve {
  return {
    flow: Float64Array.from(table.points, ([x]) => toSI(x, table.x)),
    loss: Float64Array.from(table.points, ([, y]) => toSI(y, table.y)),
    from: table,
  };
}

/**
 * Loss at a flow, Pa: straight lines between the points. Below the first point the loss falls with the square of
 * the flow (a curve that loses at no flow says so by a point at flow 0), and beyond the last it rises with the
 * square from there, as turbulent losses do; a check reports flows beyond the last point.
 *
 * @param flow m3/s, 0 or more
 */
export function lossAt(curve: Curve, flow: number): number {
  const { flow: flows, loss } = curve;
  const last = flows.length - 1;
  if (last < 0) return 0;
  const firstFlow = flows[0]!;
  if (flow <= firstFlow) return firstFlow === 0 ? loss[0]! : loss[0]! * (flow / firstFlow) ** 2;
  const lastFlow = flows[last]!;
  if (flow >= lastFlow) return loss[last]! * (flow / lastFlow) ** 2;
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (flows[middle]! <= flow) low = middle;
    else high = middle;
  }
  const share = (flow - flows[low]!) / (flows[high]! - flows[low]!);
  return loss[low]! + share * (loss[high]! - loss[low]!);
}

/** The points that {@link lossAt} reads at a flow: one, or two around a straight line; none of a curve without points. */
export function pointsRead({ flow: flows }: Curve, flow: number): readonly number[] {
  const last = flows.length - 1;
  if (last < 0) return [];
  const above = flows.findIndex((at) => at >= flow);
  if (above === -1) return [last];
  return above === 0 || flows[above] === flow ? [above] : [above - 1, above];
}
