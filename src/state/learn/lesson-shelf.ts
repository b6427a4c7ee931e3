// The lessons that come with the page, in the order in which they build on each other. Fetched with the page of lessons.

import { knownIds } from '#judge/conductors/known-ids.ts';
import type { Lesson } from '#learn/lesson/lesson-schema.ts';
import { readLesson } from '#learn/lesson/read-lesson.ts';
import airAndSurface from '#lessons/air-and-surface.json' with { type: 'json' };
import bridge from '#lessons/bridge.json' with { type: 'json' };
import core from '#lessons/core.json' with { type: 'json' };
import dissected from '#lessons/dissected.json' with { type: 'json' };
import enamel from '#lessons/enamel.json' with { type: 'json' };
import grades from '#lessons/grades.json' with { type: 'json' };
import heat from '#lessons/heat.json' with { type: 'json' };
import leads from '#lessons/leads.json' with { type: 'json' };
import looseTurns from '#lessons/loose-turns.json' with { type: 'json' };
import margin from '#lessons/margin.json' with { type: 'json' };
import mend from '#lessons/mend.json' with { type: 'json' };
import plies from '#lessons/plies.json' with { type: 'json' };
import pollution from '#lessons/pollution.json' with { type: 'json' };
import rewound from '#lessons/rewound.json' with { type: 'json' };
import screen from '#lessons/screen.json' with { type: 'json' };
import series from '#lessons/series.json' with { type: 'json' };
import served from '#lessons/served.json' with { type: 'json' };
import sleeves from '#lessons/sleeves.json' with { type: 'json' };
import theTest from '#lessons/the-test.json' with { type: 'json' };
import tolerance from '#lessons/tolerance.json' with { type: 'json' };
import volts from '#lessons/volts.json' with { type: 'json' };
import whoMayMeet from '#lessons/who-may-meet.json' with { type: 'json' };
import wire from '#lessons/wire.json' with { type: 'json' };

const FILES: readonly unknown[] = [
  whoMayMeet,
  grades,
  enamel,
  served,
  airAndSurface,
  pollution,
  volts,
  margin,
  series,
  looseTurns,
  plies,
  wire,
  leads,
  sleeves,
  core,
  screen,
  bridge,
  theTest,
  heat,
  tolerance,
  dissected,
  rewound,
  mend,
];

/** Throws where a lesson of ours cannot be read: a bug, which its test finds first. */
export const lessonShelf: readonly Lesson[] = FILES.map((file) => {
  const read = readLesson(file, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]?.says ?? 'no lesson');
  return read.lesson;
});
