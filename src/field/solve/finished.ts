// Goes on to the end of what works in steps, for whoever does not want to stop it or hear how far it is.

export function finished<T>(steps: Iterator<unknown, T, void>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done === true) return value as T;
  }
}
