import type { GridTable } from '../table.ts';
import { steelSchedule40 } from './asme-b36.10m/schedule-40.ts';
import { copperTypeK } from './astm-b88/type-k.ts';
import { copperTypeL } from './astm-b88/type-l.ts';
import { copperTypeM } from './astm-b88/type-m.ts';
import { pvcSchedule40 } from './astm-d1785/schedule-40.ts';
import { peSdr9 } from './astm-d2737/sdr-9.ts';
import { cpvcSdr11 } from './astm-d2846/sdr-11.ts';
import { pexSdr9 } from './astm-f876/sdr-9.ts';
import { copperEn1057 } from './en-1057/medium-wall.ts';
import { copperEn1057Thin } from './en-1057/thin-wall.ts';
import { pexSeries32 } from './en-iso-15875/series-3.2.ts';
import { pexSeries5 } from './en-iso-15875/series-5.ts';
import { multilayer } from './en-iso-21003/multilayer.ts';
import type { MaterialId } from './names.ts';

/** Rows are the nominal sizes in which a material is made. */
export const pipeDimensions: Readonly<Record<MaterialId, GridTable<string, 'outside' | 'wall' | 'bore'>>> = {
  pex: pexSdr9,
  'copper-k': copperTypeK,
  'copper-l': copperTypeL,
  'copper-m': copperTypeM,
  cpvc: cpvcSdr11,
  pe: peSdr9,
  galvanized: steelSchedule40,
  pvc: pvcSchedule40,
  'pe-x': pexSeries32,
  'pe-x-s5': pexSeries5,
  'copper-en': copperEn1057,
  'copper-thin': copperEn1057Thin,
  multilayer,
};
