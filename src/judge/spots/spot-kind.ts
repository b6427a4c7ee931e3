// What kind of weak spot a path is: the first kind that fits.

import type { SheetRule } from '#books/questions/book.ts';
import type { Design } from '#model/design.ts';
import type { Leg } from '#solver/network/pieces.ts';
import type { Band, ConductorRegion, Section, SolidRegion } from '#solver/section/section.ts';
import { type OrientedLeg, regionsAt } from '#judge/paths/path-legs.ts';
import type { FoundPath } from '#judge/paths/case-result.ts';
import type { SpotKind } from '#judge/verdict/spot.ts';
import { endsOnLead, leadEnd, type LeadEnd, NO_LEAD } from './lead-end.ts';

/** Those whose sentence is about a lead. */
export const LEAD_KINDS: ReadonlySet<SpotKind> = new Set(['lead-crossing', 'bare-lead', 'lead-in-margin']);

export interface PathPlace extends LeadEnd {
  readonly kind: SpotKind;
  /** Indices in the file's layers. */
  readonly layers: readonly number[];
  /** A screen that handling has pushed makes it. */
  readonly screen: boolean;
}

export function placeOf(design: Design, path: FoundPath, legs: readonly OrientedLeg[]): PathPlace {
  const { section } = path;
  const short = path.metric === 'creepage' ? 'short-creepage' : 'short-clearance';
  if (!section || legs.length === 0) {
    const kind = path.grade === 'none' ? 'touching' : overCore(design, path) ? 'core-bridge' : short;
    return { kind, layers: [], screen: false, ...NO_LEAD };
  }
  const ends = endRegions(section, legs);
  const kind = kindOf(design, path, section, legs, ends) ?? short;
  return {
    kind,
    ...(LEAD_KINDS.has(kind) ? leadEnd(design, section, legs, ends) : NO_LEAD),
    layers: layersAlong(section, legs, ends),
    screen: onPushedScreen(path, section, ends),
  };
}

/** Conductors at both ends of the path; where several meet, a lead before a winding. */
function endRegions(section: Section, legs: readonly OrientedLeg[]): readonly ConductorRegion[] {
  const at = (conductor: string, point: Leg['from']) =>
    regionsAt(section, point).filter(
      (r): r is ConductorRegion => r.kind === 'conductor' && r.conductor === conductor,
    );
  const first = legs[0]!;
  const last = legs.at(-1)!;
  return [...at(first.conductors[0], first.from), ...at(last.conductors[1], last.to)];
}

function kindOf(
  design: Design,
  path: FoundPath,
  section: Section,
  legs: readonly OrientedLeg[],
  ends: readonly ConductorRegion[],
): SpotKind | null {
  const { length, plies, grade } = path;
  if (grade === 'none') return 'touching';
  if (length === 0 && plies === 0 && path.chain.over.length === 0) return 'enamel-only';
  if (overCore(design, path) || ends.some((r) => r.of === 'core')) return 'core-bridge';
  if (ends.some((r) => r.crossing)) return 'lead-crossing';
  if (ends.some((r) => r.strippedLead)) return 'bare-lead';
  if (endsOnLead(section, legs, ends).length > 0) return 'lead-in-margin';
  const passed = tapesPassed(section, legs);
  if (section.slumped === null && passed.some((tape) => tape.open)) return 'uncovered-tape-edge';
  const isPushed = passed.some((tape) => tape.drifted) || onPushedScreen(path, section, ends);
  if (section.slumped !== null && isPushed) return 'drifting-tape';
  if (ends.some((r) => r.stretched)) return 'loose-end';
  if (section.slumped !== null && passed.some((tape) => tape.open)) return 'uncovered-tape-edge';
  if (passed.some((tape) => tape.atFlange)) return 'narrow-margin';
  return plies > 0 ? solidKind(path) : null;
}

/** Runs over the core or a part, or reaches one of them outside the window. */
function overCore(design: Design, { chain }: FoundPath): boolean {
  const parts = new Set(design.parts.map((part) => part.id));
  const outside = chain.pieces.flatMap((piece) => (piece.kind === 'outside' ? piece.between : []));
  return [...chain.over, ...outside].some((id) => id === 'core' || parts.has(id));
}

