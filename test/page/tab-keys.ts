// By the tab key alone to what is wanted, forward or back, whichever is nearer: how far it is is asked of the page, the keys
// are pressed one by one, and only what then has the focus counts.

import type { Page } from 'playwright';

/** What has the focus in the end: by a selector, or by words that it bears, is labelled with or named by. */
export type Wanted = { readonly css: string } | { readonly words: string };

export async function tabTo(page: Page, wanted: Wanted): Promise<void> {
  let pressed = 0;
  while (pressed < 400) {
    const steps = await stepsTo(page, wanted);
    if (steps === 0) return;
    // not there yet, or behind a group that takes the arrows: on by one
    const keys = steps ?? 1;
    for (let n = 0; n < Math.abs(keys); n++) await page.keyboard.press(keys > 0 ? 'Tab' : 'Shift+Tab');
    pressed += Math.abs(keys);
  }
  throw new Error(`no way to ${JSON.stringify(wanted)} by Tab`);
}

/** Stops of the tab key from what has the focus to what is wanted, below 0 where it lies behind; null: none is there. */
const stepsTo = (page: Page, wanted: Wanted): Promise<number | null> =>
  page.evaluate((what) => {
    const isWanted = (element: HTMLElement): boolean =>
      'css' in what
        ? element.matches(what.css)
        : `${element.innerText} ${element.ariaLabel ?? ''} ${element.getAttribute('name') ?? ''}`.includes(
            what.words,
          );
    /** Of a group of choices only the one that is made is a stop. */
    const isPassedOver = (element: HTMLElement): boolean =>
      element instanceof HTMLInputElement &&
      element.type === 'radio' &&
      !element.checked &&
      document.querySelector(`input[type="radio"][name="${CSS.escape(element.name)}"]:checked`) !== null;
    const isStop = (element: HTMLElement): boolean =>
      element.tabIndex >= 0 &&
      !element.matches(':disabled') &&
      element.checkVisibility({ visibilityProperty: true }) &&
      !isPassedOver(element);
    const active = document.activeElement as HTMLElement;
    if (active !== document.body && isWanted(active)) return 0;
    const stops = [...document.querySelectorAll<HTMLElement>('body *')].filter(isStop);
    const at = stops.indexOf(active);
    const ahead = stops.findIndex((stop, i) => i > at && isWanted(stop));
    const to = ahead < 0 ? stops.findIndex(isWanted) : ahead;
    return to < 0 ? null : to - at;
  }, wanted);
