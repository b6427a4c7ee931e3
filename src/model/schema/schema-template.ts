// Schema of what somebody keeps under a name for other builds, in the file that it came from: layers with their windings, a
// former, the material of a tape, a wire. Nothing of it is judged until it is put into a build.

import * as z from 'zod';
import { circuit, former } from './schema-around.ts';
import { layer } from './schema-layer.ts';
import { list, record, text } from './schema-leaf.ts';
import { material } from './schema-solid.ts';
import { winding, wire } from './schema-winding.ts';

const name = text(60).min(1, { error: 'a text that is not empty' });

const KINDS = 'an object with the name and one of the fields layers, former, material, wire';

export const template = z.union(
  [
    record({
      name,
      layers: list(layer, 1, 400, 'layers'),
      windings: list(winding, 0, 64, 'windings'),
      circuits: list(circuit, 0, 32, 'circuits'),
    }),
    record({ name, former }),
    record({ name, material }),
    record({ name, wire }),
  ],
  { error: KINDS },
);
