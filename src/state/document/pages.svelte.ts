// Which page is open, told by the link's fragment so that going back goes back. All of them lie over one build.

const NAMES = [
  'start',
  'sheet',
  'examine',
  'design',
  'learn',
  'open',
  'repair',
  'stress',
  'field',
  'report',
  'photographs',
  'taking-apart',
  'decide',
  'many',
] as const;
export type PageName = (typeof NAMES)[number];

export class Pages {
  #current: PageName = $state('start');

  get current(): PageName {
    return this.#current;
  }

  /** Follows the fragment; returns what stops following. */
  start(): () => void {
    const follow = (): void => {
      const found = NAMES.find((name) => name === location.hash.slice(1));
      if (found !== undefined || location.hash === '') this.#current = found ?? 'start';
    };
    follow();
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }

  go(page: PageName): void {
    this.#current = page;
    location.hash = page === 'start' ? '' : page;
    scrollTo(0, 0);
  }
}
