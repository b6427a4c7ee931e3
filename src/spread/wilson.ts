// The interval for a share found by counting: it holds the true share 19 times in 20 (Wilson, "Probable inference, the law
// of succession, and statistical inference", Journal of the American Statistical Association 22 (1927), p. 209).

/** Of the normal distribution, for 95 %. */
const Z = 1.959964;

/** [0, 1] where nothing was counted. */
export function wilson(hits: number, count: number): readonly [number, number] {
  if (count === 0) return [0, 1];
  const share = hits / count;
  const middle = (share + Z ** 2 / (2 * count)) / (1 + Z ** 2 / count);
  const half =
    (Z / (1 + Z ** 2 / count)) * Math.sqrt((share * (1 - share)) / count + Z ** 2 / (4 * count ** 2));
  return [Math.max(0, middle - half), Math.min(1, middle + half)];
}
