// The builds that come with the page: invented devices to look at and to change.
// The first one is part of the page itself; the others are fetched when they are chosen.

import type { DesignFile } from '#model/schema/schema.ts';
import first from '#demos/greenhouse-timer.json' with { type: 'json' };

export interface Demo {
  readonly id: string;
  readonly title: string;
  readonly shows: string;
  readonly load: () => Promise<DesignFile>;
}

/** The build that the first screen judges. */
export const firstBuild = first as DesignFile;

const demo = (
  id: string,
  title: string,
  shows: string,
  load: () => Promise<{ readonly default: unknown }>,
): Demo => ({ id, title, shows, load: async () => (await load()).default as DesignFile });

export const demos: readonly Demo[] = [
  demo(
    'greenhouse-timer',
    'Wall supply of a greenhouse irrigation timer',
    'a margin too narrow, a tape cut short, a bare lead',
    async () => ({ default: first }),
  ),
  demo(
    'hedge-trimmer-charger',
    'Charger of a cordless hedge trimmer',
    'margins and three plies',
    () => import('#demos/hedge-trimmer-charger.json'),
  ),
  demo(
    'aquarium-light',
    'Supply of an aquarium light',
    'no margins',
    () => import('#demos/aquarium-light.json'),
  ),
  demo(
    'toothbrush-stand',
    'Charging stand of an electric toothbrush',
    'wire with three insulation layers',
    () => import('#demos/toothbrush-stand.json'),
  ),
  demo(
    'model-railway-controller',
    'Supply of a model railway controller',
    'one ply',
    () => import('#demos/model-railway-controller.json'),
  ),
  demo(
    'doorbell-camera',
    'Supply of a doorbell with a camera',
    'tape too narrow',
    () => import('#demos/doorbell-camera.json'),
  ),
  demo(
    'label-printer',
    'Power brick of a label printer',
    'a lead in the margin',
    () => import('#demos/label-printer.json'),
  ),
  demo(
    'pond-pump-control',
    'Supply of a pond pump control',
    'the floating core as a bridge',
    () => import('#demos/pond-pump-control.json'),
  ),
  demo(
    'coffee-machine-standby',
    'Standby supply of a coffee machine',
    'two chambers',
    () => import('#demos/coffee-machine-standby.json'),
  ),
  demo(
    'flea-market-drill',
    'Charger of a flea-market cordless drill',
    'much that nobody knows',
    () => import('#demos/flea-market-drill.json'),
  ),
  demo(
    'headphone-amplifier',
    'Supply of a headphone amplifier',
    'a sandwich with a screen',
    () => import('#demos/headphone-amplifier.json'),
  ),
  demo(
    'garden-robot-dock',
    'Charging dock of a garden robot',
    'voltages computed, a capacitor that is no safety part',
    () => import('#demos/garden-robot-dock.json'),
  ),
];

const [opening] = demos;
if (opening === undefined) throw new Error('no build to open with');

/** The one that the page opens with. */
export const firstDemo: Demo = opening;
