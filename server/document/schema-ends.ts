import { z } from 'zod';
import { bounds } from '../../engine/job/bounds.ts';
import type { LossPoint } from '../../engine/job/job.ts';
import { arresterSizePattern, backflowWords, heaterWords, sizePattern } from '../../engine/job/words.ts';
import { shorten } from '../../engine/units/shorten.ts';
import { fileLimits } from './file-limits.ts';
import type { ListOf } from './schema-parts.ts';
import {
  choiceOf,
  fieldsOf,
  idOf,
  keysOf,
  patternOf,
  quantityOf,
  textOf,
  wholeOf,
  yesOrNo,
} from './schema-parts.ts';

const point = fieldsOf({
  flow: quantityOf('flow', 'flow through the device', 'not below zero'),
  loss: quantityOf('pressure', 'pressure lost at that flow', 'not below zero'),
});

/** A loss curve: at least one point, flows rising; a single point at no flow would say nothing of any flow. */
function curveSchema(listOf: ListOf) {
  return listOf(point, fileLimits.pointsOfCurve, 'points of a loss curve').superRefine((points, context) => {
    if (points.length === 0) {
      context.addIssue({
        code: 'custom',
        message: 'an empty list came; expected at least one point of flow and loss',
      });
    }
    const [only, second] = points;
    if (only !== undefined && second === undefined && only.flow.si === 0) {
      const message = `${shorten(only.flow.typed)} is the only point of the curve; expected a point with flow`;
      context.addIssue({ code: 'custom', path: [0, 'flow'], message });
    }
    points.forEach((here: LossPoint, index) => {
      const before = points[index - 1];
      if (before === undefined || here.flow.si > before.flow.si) return;
      const message = `${shorten(here.flow.typed)} is not more than ${shorten(before.flow.typed)} before it; expected flows that rise from point to point`;
      context.addIssue({ code: 'custom', path: [index, 'flow'], message });
    });
  });
}

/** What a run may end in: a fixture's inlet, or a device. */
export function endSchema(listOf: ListOf) {
  const points = curveSchema(listOf);
  const curve = z.exactOptional(points);
  const named = <Id extends string>(id: Id) => z.literal(id);
  const inlet = fieldsOf({
    fixture: idOf('id of the fixture'),
    inlet: choiceOf(['cold', 'hot'], 'which inlet'),
  });
  const size = patternOf(sizePattern, 'a nominal size, such as "3/4"');
  const devices = [
    fieldsOf({ device: named('meter'), size, curve }),
    fieldsOf({
      device: named('reducing-valve'),
      size: z.exactOptional(size),
      set: quantityOf('pressure', 'set pressure', 'above zero'),
      curve,
    }),
    fieldsOf({
      device: named('backflow'),
      type: choiceOf(keysOf(backflowWords), 'type of assembly'),
      size: z.exactOptional(size),
      curve,
    }),
    fieldsOf({ device: named('softener'), curve }),
    fieldsOf({ device: named('filter'), curve }),
    fieldsOf({ device: named('heater'), type: choiceOf(keysOf(heaterWords), 'type of heater'), curve }),
    fieldsOf({
      device: named('manifold'),
      size,
      ports: wholeOf(bounds.manifoldPorts, 'number of ports'),
      valved: yesOrNo('whether each port has its own valve'),
      curve,
    }),
    fieldsOf({ device: named('mixing-valve'), cv: z.exactOptional(flowCoefficient), curve }),
    fieldsOf({ device: named('expansion-tank') }),
    fieldsOf({
      device: named('arrester'),
      size: patternOf(arresterSizePattern, 'the size letter of an arrester, such as "A"'),
    }),
    fieldsOf({
      device: named('other'),
      name: textOf(bounds.nameLength, 'name of the device'),
      curve: points,
    }),
  ] as const;
  const names = devices.map((device) => device.shape.device.value).join(', ');
  const device = z.discriminatedUnion('device', devices, { error: `a device, one of ${names}` });
  return z.union([inlet, device], { error: `a fixture's inlet or a device (${names})` });
}

const expectedCoefficient = `a flow coefficient from ${bounds.flowCoefficient.least} to ${bounds.flowCoefficient.most}`;
const flowCoefficient = z
  .number({ error: expectedCoefficient })
  .min(bounds.flowCoefficient.least, { error: expectedCoefficient })
  .max(bounds.flowCoefficient.most, { error: expectedCoefficient })
  .meta({ description: 'flow coefficient Cv of the mixing valve, gpm at 1 psi' });
