// What a path stands on that nobody knows, told in the sentence that tells of the path: `if the lead climbs the flange`.

import type { Condition } from '#judge/verdict/assumed.ts';
import { countedAsWords } from './counted-words.ts';

/** `, if this is so and that`; empty where nothing is open. */
export const conditionWords = (conditions: readonly Condition[]): string =>
  conditions.length === 0 ? '' : `, if ${conditions.map(soWords).join(' and ')}`;

/** Each by itself. */
export const conditionSays = (condition: Condition): string => `if ${soWords(condition)}`;

function soWords(condition: Condition): string {
  switch (condition.if) {
    case 'reaches-flange':
      return `layer ${condition.layer} reaches the ${condition.side} flange`;
    case 'one-ply':
      return `layer ${condition.layer} is one ply`;
    case 'full-row':
      return `layer ${condition.layer} is one full row`;
    case 'ply-stands':
      return condition.counted.as === 'no-strength'
        ? `nothing is shown of what a ply of layer ${condition.layer} stands`
        : `a ply of layer ${condition.layer} stands no more than ${countedAsWords(condition.counted)}`;
    case 'enamelled':
      return `the wire of ${condition.winding} is enamelled`;
    case 'cover-earns-nothing':
      return `the cover of ${condition.winding} earns nothing`;
    case 'cover-as-shown':
      return `the cover of ${condition.winding} stands no more than is shown of it`;
    case 'counted':
      return `${condition.field} is ${countedAsWords(condition.counted)}`;
    default:
      return PLAINLY[condition.if];
  }
}

const PLAINLY = {
  'thin-wall': 'the former’s wall is no more than a ply of unknown strength',
  'thin-flange': 'the flange is no more than a ply of unknown strength',
  'core-tied': 'the core is tied so that it is worst',
  'core-near': 'the core lies on the winding',
  'no-sleeve': 'no strong sleeve covers the lead',
  'thin-sleeve': 'the wall of its sleeve is too thin to count',
  'short-sleeve': 'its sleeve ends at the flange',
  'no-strength': 'nothing of its strength is shown',
  riser: 'the lead climbs the flange',
  'that-side': 'the lead runs on that side',
  'bare-riser': 'the lead runs bare up the flange there',
  'no-distance': 'the distance that is not stated is none',
  'at-the-rim': 'the stack reaches the rim',
  'worst-tracking': 'the surface there is of tracking group IIIb',
} as const;
