// The answers that a step of taking apart may get, each as the build it would make, so that one sees what they decide before
// one has looked. Where only one side of the barrier came off, the other is supposed to lie next under it.

import { editDesign, fieldAt } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { newWindingCameOff, type ApartStep } from './taking-apart.ts';

export interface StepChoices {
  /** What is answered. */
  readonly asks: string;
  readonly choices: readonly StepChoice[];
  /** Circuit of which a winding is supposed to lie next under what came off; null where nothing is supposed. */
  readonly supposed: string | null;
  /** The build of which the way so far is told: what is supposed lies right up to both flanges. */
  readonly soFar: DesignFile;
}

export interface StepChoice {
  readonly says: string;
  readonly isChosen: boolean;
  readonly doc: DesignFile;
}

type Asked = Pick<StepChoices, 'asks'> & {
  readonly answers: readonly { readonly says: string; readonly value: unknown }[];
  readonly fields: readonly string[];
};

/** Null where the answers of a step are too many to lay out. */
export function stepChoices(doc: DesignFile, step: ApartStep): StepChoices | null {
  const asked = askedAt(doc, step);
  if (asked === null) return null;
  const { asks, answers, fields } = asked;
  const supposed = step.kind === 'layer' ? supposedUnder(doc, step.layer) : null;
  const inside = supposed === null ? doc : newWindingCameOff(doc, supposed);
  // one layer more lies within those that came off
  const shifted = (path: string): string =>
    supposed === null ? path : path.replace(/^layers\[(\d+)\]/, (_, k: string) => `layers[${Number(k) + 1}]`);
  const answered = (base: DesignFile, value: unknown): DesignFile =>
    fields.reduce((edited, field) => editDesign(edited, shifted(field), value), base);
  const same = (value: unknown): boolean => fields.every((field) => isSame(fieldAt(doc, field), value));
  return {
    asks,
    choices: answers.map(({ says, value }) => ({
      says,
      isChosen: same(value),
      doc: answered(inside, value),
    })),
    supposed,
    soFar: supposed === null ? doc : editDesign(inside, 'layers[0].margins', undefined),
  };
}

function askedAt(doc: DesignFile, step: ApartStep): Asked | null {
  if (step.kind === 'core')
    return {
      asks: 'bond of the core',
      answers: [
        { says: 'none', value: 'floating' },
        ...doc.circuits.map(({ id, name }) => ({ says: name ?? id, value: id })),
      ],
      fields: ['core.bond'],
    };
  if (step.kind !== 'layer') return null;
  const at = `layers[${step.layer}]`;
  switch (doc.layers[step.layer]?.kind) {
    case 'tape':
      return {
        asks: 'plies',
        answers: [1, 2, 3, 4].map((value) => ({ says: String(value), value })),
        fields: [`${at}.plies`],
      };
    case 'winding':
      return {
        asks: 'both margins',
        answers: [0, 1, 2, 3, 4].map((mm) => ({ says: `${mm} mm`, value: `${mm} mm` })),
        fields: [`${at}.margins.left.width`, `${at}.margins.right.width`],
      };
    case 'screen':
      return {
        asks: 'circuit of the screen',
        answers: doc.circuits.map(({ id, name }) => ({ says: name ?? id, value: id })),
        fields: [`${at}.circuit`],
      };
    default:
      return null;
  }
}

/** A tape under which nothing wound came off yet: the circuit that is feared next. */
function supposedUnder(doc: DesignFile, layer: number): string | null {
  if (doc.layers[layer]?.kind !== 'tape') return null;
  if (doc.layers.slice(0, layer).some(({ kind }) => kind === 'winding')) return null;
  const over = doc.layers.slice(layer + 1).find(({ kind }) => kind === 'winding');
  const winding = over?.kind === 'winding' ? over.winding : null;
  const circuit = doc.windings.find(({ id }) => id === winding)?.circuit;
  const isMains = (id: string): boolean => doc.circuits.find((each) => each.id === id)?.role === 'mains';
  if (circuit === undefined) return null;
  return doc.circuits.find(({ id }) => isMains(id) !== isMains(circuit))?.id ?? null;
}

const isSame = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
