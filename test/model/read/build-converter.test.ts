import { describe, expect, it } from 'vitest';
import { addedThings } from '#model/edit/added-things.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { Design } from '#model/design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { judge } from '#judge/judging/judge.ts';
import { firstBuild } from '#state/begin/demos.ts';

const { converter: itsOwn, ...withoutOne } = firstBuild;
void itsOwn;
const bare: DesignFile = withoutOne;

const designOf = (doc: DesignFile): Design => {
  const read = readDesign(doc, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults.map(({ says }) => says).join('\n'));
  return read.design;
};

const listed = (doc: DesignFile): readonly string[] =>
  judge(designOf(doc))
    .verdict.assumptions.filter(({ counted }) => counted.as === 'in-part')
    .map(({ field }) => field);

describe('a converter that is given in part', () => {
  const begun = addedThings.bulk(addedThings.converter(bare));

  it('should be judged as none, and be named once, not figure by figure', () => {
    expect(designOf(begun).converter).toBeNull();
    expect(listed(begun)).toEqual(['converter']);
    const { verdict } = judge(designOf(begun));
    const without = judge(designOf(bare)).verdict;
    expect(verdict.pairs.map(({ stress }) => stress.rms)).toEqual(
      without.pairs.map(({ stress }) => stress.rms),
    );
  });

  it('should count once its own figures stand, then name the capacitor alone', () => {
    const given = Object.entries({
      switchingFrequency: '65 kHz',
      reflectedVoltage: '90 V',
      clampOvershoot: '60 V',
    }).reduce((doc, [name, value]) => editDesign(doc, `converter.${name}`, value), begun);
    expect(designOf(given).converter).toMatchObject({ outputs: [], bulk: null });
    expect(listed(given)).toEqual(['converter.bulk']);
    const fed = editDesign(given, 'converter.outputs[0].voltage', '12 V');
    expect(designOf(fed).converter?.outputs).toHaveLength(1);
  });

  it('should take a boosted rail without its voltage for one that nobody knows', () => {
    const boosted = editDesign(
      editDesign(
        editDesign(
          editDesign(begun, 'converter.switchingFrequency', '65 kHz'),
          'converter.reflectedVoltage',
          '90 V',
        ),
        'converter.clampOvershoot',
        '60 V',
      ),
      'converter.rail',
      { kind: 'boosted' },
    );
    expect(designOf(boosted).converter?.rail).toMatchObject({ kind: 'unknown' });
  });

  it('should leave a tube out of which one side is not measured', () => {
    const half = editDesign(bare, 'former.tube', { shape: 'round', width: '8 mm' });
    expect(designOf(half).former.tube).toBeNull();
    expect(listed(half)).toEqual(['former.tube']);
  });
});
