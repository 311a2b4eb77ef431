import { parseQuantity } from '../units/parse-quantity.ts';
import { bounds } from './bounds.ts';
import type { Device, LossPoint, RunEnd } from './job.ts';
import type { Line, Part } from './line-words.ts';
import { matchPhrase, phrasesOf, stumble, textBetween, wholeNumber } from './line-words.ts';
import {
  arresterSizePattern,
  backflowWords,
  deviceWords,
  heaterWords,
  idPattern,
  inletWords,
  sizePattern,
} from './words.ts';

const devices = phrasesOf(deviceWords);
const backflows = phrasesOf(backflowWords);
const heaters = phrasesOf(heaterWords);
const inlets = phrasesOf(inletWords);

/** Reads `FIXTURE cold` or `FIXTURE hot` behind `to`. */
export function parseInlet(line: Line, at: number): Part<RunEnd> {
  const fixture = textBetween(line, at, at + 1);
  if (!idPattern.test(fixture)) return stumble(line, at, 'the id of a fixture (letters, digits, - and _)');
  const inlet = matchPhrase(line, at + 1, inlets);
  if (inlet === undefined) return stumble(line, at + 1, 'cold or hot');
  return { ok: true, value: { fixture, inlet: inlet.id }, next: inlet.next };
}

/**
 * Reads a device behind `then`. The line says nothing of a loss curve; the curve of the run as it was is kept while
 * the device is the same: of one kind, type, size and name.
 */
export function parseDevice(line: Line, at: number, before: RunEnd | undefined): Part<RunEnd> {
  const word = matchPhrase(line, at, devices);
  if (word === undefined) {
    return stumble(
      line,
      at,
      `a device (${Object.values(deviceWords)
        .map(([first]) => first)
        .join(', ')})`,
    );
  }
  const { id, next } = word;
  const was = before !== undefined && 'device' in before ? before : undefined;
  switch (id) {
    case 'meter': {
      const size = textBetween(line, next, next + 1);
      if (!sizePattern.test(size)) return stumble(line, next, 'the size of the meter, such as 3/4,');
      return { ok: true, value: withCurve({ device: id, size }, was), next: next + 1 };
    }
    case 'reducing-valve': {
      if (line.words[next] === undefined) return stumble(line, next, 'the set pressure, such as 60 psi,');
      const { size, pressure } = valveWords(line, next);
      const set = parseQuantity(pressure, 'pressure');
      if (!set.ok) return set;
      const valve = { device: id, ...(size === undefined ? {} : { size }), set: set.quantity };
      return { ok: true, value: withCurve(valve, was), next: line.words.length };
    }
    case 'backflow': {
      const type = matchPhrase(line, next, backflows);
      if (type === undefined) return stumble(line, next, 'rp, dc or vented');
      const size = textBetween(line, type.next, type.next + 1);
      if (!sizePattern.test(size)) {
        return { ok: true, value: withCurve({ device: id, type: type.id }, was), next: type.next };
      }
      return { ok: true, value: withCurve({ device: id, type: type.id, size }, was), next: type.next + 1 };
    }
    case 'heater': {
      const type = matchPhrase(line, next, heaters);
      if (type === undefined) return stumble(line, next, 'storage or tankless');
      return { ok: true, value: withCurve({ device: id, type: type.id }, was), next: type.next };
    }
    case 'manifold':
      return parseManifold(line, next, was);
    case 'mixing-valve': {
      if (line.words[next]?.word !== 'cv') return { ok: true, value: withCurve({ device: id }, was), next };
      const cv = Number(line.words[next + 1]?.word);
      const { least, most } = bounds.flowCoefficient;
      if (!(cv >= least && cv <= most)) {
        return stumble(line, next + 1, `a flow coefficient from ${least} to ${most}`);
      }
      return { ok: true, value: withCurve({ device: id, cv }, was), next: next + 2 };
    }
    case 'softener':
    case 'filter':
      return { ok: true, value: withCurve({ device: id }, was), next };
    case 'expansion-tank':
      return { ok: true, value: { device: id }, next };
    case 'arrester': {
      const size = textBetween(line, next, next + 1);
      if (!arresterSizePattern.test(size)) return stumble(line, next, 'the size of the arrester, such as A,');
      return { ok: true, value: { device: id, size }, next: next + 1 };
    }
    case 'other':
      return parseOther(line, next, was);
  }
}

/** `3/4 60 psi` is a size and a pressure; whatever is a pressure as a whole, such as `62 1/2 psi`, is no size. */
function valveWords(line: Line, at: number): { readonly size?: string; readonly pressure: string } {
  const whole = textBetween(line, at, line.words.length);
  const first = textBetween(line, at, at + 1);
  const second = textBetween(line, at + 1, at + 2);
  if (!sizePattern.test(first) || !/^[\d.]/.test(second) || parseQuantity(whole, 'pressure').ok) {
    return { pressure: whole };
  }
  return { size: first, pressure: textBetween(line, at + 1, line.words.length) };
}

function parseManifold(line: Line, at: number, was: Device | undefined): Part<RunEnd> {
  const size = textBetween(line, at, at + 1);
  if (!sizePattern.test(size)) return stumble(line, at, 'the size of the manifold, such as 1,');
  const { least, most } = bounds.manifoldPorts;
  const ports = wholeNumber(line.words[at + 1]?.word, least, most);
  if (ports === undefined) return stumble(line, at + 1, `the number of ports, ${least} to ${most},`);
  if (!/^ports?$/.test(line.words[at + 2]?.word ?? '')) return stumble(line, at + 2, 'the word ports');
  const valved = line.words[at + 3]?.word === 'valved';
  const value = withCurve({ device: 'manifold', size, ports, valved }, was);
  return { ok: true, value, next: at + (valved ? 4 : 3) };
}

function parseOther(line: Line, at: number, was: Device | undefined): Part<RunEnd> {
  let name: unknown;
  try {
    name = JSON.parse(textBetween(line, at, line.words.length));
  } catch {
    name = undefined;
  }
  if (typeof name !== 'string' || name.length > bounds.nameLength) {
    return stumble(line, at, `a name in double quotes of at most ${bounds.nameLength} characters`);
  }
  if (was?.device !== 'other') {
    return {
      ok: false,
      problem: `the device ${JSON.stringify(name)} needs its loss curve, which only the fields can give`,
    };
  }
  return { ok: true, value: { device: 'other', name, curve: was.curve }, next: line.words.length };
}

/** The device with the curve that it had, where it is still the same device. */
function withCurve<D extends Exclude<Device, { device: 'other' | 'expansion-tank' | 'arrester' }>>(
  device: D,
  was: Device | undefined,
): D {
  const curve = curveOf(was);
  return curve !== undefined && was !== undefined && identity(was) === identity(device)
    ? { ...device, curve }
    : device;
}

function curveOf(device: Device | undefined): readonly LossPoint[] | undefined {
  return device !== undefined && 'curve' in device ? device.curve : undefined;
}

/** Kind, type and size: a curve belongs to one product, whatever it is set to. */
function identity(device: Device): string {
  const type = 'type' in device ? device.type : '';
  const size = 'size' in device && device.size !== undefined ? device.size : '';
  return `${device.device} ${type} ${size}`;
}
