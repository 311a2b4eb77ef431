import { supplySizes as ipcSupplySizes } from '../ipc-2018/supply-sizes.ts';
import type { GridTable } from '../table.ts';

/** The document cited is the IPC: the IRC is not known to print a table of least supply sizes. */
export const supplySizes = {
  ...ipcSupplySizes,
  id: 'irc-2021-supply-sizes',
  note:
    'Not the IRC, which is not known to print such a table: the sizes of IPC 2018 Table 604.5 stand in (recalled; the ' +
    'same sizes were read in the adoption by Chicago). The supply pipe ends within 30 in of the fixture connection.',
} as const satisfies GridTable<string, 'size'>;
