// `schema`: the JSON Schema of the design file.

import { designSchema } from '#model/schema/design-schema.ts';
import { done, refused, type Outcome } from '#cli/line/outcome.ts';

export function printSchema(words: readonly string[]): Outcome {
  if (words.length > 0) return refused('schema: it takes no arguments.');
  return done(`${JSON.stringify(designSchema(), null, 2)}\n`);
}
