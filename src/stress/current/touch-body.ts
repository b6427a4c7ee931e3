// The body of IEC 60990 at one frequency: its impedance, and what its two voltmeters show for a current through it.

import { touchNetwork } from '#standards/tables/touch-network.ts';
import type { Hertz } from '#units/quantity.ts';

import { beside, complex, magnitude, over, plus, type Complex } from './complex.ts';

export interface TouchBody {
  readonly impedance: Complex;
  /** Current by the voltage on the inner body, over the current itself. */
  readonly plain: number;
  /** The same weighed by how it is felt. */
  readonly weighed: number;
}

export function touchBody(frequency: Hertz): TouchBody {
  const { skinOhms, skinFarads, bodyOhms, filterOhms, filterFarads } = touchNetwork;
  if (frequency === 0) return { impedance: complex(skinOhms + bodyOhms), plain: 1, weighed: 1 };
  const w = 2 * Math.PI * frequency;
  const filter = complex(filterOhms, -1 / (w * filterFarads));
  const inner = beside(complex(bodyOhms), filter);
  const skin = beside(complex(skinOhms), complex(0, -1 / (w * skinFarads)));
  const weighing = over(complex(1), complex(1, w * filterOhms * filterFarads));
  const plain = magnitude(inner) / bodyOhms;
  return { impedance: plus(inner, skin), plain, weighed: plain * magnitude(weighing) };
}
