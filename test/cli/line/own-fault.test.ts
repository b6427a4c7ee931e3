import { describe, expect, it } from 'vitest';
import { itemOf } from '#cli/many/file-job.ts';
import { judgeJob } from '#cli/many/judge-item.ts';
import { codeOf } from '#cli/many/judge-many.ts';
import { overviewJob } from '#cli/many/overview-item.ts';
import { broken, ownFault } from '#cli/line/own-fault.ts';

const broke = new Error('Cannot read properties of undefined\n    at judge (judge.ts:3)');
const order = { rules: [], form: 'json', explain: null } as const;

describe('a fault of the program', () => {
  it('should be told in one sentence without where in the code it was', () => {
    const says = ownFault('a\u001bb.json', broke);
    expect(says).toBe(
      'a b.json: a fault of the program, not of the file: Cannot read properties of undefined.',
    );
    expect(ownFault('x', new Error('y'.repeat(5000))).length).toBeLessThan(300);
    expect(broken('judge', broke)).toMatchObject({ code: 3, out: [] });
  });

  it('should be the item of its file, and end nothing else', () => {
    const job: typeof judgeJob = {
      item: (file, place, how) => {
        if (file === 'breaks') throw broke;
        return judgeJob.item(file, place, how);
      },
      fault: judgeJob.fault,
    };
    const items = ['no such file', 'breaks', 'no other file'].map((file, k) => itemOf(job, file, k, order));
    expect(items.map(({ answer }) => answer)).toEqual(['bad', 'fault', 'bad']);
    expect(items.map(codeOf)).toEqual([2, 3, 2]);
    expect(JSON.parse(items[1]!.text)).toMatchObject({
      file: 'breaks',
      error: { found: 'a fault of the program', says: expect.stringContaining('breaks: a fault') },
    });
    expect(judgeJob.fault('breaks', broke, { ...order, form: 'words' }).text).toMatch(
      /^not judged {3}breaks: .*\n$/,
    );
  });

  it('should have its line in the overview', () => {
    const { build } = overviewJob.fault('breaks', broke, { out: '', names: [] });
    expect(build).toMatchObject({ kind: 'fault', file: 'breaks' });
  });
});
