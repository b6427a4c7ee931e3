// Random builds with windings side by side: of every two windings that follow each other in a chamber the second joins the
// band of the first, at one side or the other, with and without blocks between them.

interface Margin {
  width: number;
}

interface File {
  readonly former: { readonly chambers: readonly { readonly width: number }[] };
  readonly layers: readonly {
    readonly kind: string;
    readonly chamber: number;
    readonly margins: Record<'left' | 'right', Margin>;
    beside?: boolean;
    extent?: { readonly from: number; readonly to: number };
  }[];
}

/** Null where no two windings follow each other. */
export function sideBySide(random: object): object | null {
  const file = JSON.parse(JSON.stringify(random)) as File;
  let joined = 0;
  file.layers.forEach((layer, i) => {
    const before = file.layers.slice(0, i).findLast(({ chamber }) => chamber === layer.chamber);
    if (layer.kind !== 'winding' || before?.kind !== 'winding' || before.beside) return;
    const width = (share: number): number =>
      Number((file.former.chambers[layer.chamber]!.width * share).toFixed(3));
    const [left, right] = i % 2 === 0 ? [layer, before] : [before, layer];
    const edge = i % 3 === 0 ? 0.1 : 0;
    left.extent = { from: edge, to: width(0.4) };
    right.extent = { from: width(0.6), to: Number((width(1) - edge).toFixed(3)) };
    left.margins.left.width = right.margins.right.width = 0.1;
    // whole, or up to some place between them
    left.margins.right.width = width(i % 4 < 2 ? 0.6 : 0.5);
    right.margins.left.width = width(i % 5 < 2 ? 0.6 : 0.45);
    layer.beside = true;
    joined++;
  });
  return joined === 0 ? null : file;
}
