// The right answer of each kind of question, as the judge gives it, and the wrong ones that common slips lead to.
// Null where the question has no answer, or more than one, on this build.

import { editDesign, fieldAt } from '#model/edit/edit-design.ts';
import { quantityField } from '#model/quantity/quantity-field.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { unreachable } from '#units/unreachable.ts';
import type { Question, QuestionKind, RightAnswer, Slip } from './exercise.ts';
import type { Asked } from './asked.ts';

/** Lengths are answered to a hundredth; half a step more is still right. */
const WITHIN = 0.02;
/** Margins are asked in such steps, mm. */
const STEP = 0.05;
const WIDEST = 8;

export function questionOf(kind: QuestionKind, place: number, asked: Asked): Question | null {
  const answer = answerOf(kind, asked);
  if (answer === null) return null;
  const points = kind === 'least-margin' ? 3 : kind === 'length' || kind === 'missing' ? 2 : 1;
  return { id: `q${place + 1}`, kind, points, answer, slips: slipsOf(kind, asked, answer) };
}

function answerOf(kind: QuestionKind, { doc, pair, judgeOf }: Asked): RightAnswer | null {
  switch (kind) {
    case 'asked':
      return length(pair.required?.creepage.reinforced ?? null);
    case 'length':
      return length(surfaceWay(pair));
    case 'grade':
      return { kind: 'grade', value: pair.achieved };
    case 'verdict':
      return { kind: 'verdict', value: pair.verdict };
    case 'missing': {
      const [way, asked] = [surfaceWay(pair), pair.required?.creepage.reinforced ?? null];
      return way === null || asked === null || way >= asked ? null : length(asked - way);
    }
    case 'least-margin':
      return length(leastMargin(doc, judgeOf), STEP / 2);
    case 'one-ply-less':
      return gradeAfter(doc, 'layers[1].plies', (plies) => Number(plies) - 1, judgeOf);
    case 'more-enamel':
      return gradeAfter(doc, 'windings[0].wire.grade', () => 2, judgeOf);
    default:
      return unreachable(kind);
  }
}

const length = (value: number | null, within = WITHIN): RightAnswer | null =>
  value === null ? null : { kind: 'length', value: Math.round(value * 100) / 100, within };

/** The shortest way along surfaces through no ply, mm. */
const surfaceWay = ({ paths }: Asked['pair']): number | null =>
  paths.find(({ metric, plies }) => metric === 'creepage' && plies === 0)?.length ?? null;

function gradeAfter(
  doc: DesignFile,
  path: string,
  change: (before: unknown) => unknown,
  judgeOf: Asked['judgeOf'],
): RightAnswer | null {
  const after = judgeOf(editDesign(doc, path, change(fieldAt(doc, path))));
  const pair = after.pairs.find(({ needed }) => needed !== null);
  return pair === undefined ? null : { kind: 'grade', value: pair.achieved };
}

/** The least margin of the output, both sides alike and in steps, with which the pair meets; null where none is missing. */
function leastMargin(doc: DesignFile, judgeOf: Asked['judgeOf']): number | null {
  const meets = (steps: number): boolean => {
    const width = `${(steps * STEP).toFixed(2)} mm`;
    const wider = (['left', 'right'] as const).reduce(
      (edited, side) => editDesign(edited, `layers[2].margins.${side}.width`, width),
      doc,
    );
    return judgeOf(wider).pairs.every(({ verdict }) => verdict === 'meets');
  };
  let [low, high] = [0, Math.round(WIDEST / STEP)];
  if (meets(low) || !meets(high)) return null;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (meets(middle)) high = middle;
    else low = middle;
  }
  const now = marginOf(doc, 2);
  return now !== null && high * STEP <= now ? null : high * STEP;
}

/** Width of a layer's left margin, mm. */
function marginOf(doc: DesignFile, layer: number): number | null {
  const read = quantityField(fieldAt(doc, `layers[${layer}].margins.left.width`), {
    dimension: 'length',
    aboveZero: false,
    mayBeUnknown: false,
  });
  return read.kind === 'known' ? read.value / 1e6 : null;
}

function slipsOf(
  kind: QuestionKind,
  { doc, pair }: Asked,
  { kind: of, ...right }: RightAnswer,
): readonly Slip[] {
  const basic = pair.required?.creepage.basic ?? null;
  const [primary, output] = [marginOf(doc, 0), marginOf(doc, 2)];
  const plies = Number(fieldAt(doc, 'layers[1].plies'));
  const tape = Math.round(plies * 6) / 100;
  const slips: readonly Slip[] =
    kind === 'asked' && basic !== null
      ? [{ value: basic, slip: 'basic-for-reinforced' }]
      : kind === 'length' && primary !== null && output !== null
        ? [
            { value: tape, slip: 'tape-only' },
            { value: Math.round((Math.max(primary, output) + tape) * 100) / 100, slip: 'one-margin-only' },
            { value: Math.round((primary + output + tape) * 100) / 100, slip: 'both-margins-for-one' },
          ]
        : [];
  return slips.filter(({ value }) => of !== 'length' || Math.abs(value - Number(right.value)) > WITHIN);
}
