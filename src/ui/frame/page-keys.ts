// Keys that work anywhere on the page, unless one is typing: steps back and forward, files, pages, finding, weak spots, sections, the list.

import { PAGES, type PageName } from '#state/app/page-list.ts';
import type { App } from '#state/app/app.svelte.ts';

export function pageKeys(event: KeyboardEvent, app: App, show: (dialog: 'keys' | 'find') => void): void {
  if (event.defaultPrevented) return;
  const page = pageKeyed(event);
  if (page !== undefined) {
    app.pages.go(page);
    event.preventDefault();
    return;
  }
  const isTyping =
    event.target instanceof Element && event.target.closest('input, textarea, select') !== null;
  const done =
    event.ctrlKey || event.metaKey ? commandKey(event, app) : !isTyping && plainKey(event, app, show);
  if (done) event.preventDefault();
}

/** The key itself, not what it writes: with Alt a keyboard may write another sign. */
const pageKeyed = ({ altKey, shiftKey, ctrlKey, metaKey, code }: KeyboardEvent): PageName | undefined =>
  altKey && shiftKey && !ctrlKey && !metaKey
    ? PAGES.find(({ key }) => key !== null && code === `Key${key}`)?.name
    : undefined;

/** Fields of words take steps back themselves; a choice, a switch or a slider does not. */
const OWN_STEPS = 'textarea, input:not([type="checkbox"], [type="radio"], [type="range"], [type="file"])';

function commandKey(event: KeyboardEvent, app: App): boolean {
  const { workspace } = app;
  const key = event.key.toLowerCase();
  if (key === 's') {
    keepTyped();
    app.save();
  } else if (key === 'o') app.pages.go('open');
  else if (event.target instanceof Element && event.target.closest(OWN_STEPS) !== null) return false;
  else if (key === 'z' && !event.shiftKey) workspace.undo();
  else if (key === 'y' || key === 'z') workspace.redo();
  else return false;
  return true;
}

/** What stands in a field, though it was not left: leaving it keeps it. */
function keepTyped(): void {
  const field = document.activeElement;
  if (!(field instanceof HTMLElement)) return;
  field.blur();
  field.focus();
}

/** Pages on which `/` leads to a field of their own. */
const HAS_ITS_OWN_FIND: readonly string[] = ['words', 'tables'];

function plainKey(event: KeyboardEvent, app: App, show: (dialog: 'keys' | 'find') => void): boolean {
  const { workspace, pages } = app;
  if (event.altKey) return false;
  if (event.key === '/' && HAS_ITS_OWN_FIND.includes(pages.current)) return false;
  if (event.key === '?' || event.key === '/') {
    show(event.key === '?' ? 'keys' : 'find');
    return true;
  }
  if (event.key === 'Escape' && workspace.trial.tried !== null) {
    workspace.trial.putBack();
    return true;
  }
  if (pages.current !== 'sheet') return false;
  if (event.key === '[' || event.key === ']') {
    const place = workspace.sections.indexOf(workspace.section) + (event.key === ']' ? 1 : -1);
    const next = workspace.sections.at(place % workspace.sections.length);
    if (next !== undefined) workspace.pickSection(next);
    return true;
  }
  const spot = /^[1-9]$/.test(event.key) ? workspace.verdict?.weakSpots[Number(event.key) - 1] : undefined;
  if (spot === undefined) return false;
  workspace.selection.pickSpot(spot);
  return true;
}
