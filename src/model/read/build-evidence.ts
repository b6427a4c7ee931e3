// From the read file to the design, for evidence.

import type { Evidence, Measured, Picture } from '#model/design.ts';
import type { FileRead } from '#model/schema/schema.ts';

type EvidenceRead = NonNullable<FileRead['evidence']>[number];

export const buildEvidence = (read: EvidenceRead): Evidence => ({
  id: read.id,
  kind: read.kind,
  says: read.says ?? '',
  fields: read.fields ?? [],
  file: read.file ?? null,
  measured: read.measured ? buildMeasured(read.measured) : null,
  picture: read.picture ? buildPicture(read.picture) : null,
});

const buildMeasured = (read: NonNullable<EvidenceRead['measured']>): Measured => ({
  photo: read.photo ?? null,
  kind: read.kind,
  points: read.points ?? [],
  picked: read.picked ?? null,
  scale: read.scale ?? null,
  found: read.value === undefined ? null : { value: read.value, plusMinus: read.plusMinus ?? 0 },
});

const buildPicture = ({ width, height, turned, scale }: NonNullable<EvidenceRead['picture']>): Picture => ({
  width,
  height,
  turned: turned ?? 0,
  scale: scale ? { ...scale, picked: scale.picked ?? 0 } : null,
});
