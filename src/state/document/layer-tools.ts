// What one does to the picked layers as a whole from anywhere: copy, cut and paste them as text, pick all, both margins alike.

import { editDesign, fieldAt } from '#model/edit/edit-design.ts';
import { removeLayers } from '#model/edit/layer-edits.ts';
import { layersText, pasteLayers } from '#model/edit/layers-text.ts';
import { isSheetSafe } from '#state/storage/import-design.ts';
import type { Workspace } from './workspace.svelte.ts';

/** Those picked, else the one whose row is open. */
export function pickedLayers({ selection, editor }: Workspace): readonly number[] {
  const { layers, openRow } = selection;
  const picked = layers.length > 0 ? layers : typeof openRow === 'number' ? [openRow] : [];
  return picked.filter((layer) => layer < editor.doc.layers.length);
}

/** Null where nothing is picked. */
export function copied(workspace: Workspace): string | null {
  const picked = pickedLayers(workspace);
  return picked.length === 0 ? null : layersText(workspace.editor.doc, picked);
}

export function removePicked(workspace: Workspace): void {
  const { editor, selection } = workspace;
  const picked = pickedLayers(workspace);
  selection.openRow = null;
  selection.layers = [];
  editor.change(
    removeLayers(editor.doc, picked),
    picked.length === 1 ? 'take out a layer' : 'take out layers',
  );
}

/** Just outside the outermost that is picked, else outermost of all. False where the text holds no layers. */
export function pasted(workspace: Workspace, text: string): boolean {
  const { editor, selection } = workspace;
  const picked = pickedLayers(workspace);
  const before = picked.length === 0 ? editor.doc.layers.length : Math.max(...picked) + 1;
  const found = pasteLayers(editor.doc, text, before);
  if (found === null || !isSheetSafe(found.doc)) return false;
  editor.change(found.doc, found.layers.length === 1 ? 'paste a layer' : 'paste layers');
  selection.layers = found.layers;
  selection.openRow = null;
  return true;
}

export function pickAll({ editor, selection }: Workspace): void {
  selection.layers = [...editor.doc.layers.keys()];
}

/** The wider of both, for the narrower one is what limits; one that nobody knows takes the other's. */
export function marginsAlike({ editor }: Workspace, layer: number): void {
  const margins = `layers[${layer}].margins`;
  const [left, right] = [fieldAt(editor.doc, `${margins}.left`), fieldAt(editor.doc, `${margins}.right`)];
  const from = left === undefined || isNarrower(left, right) ? right : left;
  if (from === undefined) return;
  const both = editDesign(editDesign(editor.doc, `${margins}.left`, from), `${margins}.right`, from);
  editor.change(both, 'both margins alike');
}

function isNarrower(a: unknown, b: unknown): boolean {
  const width = (margin: unknown): number => {
    const found = typeof margin === 'object' && margin !== null && 'width' in margin ? margin.width : null;
    return Number.parseFloat(String(found));
  };
  return !(width(a) >= width(b)) && !Number.isNaN(width(b));
}
