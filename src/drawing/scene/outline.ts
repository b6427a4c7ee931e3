// The outline of several rectangles taken together: closed loops of corners, holes included, joints inside gone.
// Loops run with the filled side on their left (y upward), so that a non-zero fill leaves holes open.

export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export type Point = readonly [number, number];

/** For a few dozen boxes; the cost grows with the cube of their number. */
export function outlineOf(boxes: readonly Box[]): readonly (readonly Point[])[] {
  const xs = sorted(boxes.flatMap((box) => [box.x0, box.x1]));
  const ys = sorted(boxes.flatMap((box) => [box.y0, box.y1]));
  const filled = (i: number, j: number): boolean => {
    const [x0, x1, y0, y1] = [xs[i], xs[i + 1], ys[j], ys[j + 1]];
    if (x0 === undefined || x1 === undefined || y0 === undefined || y1 === undefined) return false;
    return boxes.some((box) => box.x0 <= x0 && x1 <= box.x1 && box.y0 <= y0 && y1 <= box.y1);
  };
  return chained(edgesOf(xs.length, ys.length, filled)).map((loop) =>
    straightened(loop).map(([i, j]): Point => [xs[i] ?? 0, ys[j] ?? 0]),
  );
}

const sorted = (values: readonly number[]): readonly number[] => [...new Set(values)].sort((a, b) => a - b);

type Corner = readonly [number, number];
type Edge = readonly [Corner, Corner];

/** Unit edges between a filled cell and an empty one, the filled one on the left. */
function edgesOf(columns: number, rows: number, filled: (i: number, j: number) => boolean): readonly Edge[] {
  const edges: Edge[] = [];
  for (let i = 0; i < columns; i++) {
    for (let j = 0; j < rows; j++) {
      if (!filled(i, j)) continue;
      if (!filled(i, j - 1))
        edges.push([
          [i, j],
          [i + 1, j],
        ]);
      if (!filled(i + 1, j))
        edges.push([
          [i + 1, j],
          [i + 1, j + 1],
        ]);
      if (!filled(i, j + 1))
        edges.push([
          [i + 1, j + 1],
          [i, j + 1],
        ]);
      if (!filled(i - 1, j))
        edges.push([
          [i, j + 1],
          [i, j],
        ]);
    }
  }
  return edges;
}

/** Walks edge to edge; where two loops share a corner it turns left, so that they stay two. */
function chained(edges: readonly Edge[]): readonly (readonly Corner[])[] {
  const from = new Map<string, Edge[]>();
  for (const edge of edges) {
    const key = edge[0].join();
    from.set(key, [...(from.get(key) ?? []), edge]);
  }
  const loops: Corner[][] = [];
  for (const first of edges) {
    if (!take(from, first)) continue;
    const loop: Corner[] = [first[0]];
    let last = first;
    while (last[1].join() !== first[0].join()) {
      loop.push(last[1]);
      const next = leftmost(last, from.get(last[1].join()) ?? []);
      if (next === undefined) break;
      take(from, next);
      last = next;
    }
    loops.push(loop);
  }
  return loops;
}

function take(from: Map<string, Edge[]>, edge: Edge): boolean {
  const waiting = from.get(edge[0].join()) ?? [];
  const rest = waiting.filter((other) => other !== edge);
  from.set(edge[0].join(), rest);
  return rest.length < waiting.length;
}

function leftmost(last: Edge, next: readonly Edge[]): Edge | undefined {
  const turn = (edge: Edge): number => {
    const [ax, ay] = [last[1][0] - last[0][0], last[1][1] - last[0][1]];
    const [bx, by] = [edge[1][0] - edge[0][0], edge[1][1] - edge[0][1]];
    return ax * by - ay * bx;
  };
  return [...next].sort((a, b) => turn(b) - turn(a))[0];
}

/** Drops corners at which the loop goes straight on. */
function straightened(loop: readonly Corner[]): readonly Corner[] {
  return loop.filter((corner, k) => {
    const before = loop[(k + loop.length - 1) % loop.length] ?? corner;
    const after = loop[(k + 1) % loop.length] ?? corner;
    return (
      !(before[0] === corner[0] && corner[0] === after[0]) &&
      !(before[1] === corner[1] && corner[1] === after[1])
    );
  });
}
