import type { Device, LossPoint, Quantity, Run, RunEnd } from '../../engine/job/job.ts';
import { lineIsComplete, printRunLine } from '../../engine/job/print-run-line.ts';
import type { Json, JsonObject } from './json-layout.ts';

/** A run as it stands in a file: by its line where that says all of it, otherwise by its fields. */
export function writeRun(run: Run): JsonObject {
  const { id, from, note } = run;
  if (lineIsComplete(run)) return { id, from, line: printRunLine(run), note };
  return {
    id,
    from,
    size: run.size,
    material: run.material,
    joint: run.joint,
    length: typed(run.length),
    rise: typed(run.rise),
    fittings: run.fittings.map(({ kind, count }) => ({ kind, count })),
    end: run.end === undefined ? undefined : writeEnd(run.end),
    note,
  };
}

function writeEnd(end: RunEnd): JsonObject {
  if (!('device' in end)) return { fixture: end.fixture, inlet: end.inlet };
  return {
    ...writeDevice(end),
    ...('curve' in end && end.curve !== undefined ? { curve: writeCurve(end.curve) } : {}),
  };
}

function writeDevice(end: Device): JsonObject {
  switch (end.device) {
    case 'meter':
    case 'arrester':
      return { device: end.device, size: end.size };
    case 'reducing-valve':
      return { device: end.device, size: end.size, set: typed(end.set) };
    case 'backflow':
      return { device: end.device, type: end.type, size: end.size };
    case 'heater':
      return { device: end.device, type: end.type };
    case 'manifold':
      return { device: end.device, size: end.size, ports: end.ports, valved: end.valved };
    case 'mixing-valve':
      return { device: end.device, cv: end.cv };
    case 'softener':
    case 'filter':
    case 'expansion-tank':
      return { device: end.device };
    case 'other':
      return { device: end.device, name: end.name };
  }
}

function writeCurve(curve: readonly LossPoint[]): Json {
  return curve.map(({ flow, loss }) => ({ flow: flow.typed, loss: loss.typed }));
}

/** What is stored of a quantity. */
/** A quantity as its file has it: the text that a person typed. */
export function typed(quantity: Quantity): string;
export function typed(quantity: Quantity | undefined): string | undefined;
export function typed(quantity: Quantity | undefined): string | undefined {
  return quantity?.typed;
}
