// What can be done with each of many files, in this thread or in one of its own. What a job gives back is plain data.
// A fault of the program in one file is that file's result, and never the end of the others.

import type { JudgeItem, JudgeOrder } from './judge-item.ts';
import type { OverviewItem, OverviewOrder } from './overview-item.ts';

export interface FileJobs {
  readonly judge: { readonly order: JudgeOrder; readonly item: JudgeItem };
  readonly overview: { readonly order: OverviewOrder; readonly item: OverviewItem };
}

export type JobName = keyof FileJobs;
export type OrderOf<J extends JobName> = FileJobs[J]['order'];
export type ItemOf<J extends JobName> = FileJobs[J]['item'];

export interface FileJob<J extends JobName> {
  /** `place`: of the file among those given. */
  readonly item: (file: string, place: number, order: OrderOf<J>) => ItemOf<J>;
  /** In place of an item where the program broke over the file. */
  readonly fault: (file: string, error: unknown, order: OrderOf<J>) => ItemOf<J>;
}

const JOBS: { readonly [J in JobName]: () => Promise<FileJob<J>> } = {
  judge: async () => (await import('./judge-item.ts')).judgeJob,
  overview: async () => (await import('./overview-item.ts')).overviewJob,
};

export const fileJob = <J extends JobName>(name: J): Promise<FileJob<J>> => JOBS[name]();

export function itemOf<J extends JobName>(
  job: FileJob<J>,
  file: string,
  place: number,
  order: OrderOf<J>,
): ItemOf<J> {
  try {
    return job.item(file, place, order);
  } catch (error) {
    return job.fault(file, error, order);
  }
}
