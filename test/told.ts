// What the faces of one build say of it, held against what the judge found: one sentence for everything that differs.

import { printed } from '#judge/grade/grade.ts';
import { remarkSays } from '#words/verdict/remark-words.ts';
import { spotSays } from '#words/spots/spot-says.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { svgOf } from '#drawing/svg/svg.ts';
import { flagsOf } from '#drawing/compose/scene-flags.ts';
import type { Study } from '#judge/study.ts';
import type { Limiting, PairVerdict } from '#judge/verdict/pair.ts';
import type { Design } from '#model/design.ts';
import { reportHtml } from '#papers/html/report/report.ts';
import { heightOf } from '#standards/ladder.ts';
import type { Grade } from '#units/terms.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { stressText } from '#words/stress/stress-words.ts';
import { escapeText } from '#words/text/escape-text.ts';
import { printable } from '#words/text/printable.ts';
import { pairLine } from '#words/verdict/pair-words.ts';
import { verdictText } from '#words/verdict/verdict-text.ts';

export function disagreements(design: Design, study: Study): readonly string[] {
  return [
    ...ofStress(study),
    ...ofParts(study),
    ...ofTests(study),
    ...ofWords(design, study),
    ...ofDrawings(design, study),
  ];
}

const differs = (agree: boolean, says: () => string): readonly string[] => (agree ? [] : [says()]);

/** Every pair is asked the same, at the same voltage and transient. */
const ofStress = ({ verdict, stress }: Study): readonly string[] =>
  verdict.pairs.flatMap((pair, i) => {
    const told = stress.pairs[i];
    if (told?.between.join() !== pair.between.join()) return [`pair ${i} is ${pair.between.join()}`];
    const name = pair.between.join('-');
    const withstand = 'value' in told.transients.withstand ? told.transients.withstand.value : 0;
    return [
      ...differs(told.needed === pair.needed, () => `${name} needs ${pair.needed}, stress ${told.needed}`),
      ...differs(
        withstand === pair.stress.withstand,
        () => `${name} withstand ${pair.stress.withstand}, stress ${withstand}`,
      ),
      ...differs(told.basis === pair.stress.basis, () => `${name} basis ${pair.stress.basis}, ${told.basis}`),
    ];
  });

/** No pair reaches more than a part that bridges it, or a distance beside it, is said to reach. */
const ofParts = ({ verdict, stress }: Study): readonly string[] =>
  verdict.pairs.flatMap((pair) => {
    if (pair.required === null || pair.undrawn.length > 0) return [];
    const joins = (between: readonly string[]): boolean => pair.between.every((id) => between.includes(id));
    const bridges = stress.bridges.filter(({ worst }) => joins(worst.between));
    const outside = stress.outside.filter(({ between }) => joins(between));
    const above = (grade: Grade): boolean => heightOf(pair.achieved) > heightOf(grade);
    const holding = bridges.find(({ worst }) => worst.id === pair.limiting?.bridge);
    return [
      ...bridges.flatMap(({ worst }) =>
        differs(
          !above(worst.grade),
          () => `${pair.between.join('-')} reaches ${pair.achieved}, ${worst.id} ${worst.grade}`,
        ),
      ),
      ...outside.flatMap(({ what, grade }) =>
        differs(
          grade === null || !above(grade),
          () => `${pair.between.join('-')} reaches ${pair.achieved}, ${what} ${grade}`,
        ),
      ),
      ...differs(
        holding === undefined ||
          heightOf(printed(holding.worst.grade, pair.needed)) === heightOf(pair.achieved),
        () =>
          `${pair.between.join('-')} is held at ${pair.achieved} by ${holding?.worst.id}, ${holding?.worst.grade}`,
      ),
    ];
  });

/** Every pair with a test level is in the plan, tested at no less. */
const ofTests = ({ verdict, stress }: Study): readonly string[] =>
  verdict.pairs.flatMap((pair) => {
    const level = pair.required?.test.peak ?? null;
    if (level === null) return [];
    const test = stress.tests.find(({ proves }) => proves.some((one) => one.join() === pair.between.join()));
    return differs(
      test !== undefined && test.type.peak >= level,
      () => `${pair.between.join('-')} is tested at ${test?.type.peak}, asked ${level}`,
    );
  });

/** The text, the report and the stress report name every pair with the same verdict, and every spot. */
function ofWords(design: Design, study: Study): readonly string[] {
  const { verdict, stress } = study;
  const looks = circuitLooks(design.circuits);
  const text = verdictText(design, verdict);
  const told = stressText(design, stress);
  const html = reportHtml({ design, judgement: study, designText: '{}' });
  return [
    ...verdict.pairs.flatMap((pair) =>
      differs(text.includes(printable(pairLine(pair, looks))), () => `no line of ${pair.between.join()}`),
    ),
    ...verdict.weakSpots
      .map(spotSays)
      .flatMap((says, i) => [
        ...differs(text.includes(printable(says)), () => `the text leaves out spot ${i + 1}`),
        ...differs(html.includes(escapeText(says)), () => `the report leaves out spot ${i + 1}`),
      ]),
    ...verdict.remarks
      .map(remarkSays)
      .flatMap((says) => differs(html.includes(escapeText(says)), () => `the report leaves out ${says}`)),
    ...stress.bridges.flatMap(({ worst }) =>
      differs(told.includes(printable(`${worst.id}, `)), () => `stress leaves out ${worst.id}`),
    ),
  ];
}

/** Canvas scene and SVG draw the path that a pair is told by with its length, and flag every spot of the section. */
const ofDrawings = (design: Design, study: Study): readonly string[] =>
  study.verdict.pairs.flatMap((pair) => {
    const path = drawnPath(pair);
    const length = path?.length ?? null;
    const section = path?.section ?? null;
    if (path === null || length === null || section === null) return [];
    const scene = sceneOf(design, study, section, { pair: pair.between });
    if (scene === null) return section === 'outside' ? [] : [`there is no section ${section}`];
    const flags = flagsOf(study.verdict.weakSpots, section, scene.frame, 3);
    const svg = svgOf(scene);
    const name = pair.between.join('-');
    return [
      ...differs(
        scene.path === null ? path.legs.length === 0 : scene.path.length === length,
        () => `${name} is ${length}, drawn ${scene.path?.length}`,
      ),
      ...differs(
        JSON.stringify(scene.flags) === JSON.stringify(flags),
        () => `flags of ${section} on the canvas differ`,
      ),
      ...flags.flatMap(({ number }) =>
        differs(svg.includes(`>${number}<`), () => `the drawing of ${section} leaves out flag ${number}`),
      ),
    ];
  });

/** What is proven comes before what limits at worst; a part or a distance outside is drawn on no section. */
function drawnPath({ required, limiting, proven }: PairVerdict): Limiting | null {
  if (required === null) return null;
  if (proven !== null) return 'points' in proven ? proven : null;
  return limiting?.metric === 'bridge' ? null : limiting;
}
