// Mends with how each holds when hands wind it: first all that are found, then one by one, the best first, their shares.
// A generator like the searches it is made of.

import type { FileJudge } from '#judge/judging/judge-files.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { mend, MEND_DEFAULTS, type Mending, type MendOptions } from '#mend/search/mend.ts';
import { FOR_EVER, type Patience } from './patience.ts';
import { heldOf, type Held } from './slack.ts';

export interface HeldMending extends Mending {
  /** To each proposal; those still to come are left out. */
  readonly held: readonly Held[];
}

export function* heldMends(
  doc: DesignFile,
  judge: FileJudge,
  options: MendOptions = MEND_DEFAULTS,
  patience: Patience = FOR_EVER,
): Generator<() => HeldMending, HeldMending, void> {
  const search = mend(doc, judge, options);
  let step = search.next();
  while (step.done !== true) {
    const now = step.value;
    yield () => ({ ...now(), held: [] });
    step = search.next();
  }
  const mending = step.value;
  const held: Held[] = [];
  const ways = mending.proposals.length;
  for (const [i, { design, changes }] of mending.proposals.entries()) {
    // to each its part of the time, half of it for the share
    const holding = heldOf(design, changes, {
      judge,
      isShareOver: () => patience() > (i + 0.5) / ways,
      isSlackOver: () => patience() > (i + 1) / ways,
    });
    let found = holding.next();
    while (found.done !== true) {
      yield () => ({ ...mending, held: [...held] });
      found = holding.next();
    }
    held.push(found.value);
  }
  return { ...mending, held };
}
