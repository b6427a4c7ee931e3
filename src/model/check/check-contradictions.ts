// What cannot both be so: two voltages for one pair, a part with approval and nothing inside, evidence that says nothing.

import type { BadInput } from '#model/faults/bad-input.ts';
import { badField } from '#model/faults/bad-field.ts';
import type { Design } from '#model/design.ts';
import type { Bridge } from '#model/design/outside.ts';
import type { GivenVoltage } from '#model/design/voltages.ts';

export const checkContradictions = (design: Design): readonly BadInput[] => [
  ...checkVoltages(design),
  ...design.outside.flatMap(({ working }, i) => checkWorking(['outside', i], working)),
  ...design.bridges.flatMap((bridge, i) => checkBridge(bridge, i)),
  ...checkEvidence(design),
];

/** Which of two holds is not said. */
function checkVoltages({ workingVoltages }: Design): readonly BadInput[] {
  const seen = new Map<string, number>();
  return workingVoltages.flatMap(({ between }, i) => {
    const pair = JSON.stringify([...between].sort());
    const first = seen.get(pair);
    seen.set(pair, first ?? i);
    if (first === undefined) return [];
    const expected = `one entry for each pair; workingVoltages[${first}] is of this one already`;
    return [badField(['workingVoltages', i, 'between'], between.join(' and '), expected)];
  });
}

const checkWorking = (keys: readonly PropertyKey[], working: GivenVoltage | null): readonly BadInput[] =>
  working !== null && working.rms === null && working.peak === null
    ? [badField([...keys, 'working', 'rms'], undefined, 'a voltage, rms or peak or both')]
    : [];

function checkBridge({ kind, throughInsulation, approval, working }: Bridge, i: number): readonly BadInput[] {
  const faults = [...checkWorking(['bridges', i], working)];
  const approved = approval === 'basic' || approval === 'reinforced';
  if (kind === 'optocoupler' && approved && throughInsulation?.value === 0) {
    const expected = `a distance above 0: a part approved as ${approval} insulation has some inside`;
    faults.push(badField(['bridges', i, 'throughInsulation'], '0 mm', expected));
  }
  return faults;
}

function checkEvidence({ evidence }: Design): readonly BadInput[] {
  const photos = evidence.filter(({ kind }) => kind === 'photo').map(({ id }) => id);
  return evidence.flatMap(({ says, measured }, i) => [
    ...(says.trim() === ''
      ? [badField(['evidence', i, 'says'], says === '' ? undefined : says, 'what it shows, in words')]
      : []),
    ...(measured !== null && measured.photo !== null && !photos.includes(measured.photo)
      ? [badField(['evidence', i, 'measured', 'photo'], measured.photo, 'the id of a photograph in evidence')]
      : []),
  ]);
}
