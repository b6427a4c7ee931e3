// Which triangle lies across each side: side i of a triangle runs from its point i to the next; -1 where none does.

export function neighboursOf(triangles: Int32Array, points: number): Int32Array {
  const start = new Int32Array(points + 1);
  for (let i = 0; i < triangles.length; i++) start[lower(triangles, i) + 1]! += 1;
  for (let i = 0; i < points; i++) start[i + 1]! += start[i]!;
  const used = new Int32Array(points);
  const side = new Int32Array(triangles.length);
  const across = new Int32Array(triangles.length).fill(-1);
  for (let i = 0; i < triangles.length; i++) {
    const low = lower(triangles, i);
    const high = triangles[i]! + triangles[next(i)]! - low;
    const begin = start[low]!;
    for (let k = begin; k < begin + used[low]!; k++) {
      const other = side[k]!;
      if (triangles[other]! + triangles[next(other)]! - low !== high) continue;
      across[i] = Math.floor(other / 3);
      across[other] = Math.floor(i / 3);
    }
    side[begin + used[low]!] = i;
    used[low]! += 1;
  }
  return across;
}

const next = (i: number): number => (i % 3 === 2 ? i - 2 : i + 1);
const lower = (triangles: Int32Array, i: number): number => Math.min(triangles[i]!, triangles[next(i)]!);
