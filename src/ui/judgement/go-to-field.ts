// Opens the row of the list that a field belongs to and puts the focus into the field, once it is there.

import type { Selection } from '#state/document/selection.svelte.ts';

export function goToField(selection: Selection, field: string): void {
  const [, index] = /^layers\[(\d+)\]/.exec(field) ?? [];
  if (index !== undefined) selection.openRow = Number(index);
  else if (field.startsWith('former')) selection.openRow = 'former';
  else if (field.startsWith('core')) selection.openRow = 'core';
  focusSoon(`[data-field="${CSS.escape(field)}"]`, TRIES);
}

/** The sheet may have to come first. */
const TRIES = 60;

function focusSoon(selector: string, tries: number): void {
  requestAnimationFrame(() => {
    const found = document.querySelector<HTMLElement>(selector);
    if (found === null) {
      if (tries > 0) focusSoon(selector, tries - 1);
      return;
    }
    for (let at = found.parentElement; at !== null; at = at.parentElement)
      if (at instanceof HTMLDetailsElement) at.open = true;
    found.focus();
  });
}
