// `?` means don't know in a list of answers as it does in a field that one types into.

export function dontKnowKey(event: KeyboardEvent): void {
  const { target } = event;
  if (event.key !== '?' || !(target instanceof HTMLSelectElement)) return;
  const answer = [...target.options].find(({ value, text }) => value === 'unknown' || text === "don't know");
  if (answer === undefined) return;
  event.preventDefault();
  target.value = answer.value;
  target.dispatchEvent(new Event('change', { bubbles: true }));
}
