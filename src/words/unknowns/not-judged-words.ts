// What a verdict leaves out, each as a phrase: `heat`, `leads of P`.

import type { NotJudged } from '#judge/verdict/remark.ts';

export function notJudgedWords(left: NotJudged): string {
  switch (left.what) {
    case 'leads':
      return `leads of ${left.winding}`;
    case 'stripped-ends':
      return `stripped ends of ${left.winding}`;
    case 'link':
      return `link of ${left.winding} from chamber to chamber`;
    case 'lead':
      return `lead of ${left.of}`;
    case 'stripped-end':
      return `stripped end of ${left.of}`;
    case 'undrawn':
      return `${left.circuit}, of which nothing is drawn`;
    default:
      return PLAINLY[left.what];
  }
}

const PLAINLY = {
  'below-the-innermost': 'what lies below the innermost layer listed',
  outside: 'pins and wiring outside',
  'parts-near': 'parts near the coil',
  heat: 'heat',
  'heat-in-normal-use': 'heat in normal use',
  'enamel-class': 'class of the enamel',
  'unnamed-class': 'class of materials that are not named',
} as const;
