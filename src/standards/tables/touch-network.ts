// The parts of the network of IEC 60990 that stands for a person's body when touch current is measured.

import network from '#tables/standards/iec-60990/network.json' with { type: 'json' };

import { because, type Because } from '#standards/because.ts';
import { exactCell } from './look-up.ts';
import { readTable } from './table.ts';

export interface TouchNetwork {
  /** Skin: `skinOhms` beside `skinFarads`. */
  readonly skinOhms: number;
  readonly skinFarads: number;
  /** Inner body; currents are its voltage over it. */
  readonly bodyOhms: number;
  /** Filter across the body that weighs a current by how it is felt. */
  readonly filterOhms: number;
  readonly filterFarads: number;
  readonly because: Because;
}

const table = readTable(network);

const part = (name: string): number => {
  const value = exactCell(table, name, 'value')?.value;
  if (value == null) throw new Error(`the network has no part ${name}`);
  return value;
};

const MICRO = 1e-6;

export const touchNetwork: TouchNetwork = {
  skinOhms: part('Rs'),
  skinFarads: part('Cs') * MICRO,
  bodyOhms: part('Rb'),
  filterOhms: part('R1'),
  filterFarads: part('C1') * MICRO,
  because: because(
    'touch-network',
    {},
    ['Rs', 'Cs', 'Rb', 'R1', 'C1'].flatMap((name) => exactCell(table, name, 'value')?.cite ?? []),
  ),
};
