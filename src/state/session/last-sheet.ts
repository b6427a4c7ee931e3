// Which build lay on this tab's sheet, so that a reload lays it there again. Lasts as long as the tab.

const KEY = 'layerwright-sheet';

/** The id of a kept build, or `demo:` and the id of an invented one that was not changed. */
export function rememberSheet(id: string | null): void {
  try {
    if (id === null) sessionStorage.removeItem(KEY);
    else sessionStorage.setItem(KEY, id);
  } catch {
    // blocked storage: the newest build is taken up instead
  }
}

export function rememberedSheet(): string | null {
  try {
    return sessionStorage.getItem(KEY);
  } catch {
    return null;
  }
}
