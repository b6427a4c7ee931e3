// Builds in which no joint is closed: those with proven potting or cement are compared apart.

interface File {
  readonly surroundings?: { readonly proof?: string; readonly impregnation?: string };
  readonly layers: readonly { readonly cemented?: boolean }[];
}

/** The build itself; null where some joint is closed. */
export function openOnly(file: object | null): object | null {
  if (file === null) return null;
  const { surroundings, layers } = file as File;
  const closes = surroundings?.impregnation === 'potted' || layers.some(({ cemented }) => cemented);
  return surroundings?.proof === 'tested' && closes ? null : file;
}
