// How far it is with many files or draws, on standard error and only where that is a terminal; wiped away at the end.

const EVERY_MS = 100;

/** Takes how many are done, and null at the end. */
export function progress(total: number, what = 'files'): (done: number | null) => void {
  const { stderr } = process;
  if (!stderr.isTTY || total < 2) return () => {};
  let last = 0;
  let isShown = false;
  return (done) => {
    const now = performance.now();
    if (done === null) {
      if (isShown) stderr.write('\r\u001b[K');
    } else if (now - last >= EVERY_MS) {
      last = now;
      isShown = true;
      stderr.write(`\r${done} of ${total} ${what}`);
    }
  };
}
