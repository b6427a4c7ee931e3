// What is printed in place of a report while there is no judgement of the build as it is: never one of an older state.

export const stillJudging = (): string =>
  '<!doctype html><html lang="en"><head><style></style></head><body><main><p>This build was not judged yet when it was ' +
  'printed. Wait for the verdict, then print again.</p></main></body></html>';
