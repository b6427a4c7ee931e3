// The pieces between every two conductors of a section: for every set of plies punctured the shortest that touches
// no third conductor. Exact on whole nanometres along x and y; slanting sight lines through air are floating point.

import { nm, type Nm } from '#units/quantity.ts';
import type { StuffId } from './build.ts';
import { hopClosedJoints } from './closed-joints.ts';
import { CLASSES, countOf, pliesOf, rankOf } from './code.ts';
import { type Grid, gridOf } from './grid.ts';
import {
  ACROSS_AIR,
  Classes,
  CLOSED,
  collectEdges,
  EdgeList,
  type Network,
  packEdges,
  THROUGH,
} from './network.ts';
import type { Leg, PathOptions, Piece, Punctured } from './pieces.ts';
import type { Section } from './section.ts';
import { type Labels, shortestFrom } from './shortest.ts';
import { collectSightLines } from './sight.ts';

/** Stands for solids that had to share a class with others: graded as the weakest. */
export const MIXED: StuffId = -1;

export interface SectionPaths {
  readonly conductors: readonly string[];
  readonly pieces: readonly Piece[];
}

/** Pieces no longer than `limit`. `closedJoint` is the stuff that a short closed joint counts as. */
export function findPieces(
  section: Section,
  options: PathOptions,
  closedJoint: StuffId,
  limit: number = Infinity,
): SectionPaths {
  const grid = gridOf(section, closedJoint);
  const net = networkOf(grid, options, closedJoint);
  const pieces: Piece[] = [];
  const { conductors } = grid;
  for (let source = 0; source + 1 < conductors.length; source++) {
    const { labels, arrivals } = shortestFrom(net, source, limit, options.window);
    for (const { conductor, label } of arrivals) {
      // the other way round was found when that conductor was the source
      if (conductor < source) continue;
      pieces.push(pieceOf(net, [conductors[source]!, conductors[conductor]!], labels, label));
    }
  }
  return { conductors, pieces };
}

function networkOf(grid: Grid, options: PathOptions, closedJoint: StuffId): Network {
  const classes = new Classes();
  const edges = new EdgeList();
  const shownAt = collectEdges(grid, options, classes, edges);
  hopClosedJoints(edges, options.leastThickness, () => classes.of(closedJoint));
  if (options.metric === 'clearance') collectSightLines(grid, options, classes, edges);
  return packEdges(grid, edges, shownAt, classes);
}

function pieceOf(net: Network, between: readonly [string, string], labels: Labels, label: number): Piece {
  const code = labels.code[label]!;
  let first = label;
  while (labels.previous[first]! >= 0) first = labels.previous[first]!;
  return {
    between,
    length: nm(Math.round(labels.length[label]!)),
    plies: pliesOf(code),
    punctured: puncturedOf(net, code),
    rank: rankOf(code),
    from: pointOf(net, labels.node[first]!),
    to: pointOf(net, labels.node[label]!),
    trace: () => legsOf(net, labels, label),
  };
}

function puncturedOf(net: Network, code: number): readonly Punctured[] {
  const punctured: Punctured[] = [];
  for (let cls = 0; cls < CLASSES; cls++) {
    const count = countOf(code, cls);
    if (count > 0) punctured.push({ stuff: stuffOf(net, cls), count });
  }
  return punctured;
}

function stuffOf(net: Network, cls: number): StuffId {
  const sharing = [...net.classes].filter(([, known]) => known === cls);
  return sharing.length === 1 ? sharing[0]![0] : MIXED;
}

function pointOf(net: Network, node: number): readonly [Nm, Nm] {
  const nx = net.grid.xs.length;
  const onGrid = net.nodes - net.shownAt.length;
  const shown = node < onGrid ? node : net.shownAt[node - onGrid]!;
  return [nm(net.grid.xs[shown % nx]!), nm(net.grid.ys[Math.floor(shown / nx)]!)];
}

function legsOf(net: Network, labels: Labels, label: number): readonly Leg[] {
  const legs: Leg[] = [];
  for (let at = label; labels.previous[at]! >= 0; at = labels.previous[at]!) {
    const edge = labels.edge[at]!;
    const kind = net.kind[edge]!;
    const plies = net.plies[edge]!;
    legs.push({
      kind:
        kind === THROUGH
          ? 'through'
          : kind === CLOSED
            ? 'closed-joint'
            : kind === ACROSS_AIR
              ? 'air'
              : 'surface',
      from: pointOf(net, labels.node[labels.previous[at]!]!),
      to: pointOf(net, labels.node[at]!),
      length: nm(Math.round(net.cost[edge]!)),
      stuff: puncturedOf(net, plies)[0]?.stuff ?? null,
      plies: pliesOf(plies),
    });
  }
  return merged(legs.reverse());
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