/** The path ends on a screen that handling has pushed, or runs over one. */
function onPushedScreen({ chain }: FoundPath, section: Section, ends: readonly ConductorRegion[]): boolean {
  const metal = section.regions.filter((r): r is ConductorRegion => r.kind === 'conductor');
  const passed = metal.filter((r) => chain.over.includes(r.conductor));
  return [...ends, ...passed].some((r) => r.of === 'screen' && r.stretched);
}

interface Passed {
  readonly layer: number;
  /** Past an edge that stands free in air. */
  readonly open: boolean;
  readonly drifted: boolean;
  readonly atFlange: boolean;
}

/** Tape layers that the path climbs past at their edge. */
function tapesPassed(section: Section, legs: readonly OrientedLeg[]): readonly Passed[] {
  const climbs = legs.filter((leg) => leg.kind !== 'through' && leg.from[1] !== leg.to[1]);
  return section.bands
    .filter((band) => band.kind === 'tape')
    .flatMap((band) => {
      const face = section.chambers[band.chamber]!;
      const past = climbs.filter((leg) => {
        const [low, high] = [Math.min(leg.from[1], leg.to[1]), Math.max(leg.from[1], leg.to[1])];
        const x = (leg.from[0] + leg.to[0]) / 2;
        const beside = x <= band.x0 || x >= band.x1;
        return low < band.y1 && high > band.y0 && beside && x >= face.x0 && x <= face.x1;
      });
      if (past.length === 0) return [];
      const drifted = section.regions.some(
        (r): r is SolidRegion => r.kind === 'ply' && r.layer === band.layer && r.drifted,
      );
      const left = past.some((leg) => (leg.from[0] + leg.to[0]) / 2 <= band.x0);
      const short = left ? band.x0 > face.x0 : band.x1 < face.x1;
      const open = short && past.some((leg) => !isBesideBlock(section, band, leg));
      return [{ layer: band.layer, open, drifted, atFlange: !open }];
    });
}

/** The way past a tape's edge runs along a block of its own layer, not through air. */
function isBesideBlock(section: Section, band: Band, leg: Leg): boolean {
  const x = (leg.from[0] + leg.to[0]) / 2;
  const bottom = Math.max(band.y0, Math.min(leg.from[1], leg.to[1]));
  const top = Math.min(band.y1, Math.max(leg.from[1], leg.to[1]));
  return regionsAt(section, [x, (bottom + top) / 2]).some(
    (r) => r.kind === 'block' && r.layer === band.layer,
  );
}

function solidKind(path: FoundPath): SpotKind {
  const punctured = path.chain.pieces.flatMap((piece) =>
    piece.kind === 'inside' ? piece.piece.punctured : [],
  );
  const counted = punctured.map(({ stuff, count }) => ({ stuff: path.tools.stuffs.get(stuff), count }));
  const isSheet = (kind: string | undefined) => kind === 'sheet' || kind === 'cover' || kind === 'full-cover';
  if (counted.some(({ stuff }) => !isSheet(stuff?.kind))) return 'thin-wall';
  const sheets = counted.filter(({ stuff }) => stuff?.kind === 'sheet');
  const covers = counted.filter(({ stuff }) => stuff?.kind !== 'sheet');
  const plies = sheets.reduce((sum, { count }) => sum + count, 0);
  // of a cover that is certified as reinforced no rule asks more
  const isWhole = sheets.length === 0 && covers.every(({ stuff }) => stuff?.layers === 3);
  const enough = isWhole || (plies >= fewest(path.tools.rules.sheets) && covers.length === 0);
  return enough ? 'weak-ply' : 'few-plies';
}

/** As many sheets as any rule of the book needs at the least. */
const fewest = ({ alone, anyTwo, film }: SheetRule): number =>
  Math.min(...[alone, anyTwo, film?.plies ?? null].filter((count) => count !== null));

function layersAlong(
  section: Section,
  legs: readonly OrientedLeg[],
  ends: readonly ConductorRegion[],
): readonly number[] {
  const through = legs.flatMap((leg) => {
    const at: readonly [number, number] = [(leg.from[0] + leg.to[0]) / 2, (leg.from[1] + leg.to[1]) / 2];
    return leg.kind === 'through' ? regionsAt(section, at) : [];
  });
  const layers = [...ends, ...through].flatMap((r) => (r.layer === null ? [] : [r.layer]));
  return [...new Set([...layers, ...tapesPassed(section, legs).map((tape) => tape.layer)])].sort(
    (a, b) => a - b,
  );
}
