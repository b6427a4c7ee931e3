// The demo builds, read and judged as the page does it, with changes of fields on top.

import { readdirSync, readFileSync } from 'node:fs';
import type { Design } from '#model/design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import { applyEdits, type Edit } from '#state/fields/edit.ts';
import { judging } from '#state/searches/judging.ts';
import type { DrawnSection, Handle } from '#ui/canvas/handles/handle.ts';
import { handlesOf } from '#ui/canvas/handles/handles.ts';

const { read, judge, sketch } = judging();

export interface Judged {
  readonly doc: DesignFile;
  readonly design: Design;
  readonly judgement: Drawable;
}

export const demoIds = readdirSync('static/demos').map((file) => file.replace(/\.json$/, ''));

/** As they lie in the folder: judged once for all tests of a file. */
const asFiled = new Map<string, Judged>();

export function judgedDemo(id: string, edits: readonly Edit[] = []): Judged {
  const known = edits.length === 0 ? asFiled.get(id) : undefined;
  if (known !== undefined) return known;
  const file = JSON.parse(readFileSync(`static/demos/${id}.json`, 'utf8')) as DesignFile;
  const judged = judgedDoc(applyEdits(file, edits));
  if (edits.length === 0) asFiled.set(id, judged);
  return judged;
}

export function judgedDoc(doc: DesignFile): Judged {
  const design = designOf(doc);
  return { doc, design, judgement: judge(design) };
}

/** As the page draws it while an edge is dragged: the plain section alone, not judged. */
export function sketchedDoc(doc: DesignFile): Judged {
  const design = designOf(doc);
  return { doc, design, judgement: sketch!(design) };
}

function designOf(doc: DesignFile): Design {
  const reading = read(doc);
  if (reading.kind === 'bad') throw new Error(faultsOf(doc).join('; '));
  return reading.design;
}

export function faultsOf(doc: DesignFile): readonly string[] {
  const reading = read(doc);
  return reading.kind === 'bad' ? reading.faults.map(({ field, expected }) => `${field}: ${expected}`) : [];
}

export function sectionOf({ judgement }: Judged, name = 'plain'): DrawnSection {
  const section = judgement.sections.find((each) => each.name === name);
  if (section === undefined) throw new Error(`no section ${name}`);
  return section;
}

export function handleOf(judged: Judged, id: string, section = 'plain'): Handle {
  const handle = handlesOf(judged.design, sectionOf(judged, section)).find((each) => each.id === id);
  if (handle === undefined) throw new Error(`no handle ${id}`);
  return handle;
}
