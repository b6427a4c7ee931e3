// How the layers of a build fit its former, in millimetres.

import type { Fit } from '#judge/verdict/verdict.ts';
import { chamberFits } from '#solver/placing/chamber-fits.ts';
import { inMm, type Nm } from '#units/quantity.ts';

export function fitOf(build: Parameters<typeof chamberFits>[0]): Fit {
  const fits = chamberFits(build);
  const used = Math.max(0, ...fits.map((fit) => fit.used)) as Nm;
  return {
    height: { used: inMm(used), available: inMm(build.height) },
    chambers: fits.map((fit) => ({
      used: inMm(fit.used),
      layers: fit.layers.map((layer) => ({ ...layer, height: inMm(layer.height) })),
    })),
  };
}
