// Every term of the trade that stands on a page or in a report, in one sentence each, with its nearest neighbours.
// Sentences are our own; where a term has another name in the trade it stands under `also`.

import { distanceTerms } from './terms/distances.ts';
import { gradeTerms } from './terms/grades.ts';
import { knowingTerms } from './terms/knowing.ts';
import { circuitTerms } from './terms/circuits.ts';
import { layerTerms } from './terms/layers.ts';
import { wireTerms } from './terms/wires.ts';
import { formerTerms } from './terms/former.ts';
import { voltageTerms } from './terms/voltages.ts';
import { converterTerms } from './terms/converter.ts';
import type { Term } from './terms/term.ts';

export const terms: readonly Term[] = [
  ...distanceTerms,
  ...gradeTerms,
  ...knowingTerms,
  ...circuitTerms,
  ...layerTerms,
  ...wireTerms,
  ...formerTerms,
  ...voltageTerms,
  ...converterTerms,
];
