import {
  type FittingKind,
  fittings,
  type JointId,
  joints,
  type MaterialId,
  materials,
} from '../../tables/pipe/names.ts';
import type { Device } from '../job/job.ts';

/** What a price is for. */
export type PriceItem =
  | { readonly item: 'pipe'; readonly material: MaterialId; readonly size: string }
  | {
      readonly item: 'fitting';
      readonly material: MaterialId;
      readonly joint: JointId;
      readonly kind: FittingKind;
      readonly size: string;
    }
  | {
      readonly item: 'device';
      readonly device: Device['device'];
      readonly size?: string;
      /** Of a manifold. */
      readonly valved?: boolean;
    };

/** What a scheme asks for and a book has no price of. */
export type MissingPrice = PriceItem;

/** What prices a device: its size, type or name, where it has one. */
export function itemOfDevice(device: Device): Extract<PriceItem, { item: 'device' }> {
  switch (device.device) {
    case 'meter':
    case 'arrester':
      return { item: 'device', device: device.device, size: device.size };
    case 'backflow':
    case 'heater':
      return { item: 'device', device: device.device, size: device.type };
    case 'manifold':
      return { item: 'device', device: device.device, size: device.size, valved: device.valved };
    case 'other':
      return { item: 'device', device: device.device, size: device.name };
    case 'reducing-valve':
    case 'softener':
    case 'filter':
    case 'mixing-valve':
    case 'expansion-tank':
      return { item: 'device', device: device.device };
  }
}

/** Two items with the same key have the same price. */
export function priceKey(item: PriceItem): string {
  switch (item.item) {
    case 'pipe':
      return `${item.material} ${item.size}`;
    case 'fitting':
      return `${item.material} ${item.joint} ${item.kind} ${item.size}`;
    case 'device':
      return `${item.device} ${item.valved ?? ''} ${item.size ?? ''}`;
  }
}

/** The item in the reader's words: `3/4 PEX SDR-9 pipe`, `1/2 90° ell, PEX SDR-9 with brass insert fittings`. */
export function priceName(item: PriceItem): string {
  switch (item.item) {
    case 'pipe':
      return `${item.size} ${materials[item.material]} pipe`;
    case 'fitting':
      return `${item.size} ${fittings[item.kind]}, ${materials[item.material]} with ${joints[item.joint]}`;
    case 'device': {
      const name = item.device.replaceAll('-', ' ');
      const size = item.size === undefined ? '' : ` ${item.size}`;
      const valves =
        item.valved === undefined ? '' : item.valved ? ' with a valve at each port' : ' without valves';
      return `${name}${size}${valves}`;
    }
  }
}
