// A build as it lies, not judged: the plain section alone, with every unknown as at worst. For drawing at once what is still
// being judged. Its verdict holds no pair, and nothing may be told from it.

import { bookOf } from '#books/book-of.ts';
import type { Design } from '#model/design.ts';
import { plainSection } from '#solver/placing/lay-out.ts';
import { WORST } from '#judge/assume/assumption.ts';
import { fillBuild } from '#judge/fill/fill-build.ts';
import { fitOf } from './fit-of.ts';
import { withTurns, type Judgement } from './judge.ts';

/** Throws where the rule book does not exist: reading the file has refused it. */
export function sketch(design: Design): Judgement {
  const book = bookOf(design);
  const build = fillBuild(design, book, WORST).builds[0]![0]!;
  // no lead is laid in, so nothing hangs on what makes a sleeve strong
  const laid = plainSection(build, { leastThickness: book.leastThickness().value });
  // whoever draws has no use for its parts
  const section = { ...laid, parts: undefined };
  return withTurns({
    builds: [build],
    windings: null,
    sections: [section],
    parts: { judgedAt: [], bridges: [], outside: [] },
    verdict: {
      format: 'layerwright-verdict/1',
      title: design.title,
      rules: { id: book.id, edition: book.edition },
      verdict: 'not-shown',
      notJudged: [],
      coreAsPrimary: null,
      pairs: [],
      touchCurrent: null,
      weakSpots: [],
      fit: fitOf(build),
      remarks: [],
      assumptions: [],
      restsOn: 'stated',
    },
  });
}
