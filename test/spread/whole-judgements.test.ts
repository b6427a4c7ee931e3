// The spread beside plain drawing: pieces drawn by this test's own lot from the placement model as it is told, each judged whole.
// And piece for piece: none is taken to meet, or to fail, that a judgement of its own says otherwise of.
// MC_DRAWS=1000 draws more.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { fileJudge } from '#judge/judging/judge-files.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { coordinatesOf, pieceOf } from '#spread/coordinates.ts';
import { PLACEMENT } from '#spread/placement.ts';
import { spread, type Spread } from '#spread/spread.ts';
import { worstPiece } from '#spread/worst-piece.ts';
import { finished } from '#field/solve/finished.ts';
import { randomOfDraw, type Random } from '#units/random.ts';

const DRAWS = Number(process.env['MC_DRAWS'] ?? 24);
/** Of the spread itself, whose draws cost less. */
const SPREAD_DRAWS = 4 * DRAWS;
const PIECES = 10;
const lesson = JSON.parse(
  readFileSync(new URL('../lesson-margin.json', import.meta.url), 'utf8'),
) as DesignFile;
const judge = fileJudge();

const edited = (edits: readonly (readonly [string, unknown])[]): DesignFile =>
  edits.reduce((doc, [field, value]) => editDesign(doc, field, value), lesson);
const margins = (inner: number, outer: number): readonly (readonly [string, unknown])[] =>
  [0, 2].flatMap((layer) =>
    ['left', 'right'].map(
      (side) => [`layers[${layer}].margins.${side}.width`, `${layer === 0 ? inner : outer} mm`] as const,
    ),
  );
const lead = (into: string, way: string) => ({
  at: 'left',
  exit: 'left',
  way,
  sleeve: { material: 'ptfe', wall: '0.5 mm', into, withstand: '5 kV' },
});
const leads = (into: string, way: string) => ({ start: lead(into, way), finish: lead(into, way) });

const BUILDS: readonly (readonly [string, DesignFile])[] = [
  ['margins that just do', edited(margins(2.6, 2.6))],
  ['margins of which one is roomy', edited(margins(3, 2.15))],
  ['plies to spare, a margin at the edge', edited([...margins(2.5, 2.5), ['layers[1].plies', 4]])],
  ['a sleeve in a slot', edited([...margins(3, 3), ['windings[0].leads', leads('2.5 mm', 'slot')]])],
  ['a sleeve up the flange', edited([...margins(3, 3), ['windings[1].leads', leads('2.4 mm', 'riser')]])],
];

const meetsWhole = (doc: DesignFile): boolean => judge.whole(doc)?.verdict === 'meets';
const spreadOfBuild = (doc: DesignFile, seed: number, draws: number): Spread =>
  finished(spread(doc, judge, { seed, draws, measured: 0, placement: PLACEMENT }));
const mm = (text: unknown): number => parseFloat(String(text));

/** As `placement.ts` tells it: margins 0.2 either way, tape up to 0.2 narrow, sleeves up to 0.5 short, a ply forgotten once in 1000. */
function wound(doc: DesignFile, random: Random): DesignFile {
  const edits = doc.layers.flatMap((layer, i): readonly (readonly [string, unknown])[] => {
    if (layer.kind === 'winding')
      return (['left', 'right'] as const).map((side) => [
        `layers[${i}].margins.${side}.width`,
        `${(mm(layer.margins?.[side]?.width) + 0.4 * random.part() - 0.2).toFixed(6)} mm`,
      ]);
    const insets = (['left', 'right'] as const).map(
      (side) => [`layers[${i}].inset.${side}`, `${(0.1 * random.part()).toFixed(6)} mm`] as const,
    );
    const plies = layer.kind === 'tape' ? Number(layer.plies) : 0;
    return [...insets, [`layers[${i}].plies`, random.part() < 1 / 1000 ? plies - 1 : plies]];
  });
  const sleeves = doc.windings.flatMap(({ leads: of }, w) =>
    typeof of === 'object'
      ? (['start', 'finish'] as const).map(
          (end) =>
            [
              `windings[${w}].leads.${end}.sleeve.into`,
              `${(mm((of as ReturnType<typeof leads>)[end].sleeve.into) - 0.5 * random.part()).toFixed(6)} mm`,
            ] as const,
        )
      : [],
  );
  return [...edits, ...sleeves].reduce((file, [field, value]) => editDesign(file, field, value), doc);
}

describe('the spread beside plain drawing', () => {
  it.each(BUILDS)('should agree within what chance allows: %s', (_, doc) => {
    const plain = Array.from({ length: DRAWS }, (__, i) => meetsWhole(wound(doc, randomOfDraw(99, i))));
    const share = plain.filter(Boolean).length / DRAWS;
    const found = spreadOfBuild(doc, 1, SPREAD_DRAWS).share;
    // neither none nor all, so that there is something to agree about
    expect(found).toBeGreaterThan(0.02);
    expect(found).toBeLessThan(0.98);
    const chance = Math.sqrt(found * (1 - found) * (1 / DRAWS + 1 / SPREAD_DRAWS));
    expect(Math.abs(share - found)).toBeLessThan(2.6 * chance);
  });

  it.each(BUILDS)('should tell no more pieces to meet than do: %s', (_, doc) => {
    const coordinates = coordinatesOf(doc, PLACEMENT);
    const pieces = Array.from({ length: PIECES }, (__, i) => {
      const random = randomOfDraw(3, i);
      return pieceOf(
        doc,
        coordinates,
        coordinates.map(({ draw }) => draw(random)),
      );
    });
    const meeting = pieces.filter(meetsWhole).length;
    expect(spreadOfBuild(doc, 3, PIECES).share).toBe(meeting / PIECES);
    // no drawn piece is worse than the worst of all
    const worst = worstPiece(doc, coordinatesOf(doc, { ...PLACEMENT, forgottenPly: 0 }));
    if (meetsWhole(worst)) expect(meeting).toBe(PIECES);
  });
});
