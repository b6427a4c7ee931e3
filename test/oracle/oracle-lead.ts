// The oracle's leads: the shapes of conductor, cover and sleeve of one lead, and how far a riser pushes others away.
// Drawn in u = distance from the inner face that the lead leaves through, so that left and right are one case.

import type { Build, Lay } from '#solver/section/build.ts';
import type { Side } from '#units/terms.ts';
import { type Box, box, boxes, clip, erode, subtract } from './box.ts';
import { type OracleBand, type OracleChamber, boxHeight, chambersOf, stackTop } from './oracle-stack.ts';
import { type OracleHandling, drift } from './oracle-slump.ts';

export interface OracleRiser {
  readonly chamber: number;
  readonly side: Side;
  /** Distance of its near and far side from the face that it climbs. */
  readonly u0: number;
  readonly u1: number;
  readonly y0: number;
  readonly y1: number;
  /** The band that the lead lies in, which is not pushed away. */
  readonly home: OracleBand | null;
}

export interface OracleLead {
  readonly lay: Lay;
  readonly crossing: boolean;
  readonly conductors: readonly Box[];
  readonly covers: readonly Box[];
  readonly sleeves: readonly Box[];
}

const FAR = 1e12;

/** Limits of a band between faces and the risers that it has to end at. */
export function limits(
  band: OracleBand,
  chamber: OracleChamber,
  risers: readonly OracleRiser[],
): { left: number; right: number } {
  const reach = (side: Side): number =>
    Math.max(0, ...risers.filter((r) => pushes(r, band, side)).map((r) => r.u1));
  return { left: chamber.x0 + reach('left'), right: chamber.x1 - reach('right') };
}

const pushes = (r: OracleRiser, band: OracleBand, side: Side): boolean =>
  r.chamber === band.chamber &&
  r.side === side &&
  (r.home === null || band.y0 >= r.home.y1) &&
  r.y0 < band.y1 &&
  band.y0 < r.y1;

/** A lead wholly behind strong insulation: its riser leaves the other layers as they are. */
function isStrong(lay: Lay, from: number, leastThickness: number): boolean {
  if (lay.wire.cover !== null && lay.wire.cover.plies === null) return true;
  const sleeve = lay.sleeve;
  return sleeve !== null && sleeve.wall >= leastThickness && sleeve.into >= from + boxHeight(lay);
}

/** Leads and the risers that displace, of the lays of one section, the innermost first. */
export function leadsOf(
  build: Build,
  bands: readonly OracleBand[],
  lays: readonly Lay[],
  leastThickness: number,
  handling: OracleHandling,
): { readonly leads: readonly OracleLead[]; readonly risers: readonly OracleRiser[] } {
  const leads: OracleLead[] = [];
  const risers: OracleRiser[] = [];
  const homeOf = (lay: Lay): OracleBand => {
    const home = bands.find((b) => b.lay === lay);
    if (home === undefined) throw new Error(`no band holds ${lay.name}`);
    return home;
  };
  const inOrder = [...lays].sort((a, b) => a.layer - b.layer);
  for (const lay of inOrder) {
    const home = homeOf(lay);
    if (lay.way !== 'slot') laidIn(build, bands, lay, home, leastThickness, handling, leads, risers);
    throughDivider(build, bands, lay, home, leastThickness, leads, risers);
  }
  // one that climbs nothing ends at every column in its way, of layers further out too
  for (const lay of inOrder.filter(({ way }) => way === 'slot'))
    laidIn(build, bands, lay, homeOf(lay), leastThickness, handling, leads, risers);
  return { leads, risers };
}

function laidIn(
  build: Build,
  bands: readonly OracleBand[],
  lay: Lay,
  home: OracleBand,
  leastThickness: number,
  handling: OracleHandling,
  leads: OracleLead[],
  risers: OracleRiser[],
): void {
  const chamber = chambersOf(build)[home.chamber]!;
  const free = limits(home, chamber, risers);
  const u0 = lay.exit === 'left' ? free.left - chamber.x0 : chamber.x1 - free.right;
  const own = movedScreen(
    bands.find((b) => b.position === lay.layer)!,
    chamber,
    handling,
  );
  const ownFree = limits(own, chamber, risers);
  const end = lay.at === 'left' ? Math.max(own.x0, ownFree.left) : Math.min(own.x1, ownFree.right);
  const uEnd = lay.exit === 'left' ? end - chamber.x0 : chamber.x1 - end;
  const y0 = home.leadAt!;
  const climbs = lay.way === 'riser' && !isStrong(lay, u0, leastThickness);
  const top =
    lay.upTo === null ? Math.max(build.height, stackTop(bands, home.chamber)) : topOf(bands, lay.upTo);
  const [near, far] = lay.exit === 'left' ? [own.x0, own.x1] : [own.x1, own.x0];
  const u = (x: number): number => (lay.exit === 'left' ? x - chamber.x0 : chamber.x1 - x);
  const hull = { x0: u(near), y0: own.y0, x1: u(far), y1: own.y0 + own.own };
  const shape = shapeOf(lay, { u0, uEnd, y0, hull }, climbs ? top : null);
  leads.push({ lay, crossing: home.kind === 'crossing-lead', ...placed(shape, chamber, lay.exit) });
  if (!climbs) return;
  const u1 = u0 + boxHeight(lay);
  risers.push({ chamber: home.chamber, side: lay.exit, u0, u1, y0, y1: top, home });
}

