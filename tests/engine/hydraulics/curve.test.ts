import { describe, expect, it } from 'vitest';
import { type Curve, lossAt, pointsRead } from '../../../engine/hydraulics/curve.ts';

const curve = (...points: readonly (readonly [number, number])[]): Curve => ({
  flow: Float64Array.from(points, ([flow]) => flow),
  loss: Float64Array.from(points, ([, loss]) => loss),
  from: 'maker',
});

describe('lossAt', () => {
  const three = curve([1, 10], [2, 30], [4, 70]);

  it('is a point’s own loss at its flow', () => {
    expect([1, 2, 4].map((flow) => lossAt(three, flow))).toEqual([10, 30, 70]);
  });

  it('lies on a straight line between two points', () => {
    expect(lossAt(three, 1.25)).toBe(15);
    expect(lossAt(three, 3.5)).toBe(60);
  });

  it('falls with the square below the first point', () => {
    expect(lossAt(three, 0.5)).toBe(2.5);
    expect(lossAt(three, 0)).toBe(0);
  });

  it('rises with the square beyond the last point', () => expect(lossAt(three, 8)).toBe(280));

  it('keeps what a curve says of no flow', () => {
    const assembly = curve([0, 6], [10, 10]);
    expect(lossAt(assembly, 0)).toBe(6);
    expect(lossAt(assembly, 5)).toBe(8);
  });

  it('goes by the square from one point alone', () => {
    const valve = curve([2, 8]);
    expect([1, 2, 3].map((flow) => lossAt(valve, flow))).toEqual([2, 8, 18]);
  });

  it('is nothing without points', () => expect(lossAt(curve(), 3)).toBe(0));
});

describe('pointsRead', () => {
  const three = curve([1, 10], [2, 30], [4, 70]);

  it.each([
    [0, [0]],
    [0.5, [0]],
    [1, [0]],
    [1.5, [0, 1]],
    [2, [1]],
    [3.9, [1, 2]],
    [4, [2]],
    [8, [2]],
  ])('of three points, at a flow of %d: %j', (flow, points) => {
    expect(pointsRead(three, flow)).toEqual(points);
  });

  it('are none of a curve without points', () => expect(pointsRead(curve(), 3)).toEqual([]));
});
