// From the read file to the design, for evidence; also for one entry of a file that is wrong elsewhere.

import type { Evidence, Measured, Picture } from '#model/design/evidence.ts';
import { measured, picture } from '#model/schema/schema-evidence.ts';
import type { DesignFile, FileRead } from '#model/schema/schema.ts';

type EvidenceRead = NonNullable<FileRead['evidence']>[number];
type EvidenceTyped = NonNullable<DesignFile['evidence']>[number];

export const buildEvidence = (read: EvidenceRead): Evidence => ({
  id: read.id,
  kind: read.kind,
  says: read.says ?? '',
  fields: read.fields ?? [],
  file: read.file ?? null,
  measured: read.measured ? buildMeasured(read.measured) : null,
  picture: read.picture ? buildPicture(read.picture) : null,
});

/** What an entry of the file holds besides its words; null where there is nothing, or nothing that can be read. */
export function figuresOf(typed: EvidenceTyped): Pick<Evidence, 'measured' | 'picture'> {
  const [found, kept] = [measured.safeParse(typed.measured), picture.safeParse(typed.picture)];
  return {
    measured: found.success ? buildMeasured(found.data) : null,
    picture: kept.success ? buildPicture(kept.data) : null,
  };
}

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
