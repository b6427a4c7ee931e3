// The pieces between every two conductors of a section: for every set of plies punctured the shortest that touches
// no third conductor. Exact on whole nanometres along x and y; slanting sight lines through air are floating point.

import { nm, type Nm } from '#units/quantity.ts';
import type { StuffId } from '#solver/section/build.ts';
import { sinkClosedJoints } from '#solver/network/closed-joints.ts';
import { countAll, type Counting, packed } from './ply-count.ts';
import { gridOf } from '#solver/network/grid.ts';
import {
  ACROSS_AIR,
  CLOSED,
  contactsOf,
  type Network,
  packEdges,
  SIGHT,
  SLANT,
  THROUGH,
  withHidden,
} from '#solver/network/network.ts';
import type { Leg, PathOptions, Piece, Punctured, SolidOptions } from '#solver/network/pieces.ts';
import { PathFinder } from './path-finder.ts';
import type { Section } from '#solver/section/section.ts';
import { type Arrival, type SearchLimits, shortestFrom } from './shortest.ts';
import { collectSightLines } from './sight.ts';
import { collectSlants } from '#solver/network/slants.ts';
import { collectEdges } from '#solver/network/edge-walker.ts';

/**
 * All moves that a path may make in a section, but for sight lines longer than `sightsUpTo`. `closedJoint` is the stuff that
 * a short closed joint counts as.
 */
export function networkOf(
  section: Section,
  options: SolidOptions,
  closedJoint: StuffId,
  sightsUpTo = Infinity,
  { edges, line }: PathFinder = new PathFinder(),
): Network {
  const grid = gridOf(section, closedJoint, options);
  edges.clear();
  const hidden = collectEdges(grid, options, edges);
  const { closedFrom = options.leastThickness } = options;
  const closes = sinkClosedJoints(edges, closedJoint) || grid.potted;
  const contacts = contactsOf(grid);
  if (grid.potted) collectSlants(grid, contacts, options, edges, closedFrom);
  collectSightLines(grid, { ...contacts, outAt: hidden.outAt }, options, { edges, line }, sightsUpTo);
  return packEdges(
    grid,
    withHidden(contacts, hidden),
    edges,
    hidden.shownAt,
    sightsUpTo,
    closes ? { solidFrom: closedFrom, stuff: closedJoint } : null,
  );
}

/** Limits of a whole section. */
export interface SectionLimits extends Omit<SearchLimits, 'lengthTo'> {
  /** Nothing longer is looked for; by the count of the first class where the list has several. */
  readonly length: readonly number[];
  /** The same for two conductors, where it is less; left out: it is for none. */
  readonly between?: (a: string, b: string) => readonly number[];
  /** Pieces with none of these at either end are not asked for; left out: all are. */
  readonly ends?: (conductor: string) => boolean;
}

export function findPieces(
  net: Network,
  counting: Counting,
  limits: SectionLimits,
  finder: PathFinder = new PathFinder(),
): readonly Piece[] {
  const { conductors } = net.grid;
  const { ends = () => true, between = () => limits.length } = limits;
  const plies = net.punctures.map((punctured) => packed(punctured, counting));
  const open = new Set(conductors.keys());
  return conductors.flatMap((from, source) => {
    if (!ends(from)) return [];
    // what is found from here need not be found the other way round
    open.delete(source);
    if (open.size === 0) return [];
    const lengthTo = new Map([...open].map((to) => [to, between(from, conductors[to]!)]));
    return shortestFrom(net, source, counting, plies, { ...limits, lengthTo }, finder).map((arrival) =>
      pieceOf(net, [from, conductors[arrival.conductor]!], arrival, limits.metric),
    );
  });
}

/** The shortest piece between every two conductors for every number of plies up to `most`. */
export const shortestPieces = (
  section: Section,
  options: PathOptions,
  closedJoint: StuffId,
  most: number,
): readonly Piece[] =>
  findPieces(networkOf(section, options, closedJoint), countAll(most), {
    metric: options.metric,
    x: options.x,
    length: [Infinity],
    window: null,
  });

