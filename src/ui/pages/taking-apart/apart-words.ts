// What is looked for at each step of taking a transformer apart.

import type { ApartStep } from '#state/begin/taking-apart.ts';

interface StepWords {
  readonly title: string;
  readonly look: string;
}

const STEPS: Readonly<Record<Exclude<ApartStep['kind'], 'layer'>, StepWords>> = {
  label: {
    title: 'Label and circuits',
    look: 'The part is still whole. Note the highest voltage of the marked range, and which circuits there are: mains side, output, earth.',
  },
  outside: {
    title: 'Distances outside the window',
    look: 'Before the core comes off: between the pin rows over the surface and through air, notches in the flanges, board tracks under the coil, leads on the pin shelf.',
  },
  bridges: {
    title: 'Parts that bridge the barrier',
    look: 'On the board between mains and output: capacitors with their class and rated voltage, optocouplers, resistors. Read the marks; marks can be false.',
  },
  core: {
    title: 'Core off',
    look: 'A wire, band or clip from the core to a circuit? How far does the core’s leg stand above the rim? Tape round the core? Warm the glue, do not lever.',
  },
  next: {
    title: 'What comes off next',
    look: 'Take off one thing at a time and say what it was. It goes inside all that came off before.',
  },
  former: {
    title: 'The bare former',
    look: 'Between the flanges, from the tube to the rim, thickness of tube and flanges where they are thinnest, the mark of the moulding, seams and notches.',
  },
};

const LAYERS: Readonly<Record<string, string>> = {
  tape: 'Look down along each flange before lifting it: does it reach? Count the plies where they are fewest, at several places round the coil. Note a loose end, and an edge turned up.',
  winding:
    'Before unwinding: from each flange to the first and last turn, and whether that space is filled. Follow both ends to their pins: in a sleeve, how far in, up the flange or through a slot? Count the turns as they come off; measure the wire over all; try whether its cover peels in layers.',
  screen:
    'To which circuit does its lead go? Where do its edges end? Do its ends overlap, with tape between?',
};

export const stepWords = (step: ApartStep, layerKind: string, layerName: string): StepWords =>
  step.kind === 'layer' ? { title: layerName, look: LAYERS[layerKind] ?? '' } : STEPS[step.kind];
