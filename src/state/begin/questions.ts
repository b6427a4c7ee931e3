// The ten questions of an examination: what is asked, how to look for it, the answers, and the figures that go with each.
// "Don't know" is among the answers of every one, and a figure that is left empty is not known either.

import { fileLengthWords } from '#words/text/file-length.ts';

export interface Answer {
  readonly id: string;
  readonly label: string;
  /** Quantities to give with this answer. */
  readonly fields?: readonly AnswerField[];
}

export interface AnswerField {
  readonly id: string;
  readonly label: string;
  /** A `size` is a length that cannot be 0. */
  readonly kind: 'length' | 'size' | 'voltage' | 'count' | 'text';
  /** Shown in the empty field; never counted. */
  readonly example: string;
}

export interface Question {
  readonly id: string;
  readonly asks: string;
  readonly look: string;
  readonly answers: readonly Answer[];
}

const length = (id: string, label: string, example: string): AnswerField => ({
  id,
  label,
  kind: 'length',
  example,
});
const size = (id: string, label: string, example: string): AnswerField => ({
  ...length(id, label, example),
  kind: 'size',
});
const DONT_KNOW: Answer = { id: 'unknown', label: 'don’t know' };

export const questions: readonly Question[] = [
  {
    id: 'device',
    asks: 'What is it from, and what does its label allow?',
    look: 'The highest voltage of the marked range counts: of 100-240 V it is 240 V.',
    answers: [
      {
        id: 'known',
        label: 'it says',
        fields: [
          { id: 'title', label: 'device', kind: 'text', example: 'Adapter from the bench' },
          { id: 'supply', label: 'highest marked', kind: 'voltage', example: '240 V' },
        ],
      },
      { id: 'unknown', label: 'don’t know: 100 to 240 V' },
    ],
  },
  {
    id: 'former',
    asks: 'How large is the winding window?',
    look: 'Between the flanges, and from the tube to the rim, with a caliper.',
    answers: [
      {
        id: 'known',
        label: 'measured',
        fields: [size('width', 'between the flanges', '10 mm'), size('height', 'tube to rim', '4 mm')],
      },
      {
        id: 'unknown',
        get label() {
          return `don’t know: ${['8 mm', '16 mm'].map(fileLengthWords).join(' to ')} wide`;
        },
      },
    ],
  },
  {
    id: 'order',
    asks: 'In which order do the windings lie?',
    look: 'Unwind from the outside; note what comes off first.',
    answers: [
      { id: 'primary-inside', label: 'primary next to the tube, output over it' },
      { id: 'output-inside', label: 'output next to the tube, primary over it' },
      { id: 'sandwich', label: 'primary in two parts, the output between' },
      { id: 'chambers', label: 'side by side in two chambers' },
      { id: 'unknown', label: 'don’t know: primary inside' },
    ],
  },
  {
    id: 'auxiliary',
    asks: 'Is there a small winding more on the mains side?',
    look: 'It feeds the control circuit; often the last one, of few turns.',
    answers: [
      { id: 'outermost', label: 'yes, outermost' },
      { id: 'none', label: 'no' },
      { id: 'unknown', label: 'don’t know: counted as there' },
    ],
  },
  {
    id: 'plies',
    asks: 'How many plies of tape lie between primary and output?',
    look: 'Count where it is thinnest, at several places round the coil.',
    answers: [
      {
        id: 'known',
        label: 'counted',
        fields: [{ id: 'plies', label: 'plies', kind: 'count', example: '3' }],
      },
      { id: 'none', label: 'no tape there' },
      { id: 'unknown', label: 'don’t know, but there was tape' },
    ],
  },
  {
    id: 'tape',
    asks: 'Does that tape reach both flanges?',
    look: 'Look down along each flange before lifting it.',
    answers: [
      { id: 'full', label: 'yes, flange to flange' },
      {
        id: 'short',
        label: 'no, it stops short',
        fields: [
          length('short-left', 'short at the left', '0.5 mm'),
          length('short-right', 'short at the right', '0.5 mm'),
        ],
      },
      {
        id: 'unknown',
        get label() {
          return `don’t know: up to ${fileLengthWords('1 mm')} short`;
        },
      },
    ],
  },
  {
    id: 'margins',
    asks: 'How far from the flanges do the windings stop, and is that space filled?',
    look: 'Measure primary and output; the narrower one counts.',
    answers: [
      {
        id: 'filled',
        label: 'filled with tape',
        fields: [length('margin-left', 'left', '3 mm'), length('margin-right', 'right', '3 mm')],
      },
      {
        id: 'empty',
        label: 'left empty',
        fields: [length('gap-left', 'left', '1 mm'), length('gap-right', 'right', '1 mm')],
      },
      { id: 'none', label: 'they reach the flanges' },
      DONT_KNOW,
    ],
  },
  {
    id: 'wire',
    asks: 'What is the output wound with?',
    look: 'Thickness over all; a cover that peels off in layers is no enamel.',
    answers: [
      { id: 'enamelled', label: 'enamelled wire', fields: [size('wire-enamelled', 'over all', '0.55 mm')] },
      {
        id: 'three-layers',
        label: 'wire with three certified layers',
        fields: [size('wire-layers', 'over all', '0.7 mm')],
      },
      {
        id: 'covered',
        label: 'covered wire, nothing known of it',
        fields: [size('wire-covered', 'over all', '0.7 mm')],
      },
      DONT_KNOW,
    ],
  },
  {
    id: 'leads',
    asks: 'How do the output’s ends leave the window?',
    look: 'A sleeve counts as far as it reaches in.',
    answers: [
      {
        id: 'sleeved',
        label: 'in sleeves',
        fields: [length('sleeve', 'wall of the sleeve', '0.4 mm'), length('sleeve-in', 'reaches in', '4 mm')],
      },
      { id: 'slot', label: 'bare, straight out through a slot' },
      { id: 'riser', label: 'bare, up along the flange' },
      DONT_KNOW,
    ],
  },
  {
    id: 'core',
    asks: 'Is the core tied to anything?',
    look: 'A wire, a band or a clip from the core to a circuit.',
    answers: [
      { id: 'floating', label: 'to nothing' },
      { id: 'pri', label: 'to the mains side' },
      { id: 'out', label: 'to the output' },
      DONT_KNOW,
    ],
  },
];
