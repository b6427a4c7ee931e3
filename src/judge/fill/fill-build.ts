// From a design to complete builds for the solver: unknowns counted as chosen, wires and tapes looked up.
// Where an unknown leaves a choice of place, several builds stand side by side (see `Filled.builds`).

import type { Book } from '#books/questions/book.ts';
import type { Choice } from '#judge/assume/assumption.ts';
import { type Counted, Filling } from '#judge/assume/fill-context.ts';
import { type SolidsById, StuffNumbers } from '#judge/assume/stuff.ts';
import { touchedBy } from '#judge/conductors/core-circuit.ts';
import { meansField } from '#judge/grade/means.ts';
import { plainly } from '#judge/verdict/assumed.ts';
import type { NotJudged } from '#judge/verdict/remark.ts';
import type { Design } from '#model/design.ts';
import type { Build, BuildWire, Lay } from '#solver/section/build.ts';
import type { PollutionDegree, Side } from '#units/terms.ts';
import { fillFormer } from './fill-former.ts';
import { fillLayer } from './fill-layer.ts';
import { fillLeads } from './fill-leads.ts';
import { type AllWidths, fillWidths } from './fill-margins.ts';
import { type FilledOutside, fillOutside } from './fill-outside.ts';
import { fillWire } from './fill-wire.ts';
import { grownBuilds } from './grown-stack.ts';
import { pastLeads } from './past-leads.ts';

/** Choices of place that are tried at best; further ones stand at worst. */
const MOST_OPTIONS = 16;

export interface Filled {
  /** As it counts: degree 1 wants a proof. */
  readonly pollutionDegree: PollutionDegree;
  /** The better of the outer list counts, of the inner lists each the worse. */
  readonly builds: readonly (readonly Build[])[];
  /** Those of them that are no taller than they are drawn. */
  readonly drawn: readonly Build[];
  readonly stuffs: SolidsById;
  readonly counted: readonly Counted[];
  /** Circuits that the core may be tied to; null floating. The worst counts, or the best. */
  readonly coreBonds: readonly (string | null)[];
  readonly bestBond: boolean;
  /** Circuits by the unknown fields that say how much room they take. */
  readonly rooms: ReadonlyMap<string, string>;
  readonly notJudged: readonly NotJudged[];
  /** The distances outside the window, in the order of the file. */
  readonly outside: readonly FilledOutside[];
}

/** `numbers`: as its solids are known by in other ways to count the build. */
export function fillBuild(design: Design, book: Book, choice: Choice, numbers = new StuffNumbers()): Filled {
  const filling = new Filling(choice, numbers);
  const wires = wiresOf(filling, book, design);
  const leads = fillLeads(filling, design, wires, book);
  const starts = startSides(filling, design);
  const shell = fillFormer(filling, book, design);
  const widths = fillWidths(filling, design, wires);
  const drawn = placedWays(laySetsOf(leads.choices), widths, starts, (lays, all, side) => ({
    ...shell,
    layers: design.layers.map((layer, index) =>
      fillLayer(filling, book, design, layer, index, wires, all[index]!, side),
    ),
    lays,
  }));
  const builds = drawn.map((worse) =>
    worse.flatMap((build) => [
      build,
      ...grownBuilds(design, choice, build),
      ...pastLeads(build, leads.choices),
    ]),
  );
  const bonds = coreBonds(filling, design);
  const outside = fillOutside(filling, design);
  const pollutionDegree = fillPollution(filling, design);
  if (book.asksMeans) noteMeans(filling, design);
  return {
    pollutionDegree,
    builds,
    drawn: drawn.flat(),
    stuffs: filling.stuffs.all,
    // last, when every field has been asked for
    counted: [...filling.counted.values()],
    coreBonds: bonds.all,
    bestBond: bonds.best,
    rooms: filling.rooms,
    notJudged: leads.notJudged,
    outside,
  };
}

const wiresOf = (filling: Filling, book: Book, design: Design): ReadonlyMap<string, BuildWire> =>
  new Map(
    design.windings.map((winding, w) => [
      winding.id,
      fillWire(filling, book, design, winding, `windings[${w}].wire`),
    ]),
  );

/** Every set of leads that may be the true one; past so many all further options stand in one. */
const laySetsOf = (choices: ReturnType<typeof fillLeads>['choices']): readonly (readonly Lay[])[] =>
  choices.reduce<readonly (readonly Lay[])[]>(
    (sets, { options }) =>
      sets.length * options.length > MOST_OPTIONS
        ? sets.map((set) => [...set, ...options.flat()])
        : sets.flatMap((set) => options.map((option) => [...set, ...option])),
    [[]],
  );

type BuildOf = (lays: readonly Lay[], all: AllWidths, side: (winding: string) => Side) => Build;

/** The better of the outer list counts, of the inner lists each the worse. */
function placedWays(
  laySets: readonly (readonly Lay[])[],
  widths: ReturnType<typeof fillWidths>,
  starts: ReturnType<typeof startSides>,
  buildOf: BuildOf,
): readonly (readonly Build[])[] {
  const sides = starts.both ? (['left', 'right'] as const) : (['left'] as const);
  const sideFor = (other: Side) => (winding: string) => starts.known.get(winding) ?? other;
  const [betterSides, worseSides] = starts.best ? [sides, [null]] : [[null], sides];
  return laySets.flatMap((lays) =>
    widths.better.flatMap((better) =>
      betterSides.map((side) =>
        widths
          .worse(better)
          .flatMap((all) => worseSides.map((other) => buildOf(lays, all, sideFor(side ?? other ?? 'left')))),
      ),
    ),
  );
}

/** At which side layers begin that are not spread over their width. */
function startSides(filling: Filling, design: Design) {
  const known = new Map<string, Side>();
  let open = false;
  let best = false;
  design.windings.forEach((winding, w) => {
    const matters = design.layers.some(
      (layer) => layer.kind === 'winding' && layer.winding === winding.id && !layer.spread,
    );
    if (!matters) return;
    const { leads } = winding;
    const start = leads === 'not-judged' || 'kind' in leads ? null : leads.start;
    const at = start === null || 'kind' in start ? null : start.at;
    if (typeof at === 'string') known.set(winding.id, at);
    else {
      open = true;
      best = filling.unknown(`windings[${w}].leads.start.at`, plainly('each-side')) === 'best';
    }
  });
  return { known, both: open, best };
}

interface Bonds {
  readonly all: readonly (string | null)[];
  readonly best: boolean;
}

function coreBonds(filling: Filling, design: Design): Bonds {
  const { bond } = design.core;
  const touched = touchedBy(design);
  if (typeof bond === 'string') return { all: [bond === 'floating' ? touched : bond], best: false };
  const best = filling.unknown('core.bond', plainly('floating-or-tied')) === 'best';
  const others = design.circuits.map(({ id }) => id).filter((id) => id !== touched);
  return { all: [touched, ...others], best };
}

/** Degree 1 wants a proof as potting does; without one it is degree 2. */
function fillPollution(filling: Filling, { surroundings }: Design): PollutionDegree {
  const { pollutionDegree, proof } = surroundings;
  if (pollutionDegree !== 1 || proof === 'tested') return pollutionDegree;
  return filling.unknown('surroundings.proof', plainly('pollution-2')) === 'best' ? 1 : 2;
}

/** For a book that tells patients from operators, whom a touchable circuit protects. */
function noteMeans(filling: Filling, { circuits }: Design): void {
  circuits.forEach(({ role, means }, i) => {
    if (role === 'touchable' && means === null) filling.unknown(meansField(i), plainly('patient'));
  });
}
