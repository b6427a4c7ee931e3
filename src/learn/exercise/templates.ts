// The builds that exercises are drawn from: one small transformer of two windings, with numbers that change by the seed.
// Every build is invented. A template names the questions that make sense of it.

import type { DesignFile } from '#model/schema/schema.ts';
import type { QuestionKind } from './exercise.ts';
import type { Random } from '#units/random.ts';

export interface Template {
  readonly id: string;
  readonly questions: readonly QuestionKind[];
  readonly draw: (random: Random) => DesignFile;
}

interface Numbers {
  /** Working voltage, V rms. */
  readonly rms: number;
  /** Margins of primary and output, hundredths of a millimetre. */
  readonly primary: number;
  readonly output: number;
  readonly plies: number;
  /** The primary's leads cross its margin on the left, bare; else they are not judged. */
  readonly leadsCross: boolean;
}

export const templates: readonly Template[] = [
  {
    id: 'margins',
    questions: ['asked', 'length', 'grade', 'missing', 'least-margin', 'more-enamel'],
    draw: (random) =>
      build({
        rms: random.whole(5, 8) * 50,
        primary: random.whole(30, 48) * 5,
        output: random.whole(30, 48) * 5,
        plies: 3,
        leadsCross: false,
      }),
  },
  {
    id: 'plies',
    questions: ['asked', 'grade', 'verdict', 'one-ply-less', 'more-enamel'],
    draw: (random) =>
      build({
        rms: random.whole(5, 6) * 50,
        primary: random.whole(60, 80) * 5,
        output: random.whole(60, 80) * 5,
        plies: random.oneOf([2, 3, 4]),
        leadsCross: false,
      }),
  },
  {
    id: 'leads',
    questions: ['asked', 'length', 'grade', 'missing', 'least-margin'],
    draw: (random) =>
      build({
        rms: random.whole(5, 7) * 50,
        primary: random.whole(60, 70) * 5,
        output: random.whole(50, 80) * 5,
        plies: 3,
        leadsCross: true,
      }),
  },
];

export const templateOf = (id: string): Template | null =>
  templates.find((template) => template.id === id) ?? null;

const mm = (hundredths: number): string => `${(hundredths / 100).toFixed(2)} mm`;

function build({ rms, primary, output, plies, leadsCross }: Numbers): DesignFile {
  const lead = { at: 'left', exit: 'left', way: 'slot', sleeve: null, bareFrom: '0 mm' } as const;
  const tape = { kind: 'tape', material: 'polyester-tape-25', plyThickness: '0.06 mm' } as const;
  return {
    format: 'layerwright-design/1',
    title: 'Exercise: an invented adapter',
    origin: 'lesson',
    notes: 'An invented build, drawn for an exercise.',
    rules: 'iec-62368-1',
    supply: { kind: 'ac', voltage: '240 V', tolerance: 0.1, frequency: '50 Hz', overvoltageCategory: 2 },
    surroundings: {
      pollutionDegree: 2,
      altitude: '2000 m',
      hottestInsulation: '100 degC',
      impregnation: 'none',
    },
    workingVoltages: [
      {
        between: ['pri', 'out'],
        rms: `${rms} V`,
        peak: `${rms * 2} V`,
        frequency: '65 kHz',
        basis: 'measured',
      },
    ],
    circuits: [
      { id: 'pri', name: 'Primary', role: 'mains' },
      { id: 'out', name: 'Output', role: 'touchable' },
    ],
    former: {
      height: '5 mm',
      wall: '0.8 mm',
      flange: '0.8 mm',
      material: 'phenolic',
      chambers: [{ width: '18 mm' }],
    },
    core: { bond: 'floating', outerGap: '1 mm' },
    windings: [
      {
        id: 'P',
        circuit: 'pri',
        wire: { kind: 'enamelled', conductor: '0.2 mm', grade: 1, overallDiameter: '0.23 mm' },
        leads: leadsCross ? { start: lead, finish: lead } : 'not-judged',
      },
      {
        id: 'S',
        circuit: 'out',
        wire: { kind: 'enamelled', conductor: '0.5 mm', grade: 1, overallDiameter: '0.55 mm' },
        leads: 'not-judged',
      },
    ],
    layers: [
      { kind: 'winding', winding: 'P', turns: 40, margins: margins(primary) },
      { ...tape, plies },
      { kind: 'winding', winding: 'S', turns: 8, margins: margins(output) },
      { ...tape, plies: 3 },
    ],
  };
}

function margins(hundredths: number) {
  const margin = { width: mm(hundredths), filled: true };
  return { left: margin, right: margin };
}
