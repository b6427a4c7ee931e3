// A build judged whole to be set beside another.

import type { Judged } from '#judge/compare/comparison.ts';
import { judge } from '#judge/judging/judge.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { copperReport } from '#judge/study/copper.ts';
import type { Design } from '#model/design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { ComparedBuild } from '#papers/html/compare/compared-build.ts';

export function comparedBuild(
  says: string,
  doc: DesignFile,
  design: Design,
  cache = new PathCache(),
): ComparedBuild {
  const judgement = judge(design, cache);
  return { says, doc, design, judgement, copper: copperReport(design, judgement.verdict.fit) };
}

export const sideOf = ({ doc, judgement: { verdict } }: ComparedBuild): Judged => ({ doc, verdict });
