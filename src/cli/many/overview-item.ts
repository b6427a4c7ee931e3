// One of many files for the overview: judged, its report written, its row kept.

import { join } from 'node:path';
import { judgedBuild, type BadBuild, type JudgedBuild } from '#papers/html/overview.ts';
import { reportHtml } from '#papers/html/report/report.ts';
import { study } from '#judge/study.ts';
import type { FileJob } from './file-job.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { ownFault } from '#cli/line/own-fault.ts';
import { writeWhole } from '#cli/files/write-whole.ts';

export interface OverviewOrder {
  /** The folder, which is there. */
  readonly out: string;
  /** Name of each file's report, by the file's place. */
  readonly names: readonly string[];
}

export interface OverviewItem {
  readonly build: JudgedBuild | BadBuild;
  /** Why its report could not be written; null where it was, or there is none. */
  readonly unwritten: string | null;
}

export const overviewJob: FileJob<OverviewOrder, OverviewItem> = {
  item: (file, place, { out, names }) => overviewItem(file, out, names[place] ?? ''),
  fault: (file, error) => ({ build: { kind: 'fault', file, says: ownFault(file, error) }, unwritten: null }),
};

function overviewItem(file: string, out: string, name: string): OverviewItem {
  const loaded = loadDesign(file);
  if (loaded.kind === 'bad')
    return { build: { kind: 'bad', file, says: faultLines(file, loaded.faults) }, unwritten: null };
  const { design, text } = loaded;
  const judgement = study(design);
  const html = reportHtml({ design, judgement, designText: text });
  const written = writeWhole(join(out, name), html, 'overview');
  return {
    build: judgedBuild(file, encodeURIComponent(name), design, judgement.verdict),
    unwritten: written.code === 0 ? null : written.err,
  };
}
