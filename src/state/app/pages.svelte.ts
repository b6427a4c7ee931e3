// Which page is open, told by the link's fragment so that going back goes back. All of them lie over one build.
// What stands after the page's name and a slash is the page's own: a lesson, a word, an exercise and its seed.

import { isPage, type PageName } from './page-list.ts';

export class Pages {
  #current: PageName = $state('start');
  #place = $state('');

  get current(): PageName {
    return this.#current;
  }

  /** Where on the page: what follows its name in the fragment; empty for the page as it opens. */
  get place(): string {
    return this.#place;
  }

  /** Follows the fragment; returns what stops following. */
  start(): () => void {
    const follow = (): void => {
      const [first = '', ...rest] = location.hash.slice(1).split('/');
      if (!isPage(first) && location.hash !== '') return;
      this.#current = isPage(first) ? first : 'start';
      this.#place = rest.join('/');
    };
    follow();
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }

  go(page: PageName, place = ''): void {
    this.#current = page;
    this.#place = place;
    location.hash = page === 'start' ? '' : place === '' ? page : `${page}/${place}`;
    scrollTo(0, 0);
  }
}
