// Builds in which joints are closed: cemented plies or compound, with the proof that lets them count.

interface File {
  readonly surroundings?: { readonly impregnation?: string };
  readonly layers: readonly { readonly cemented?: boolean }[];
}

/** The build with proof; null where no joint would be closed by it. */
export function closedOnly(file: object | null): object | null {
  if (file === null) return null;
  const { surroundings, layers } = file as File;
  const closes = surroundings?.impregnation === 'potted' || layers.some(({ cemented }) => cemented);
  return closes ? { ...file, surroundings: { ...surroundings, proof: 'tested' } } : null;
}
