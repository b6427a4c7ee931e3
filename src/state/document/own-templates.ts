// Templates of one's own as the sheet offers them: those that lie in the open file first, then those of this browser. What is
// kept goes into both.

import { editDesign } from '#model/edit/edit-design.ts';
import { layersOfText } from '#model/edit/layers-of-text.ts';
import {
  isOfKind,
  isSameTemplate,
  withTemplate,
  type Template,
  type TemplateKind,
  type TemplateOf,
} from '#state/storage/templates.svelte.ts';
import { copied, pasted } from './layer-tools.ts';
import type { Workspace } from './workspace.svelte.ts';

export function templatesOf<K extends TemplateKind>(
  { editor, templates }: Workspace,
  kind: K,
): readonly TemplateOf<K>[] {
  const filed: readonly Template[] = Array.isArray(editor.shown.templates) ? editor.shown.templates : [];
  const more = templates.kept.filter((one) => !filed.some((each) => isSameTemplate(each, one)));
  return [...filed, ...more].filter((one): one is TemplateOf<K> => isOfKind(one, kind));
}

export function keepTemplate({ editor, templates }: Workspace, one: Template): void {
  templates.keep(one);
  const all = withTemplate(editor.doc.templates ?? [], one);
  editor.change(editDesign(editor.doc, 'templates', all), `keep “${one.name}”`);
}

/** In this browser and in the open file; other files that it lies in keep it. */
export function forgetTemplate({ editor, templates }: Workspace, one: Template): void {
  templates.forget(one);
  const filed = editor.doc.templates ?? [];
  const left = filed.filter((each) => !isSameTemplate(each, one));
  if (left.length < filed.length)
    editor.change(
      editDesign(editor.doc, 'templates', left.length === 0 ? undefined : left),
      `forget “${one.name}”`,
    );
}

/** The picked layers with their windings; false where nothing is picked. */
export function keepPicked(workspace: Workspace, name: string): boolean {
  const found = layersOfText(copied(workspace) ?? '');
  if (found === null) return false;
  const { layers, windings, circuits } = found;
  keepTemplate(workspace, { name, layers: [...layers], windings: [...windings], circuits: [...circuits] });
  return true;
}

export const putInLayers = (
  workspace: Workspace,
  { layers, windings, circuits }: TemplateOf<'layers'>,
): boolean =>
  pasted(workspace, JSON.stringify({ format: 'layerwright-layers/1', layers, windings, circuits }));
