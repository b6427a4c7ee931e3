// The demo builds, read and judged as the page does it, with changes of fields on top.

import { readdirSync, readFileSync } from 'node:fs';
import type { Design } from '#model/design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import { applyEdits, type Edit } from '#state/fields/edit.ts';
import { judging } from '#state/searches/judging.ts';
import type { DrawnSection, Handle } from '#ui/canvas/handles/handle.ts';
import { handlesOf } from '#ui/canvas/handles/handles.ts';

const { read, judge } = judging();

export interface Judged {
  readonly doc: DesignFile;
  readonly design: Design;
  readonly judgement: Drawable;
}

export const demoIds = readdirSync('static/demos').map((file) => file.replace(/\.json$/, ''));

export function judgedDemo(id: string, edits: readonly Edit[] = []): Judged {
  const file = JSON.parse(readFileSync(`static/demos/${id}.json`, 'utf8')) as DesignFile;
  return judgedDoc(applyEdits(file, edits));
}

export function judgedDoc(doc: DesignFile): Judged {
  const reading = read(doc);
  if (reading.kind === 'bad') throw new Error(faultsOf(doc).join('; '));
  return { doc, design: reading.design, judgement: judge(reading.design) };
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
