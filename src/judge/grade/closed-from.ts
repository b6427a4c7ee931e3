// From which length on a closed joint, or compound, with proof is strong: it is shown up to so many times the ordinary test
// and no more. Without end where some pair asks for more.

import type { PairQuestion } from './path-requirement.ts';
import type { SolidRules } from './solid-rules.ts';

export function closedFrom(
  questions: readonly PairQuestion[],
  { leastThickness, proofFactor }: Pick<SolidRules, 'leastThickness' | 'proofFactor'>,
): number {
  const isShown = questions.every(({ needed, asked }) => {
    const { basic, reinforced, ordinary } = asked.creepage.levels(null);
    const within = (level: number | null, plain: number | null) =>
      level !== null && plain !== null && level <= proofFactor * plain;
    return needed === null || (within(basic, ordinary.basic) && within(reinforced, ordinary.reinforced));
  });
  return isShown ? leastThickness : Infinity;
}