function pieceOf(
  net: Network,
  between: readonly [string, string],
  arrival: Arrival,
  metric: PathOptions['metric'],
): Piece {
  const { nodes, edges } = arrival;
  const points = nodes.map((node) => pointOf(net, node));
  const steps = edges.map((edge, i) => ({
    kind: net.kind[edge]!,
    length: nm(Math.round(net.cost[edge]!)),
    punctured: puncturedAt(net, edges, i),
  }));
  const punctured = summed(steps.flatMap((step) => step.punctured));
  return {
    between,
    length: nm(Math.round(arrival.length)),
    plies: punctured.reduce((sum, { count }) => sum + count, 0),
    punctured,
    rank: metric === 'clearance' ? 0 : edges.reduce((worst, edge) => Math.max(worst, net.rank[edge]!), 0),
    from: points[0]!,
    to: points.at(-1)!,
    trace: traceOf(steps, points),
  };
}

/** In a function of its own: a closure keeps all that its scope holds, and a kept piece would keep its network. */
const traceOf = (steps: readonly Step[], points: readonly (readonly [Nm, Nm])[]): Piece['trace'] => {
  return () => merged(steps.map((step, i) => legOf(step, points[i]!, points[i + 1]!)));
};

function puncturedAt(net: Network, edges: readonly number[], at: number): readonly Punctured[] {
  const edge = edges[at]!;
  const own = puncturedBy(net, net.puncture[edge]!);
  if (net.kind[edge] === SLANT)
    return isInOneJoint(net, edges, at) ? own : [...puncturedBy(net, net.compound), ...own];
  return net.kind[edge] === CLOSED && isInOneJoint(net, edges, at) ? [] : own;
}

/** A way along a joint or straight in compound that has come along one before, with nothing but closed solids between. */
function isInOneJoint(net: Network, edges: readonly number[], at: number): boolean {
  if (net.solidFrom === null) return false;
  for (let i = at - 1; i >= 0; i--) {
    const edge = edges[i]!;
    const kind = net.kind[edge];
    if (kind === CLOSED || kind === SLANT) return true;
    if (kind !== THROUGH || net.depth[edge] === 0) return false;
  }
  return false;
}

const puncturedBy = (net: Network, puncture: number): readonly Punctured[] =>
  puncture > 0 ? net.punctures[puncture - 1]! : [];

function summed(all: readonly Punctured[]): readonly Punctured[] {
  if (all.length < 2) return all;
  const counts = new Map<StuffId, number>();
  for (const { stuff, count } of all) counts.set(stuff, (counts.get(stuff) ?? 0) + count);
  return [...counts].map(([stuff, count]) => ({ stuff, count }));
}

interface Step {
  readonly kind: number;
  readonly length: Nm;
  readonly punctured: readonly Punctured[];
}

function legOf({ kind, length, punctured }: Step, from: Leg['from'], to: Leg['to']): Leg {
  const words =
    kind === THROUGH
      ? 'through'
      : kind === CLOSED || kind === SLANT
        ? 'closed-joint'
        : kind === ACROSS_AIR || kind === SIGHT
          ? 'air'
          : 'surface';
  const plies = punctured.reduce((sum, { count }) => sum + count, 0);
  return { kind: words, from, to, length, stuff: punctured[0]?.stuff ?? null, plies };
}

function pointOf(net: Network, node: number): readonly [Nm, Nm] {
  const nx = net.grid.xs.length;
  const onGrid = net.nodes - net.shownAt.length;
  const shown = node < onGrid ? node : net.shownAt[node - onGrid]!;
  return [nm(net.grid.xs[shown % nx]!), nm(net.grid.ys[Math.floor(shown / nx)]!)];
}

/** Legs in one direction along the same kind of way are one leg. */
function merged(legs: readonly Leg[]): readonly Leg[] {
  const out: Leg[] = [];
  for (const leg of legs) {
    const last = out.at(-1);
    if (last && leg.kind === 'surface' && last.kind === 'surface' && goesOn(last, leg)) {
      out[out.length - 1] = { ...last, to: leg.to, length: nm(last.length + leg.length) };
    } else out.push(leg);
  }
  return out;
}

function goesOn(a: Leg, b: Leg): boolean {
  const [ax, ay] = [a.to[0] - a.from[0], a.to[1] - a.from[1]];
  const [bx, by] = [b.to[0] - b.from[0], b.to[1] - b.from[1]];
  return (ax === 0 && bx === 0 && ay * by > 0) || (ay === 0 && by === 0 && ax * bx > 0);
}
