// Whether a key is the page's own: pressed alone, and not into something that takes keys itself.

export function isPlainKey({ ctrlKey, metaKey, altKey, defaultPrevented, target }: KeyboardEvent): boolean {
  if (ctrlKey || metaKey || altKey || defaultPrevented) return false;
  return !(target instanceof Element) || target.closest('input, textarea, select, button, a') === null;
}
