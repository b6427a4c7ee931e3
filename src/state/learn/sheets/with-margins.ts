// The build of the lesson with the margins of both windings at one width.

import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';

const MARGINS = [0, 2].flatMap((layer) =>
  ['left', 'right'].map((side) => `layers[${layer}].margins.${side}.width`),
);

export const withMargins = (build: DesignFile, width: number): DesignFile =>
  MARGINS.reduce((edited, path) => editDesign(edited, path, `${width} mm`), build);
