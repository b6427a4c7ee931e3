// The words inside a name of the program.

/** `nextRow` and `next-row` as `next row`. */
export const spaced = (key: string): string =>
  key.replace(/-/g, ' ').replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
