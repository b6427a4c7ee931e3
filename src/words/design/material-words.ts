// The trade's name of a material in the middle of a sentence; the file and the tables know it by its id.

import { formers, sleeves, tapes } from '#standards/materials/materials.ts';

const NAMES: ReadonlyMap<string, string> = new Map(
  [...tapes, ...formers, ...sleeves].map(({ id, name }) => [id, withinSentence(name)]),
);

export const materialWords = (id: string): string => NAMES.get(id) ?? id;

/** `PTFE` keeps its capitals, `Phenolic` does not. */
function withinSentence(name: string): string {
  const isWord = /^[A-Z][a-z]/.test(name);
  return (isWord ? name.charAt(0).toLowerCase() + name.slice(1) : name).replace(/(\d) um\b/, '$1 µm');
}
