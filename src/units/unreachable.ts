/** Closes a `switch` over a union: a kind that was forgotten does not compile. */
export function unreachable(value: never): never {
  throw new Error(`unreachable: ${JSON.stringify(value)}`);
}