/** A screen takes its lead along. */
function movedScreen(band: OracleBand, chamber: OracleChamber, { slump, moves }: OracleHandling): OracleBand {
  const side = slump === 'left' || slump === 'right' ? slump : null;
  if (band.kind !== 'screen' || side === null || !moves(band.layer)) return band;
  const by = drift(band, { left: chamber.x0, right: chamber.x1 }, side) * (side === 'left' ? -1 : 1);
  return { ...band, x0: band.x0 + by, x1: band.x1 + by };
}

const topOf = (bands: readonly OracleBand[], position: number): number =>
  bands.find((b) => b.position === position)?.y1 ?? 0;

/** A lead that leaves at a divider climbs the divider's far face in the neighbour chamber. */
function throughDivider(
  build: Build,
  bands: readonly OracleBand[],
  lay: Lay,
  home: OracleBand,
  leastThickness: number,
  leads: OracleLead[],
  risers: OracleRiser[],
): void {
  const chambers = chambersOf(build);
  const next = home.chamber + (lay.exit === 'left' ? -1 : 1);
  const neighbour = chambers[next];
  if (neighbour === undefined || lay.kind === 'link' || isStrong(lay, 0, leastThickness)) return;
  const side: Side = lay.exit === 'left' ? 'right' : 'left';
  const height = boxHeight(lay);
  const y0 = home.leadAt!;
  const y1 = Math.max(build.height, stackTop(bands, next));
  if (y0 >= y1) return;
  const before = risers.filter((r) => r.chamber === next && r.side === side).map((r) => r.u1);
  const u0 = Math.max(0, ...before);
  const column = boxes(box(u0, y0, u0 + height, y1));
  const sleeved = lay.sleeve !== null && lay.sleeve.into >= u0 + height;
  const wire = sleeved ? erode(column, lay.sleeve.wall) : column;
  const shape = { sleeves: subtract(column, wire), ...inCover(lay, wire) };
  leads.push({ lay, crossing: false, ...placed(shape, neighbour, side) });
  risers.push({ chamber: next, side, u0, u1: u0 + height, y0, y1, home: null });
}

interface Shape {
  readonly conductors: readonly Box[];
  readonly covers: readonly Box[];
  readonly sleeves: readonly Box[];
}

/** Where a lead runs: from the winding's end at `uEnd` to `u0`, on the floor `y0`; the winding's own rectangle. */
interface Course {
  readonly u0: number;
  readonly uEnd: number;
  readonly y0: number;
  readonly hull: Box;
}

/** Lead from the winding's end to the face, and up from there where `top` is given. */
function shapeOf(lay: Lay, { u0, uEnd, y0, hull }: Course, top: number | null): Shape {
  const width = boxHeight(lay);
  const y1 = y0 + width;
  const column = top === null ? null : box(u0, y0, u0 + width, top);
  const outline = subtract(union(box(u0, y0, uEnd, y1), column), [hull]);
  const reach = sleeveReach(lay, u0, uEnd);
  if (lay.sleeve === null || reach <= u0) return { sleeves: [], ...inCover(lay, outline) };

  const inside = { x0: -FAR, y0: -FAR, x1: reach, y1: Math.max(y1, top ?? y1) };
  const sleeved = outline.flatMap((b) => boxes(clip(b, inside)));
  // Open towards the winding only; where the column stands on the winding, at that face of it.
  const stands = column !== null && uEnd < u0 + width;
  const row = box(u0, y0, stands ? uEnd : FAR, y1);
  const longer = union(row, column).concat(stands ? subtract([hull], union(row, column)) : []);
  const bore = erode(longer, lay.sleeve.wall).flatMap((b) => sleeved.flatMap((part) => boxes(clip(b, part))));
  const wire = subtract([...bore, ...boxes(box(Math.max(reach, u0), y0, uEnd, y1))], [hull]);
  return { sleeves: subtract(sleeved, bore), ...inCover(lay, wire) };
}

const union = (a: Box | null, b: Box | null): Box[] => [...boxes(a), ...subtract(boxes(b), boxes(a))];

/** How far in the sleeve reaches; a riser is covered wholly or, with all of its lead, not at all. */
function sleeveReach(lay: Lay, u0: number, uEnd: number): number {
  if (lay.sleeve === null || lay.sleeve.wall === 0) return 0;
  const { into } = lay.sleeve;
  if (lay.way === 'slot') return Math.min(into, uEnd);
  const far = u0 + boxHeight(lay);
  return into >= far ? Math.min(into, Math.max(uEnd, far)) : 0;
}

/** A covered wire keeps its cover on every side, at both ends too. */
function inCover(lay: Lay, wire: readonly Box[]): { conductors: Box[]; covers: Box[] } {
  const conductors = erode(wire, lay.wire.cover?.thickness ?? 0);
  return { conductors, covers: subtract(wire, conductors) };
}

/** From u to x. */
function placed(shape: Shape, chamber: OracleChamber, side: Side): Shape {
  const turn = (b: Box): Box =>
    side === 'left'
      ? { ...b, x0: chamber.x0 + b.x0, x1: chamber.x0 + b.x1 }
      : { ...b, x0: chamber.x1 - b.x1, x1: chamber.x1 - b.x0 };
  const { conductors, covers, sleeves } = shape;
  return { conductors: conductors.map(turn), covers: covers.map(turn), sleeves: sleeves.map(turn) };
}
