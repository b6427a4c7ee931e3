// What can be done with each of many files, in this thread or in one of its own.

import type { FileJob } from './file-job.ts';
import type { JudgeItem, JudgeOrder } from './judge-item.ts';
import type { OverviewItem, OverviewOrder } from './overview-item.ts';

export interface FileJobs {
  readonly judge: { readonly order: JudgeOrder; readonly item: JudgeItem };
  readonly overview: { readonly order: OverviewOrder; readonly item: OverviewItem };
}

export type JobName = keyof FileJobs;
export type OrderOf<J extends JobName> = FileJobs[J]['order'];
export type ItemOf<J extends JobName> = FileJobs[J]['item'];
export type JobOf<J extends JobName> = FileJob<OrderOf<J>, ItemOf<J>>;

const JOBS: { readonly [J in JobName]: () => Promise<JobOf<J>> } = {
  judge: async () => (await import('./judge-item.ts')).judgeJob,
  overview: async () => (await import('./overview-item.ts')).overviewJob,
};

export const fileJob = <J extends JobName>(name: J): Promise<JobOf<J>> => JOBS[name]();
