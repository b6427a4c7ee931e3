// The JSON Schema of the design file, made from the schema that reads it.
// Ranges of quantities and references between ids cannot be said in it: only reading a file settles those.

import * as z from 'zod';
import { schema } from './schema.ts';

export const designSchema = (): Readonly<Record<string, unknown>> => ({
  ...z.toJSONSchema(schema, { target: 'draft-2020-12', io: 'input' }),
  title: 'Layerwright design file, format 1',
});
