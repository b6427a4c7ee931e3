// How a photograph lies under the section: as it was laid by hand, else with its known length level between the flanges, at half
// their height.

import { laidOnTwo, type Laying } from '#geometry/photo-laying.ts';
import type { Workspace } from '#state/document/workspace.svelte.ts';
import type { PhotoDesk } from '#state/photo/photo-desk.svelte.ts';
import type { Photo } from '#state/photo/photo-record.ts';
import { inMm } from '#units/quantity.ts';

/** Null before the photograph has a scale, and where there is no section. */
export function layingOf({ laid }: PhotoDesk, workspace: Workspace, photo: Photo): Laying | null {
  return laid?.photo === photo.id ? laid.laying : onFlanges(workspace, photo);
}

function onFlanges({ editor, section: shown, design }: Workspace, { note: { scale } }: Photo): Laying | null {
  const section = editor.drawn?.judgement.sections.find(({ name }) => name === shown);
  const [first, last] = [section?.chambers[0], section?.chambers.at(-1)];
  if (scale === null || first === undefined || last === undefined) return null;
  const [from, to] = scale.from.x <= scale.to.x ? [scale.from, scale.to] : [scale.to, scale.from];
  const [middle, half] = [(inMm(first.x0) + inMm(last.x1)) / 2, scale.length / 2];
  const up = design === null ? 0 : inMm(design.former.height.value) / 2;
  return laidOnTwo(
    [from, to],
    [
      [middle - half, up],
      [middle + half, up],
    ],
  );
}
