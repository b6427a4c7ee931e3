// The former and the core of a build, with what nobody knows of them counted as chosen.

import type { Book } from '#books/questions/book.ts';
import { isBest as isBestField } from '#judge/assume/assumption.ts';
import { Filling } from '#judge/assume/fill-context.ts';
import { coreCircuit } from '#judge/conductors/core-circuit.ts';
import { plainly } from '#judge/verdict/assumed.ts';
import type { Design } from '#model/design.ts';
import { isKnown } from '#model/quantity/reading.ts';
import type { Build, BuildWall, StuffId } from '#solver/section/build.ts';
import { because } from '#standards/because.ts';
import { formerById } from '#standards/materials/materials.ts';
import { type Nm, nm } from '#units/quantity.ts';
import { groupOrAssumed } from '#judge/fill/solids/fill-group.ts';
import { fillSheet, groupOf } from '#judge/fill/solids/fill-solid.ts';
import { isCoreOutOfReach } from './grown-stack.ts';

/** So far from the winding that the core above never limits. */
const FAR = nm(100_000_000);

/** Thickness of a wall that nobody knows: one ply of no length. */
const NO_WALL = nm(1);

export function fillFormer(filling: Filling, book: Book, design: Design): Omit<Build, 'layers' | 'lays'> {
  const { former, core, surroundings } = design;
  const flange = isKnown(former.flange)
    ? former.flange.value
    : filling.unknown('former.flange', plainly('unshown-ply')) === 'best'
      ? book.leastThickness().value
      : NO_WALL;
  const proven = surroundings.proof === 'tested';
  return {
    height: former.height.value,
    wall: fillWall(filling, book, design),
    flange,
    split: former.split,
    moulding: mouldingStuff(filling, book, design),
    chambers: former.chambers.map((chamber) => chamber.width.value),
    dividers: former.dividers.map((divider) => divider.value),
    outerGap: outerGap(filling, design),
    wrap: core.wrap ? fillSheet(filling, book, core.wrap, 'core.wrap') : null,
    potted: surroundings.impregnation === 'potted' && proven,
    closedJoint: closedJoint(filling, proven),
  };
}

function fillWall(filling: Filling, book: Book, design: Design): BuildWall {
  const { wall } = design.former;
  switch (wall.kind) {
    case 'moulded':
      return { kind: 'moulded', thickness: wall.thickness.value };
    case 'plies':
      return { kind: 'plies', ...fillSheet(filling, book, wall, 'former.wall') };
    case 'unknown': {
      const best = filling.unknown('former.wall', plainly('unshown-ply')) === 'best';
      return { kind: 'moulded', thickness: best ? book.leastThickness().value : NO_WALL };
    }
  }
}

function outerGap(filling: Filling, design: Design): Nm {
  const { outerGap: gap } = design.core;
  if (isCoreOutOfReach(design, filling.choice)) return FAR;
  if (isKnown(gap)) return gap.value;
  // a core on a third circuit shuts ways, and of a bond that is not known it may be on any
  const owner = coreCircuit(design);
  const end =
    owner === null
      ? filling.unknown('core.outerGap', plainly('no-length'))
      : filling.room('core.outerGap', owner, plainly('no-length'));
  return end === 'best' ? FAR : nm(0);
}

function mouldingStuff(filling: Filling, book: Book, design: Design): StuffId {
  const { material } = design.former;
  const known = typeof material === 'string' ? groupOf(formerById(material)?.group ?? null) : material;
  const group = groupOrAssumed(filling, known, 'former.material');
  const id = typeof material === 'string' ? material : null;
  const { value, because: why } = book.shownPerMm(id);
  const isBest =
    id === null
      ? isBestField(filling.choice, 'former.material')
      : filling.unknown('former.material', { as: 'per-mm', peak: value }, 'house-rule') === 'best';
  return filling.stuffs.id({
    perMm: isBest ? Infinity : value,
    material: id,
    solid: nm(0),
    kind: 'wall',
    alike: 'moulding',
    group,
    strength: null,
    stated: false,
    thickness: nm(0),
    bonded: null,
    layers: null,
    because: because('moulding', { material: id, group }, [], [why]),
  });
}

function closedJoint(filling: Filling, proven: boolean): StuffId {
  // a short closed joint is one ply of unknown strength: functional at worst, basic at best
  const best = proven && filling.choice.at === 'best';
  return filling.stuffs.id({
    kind: 'closed-joint',
    perMm: 0,
    material: null,
    solid: nm(0),
    alike: 'closed joint',
    group: 'IIIb',
    strength: best ? 'whatever' : null,
    stated: false,
    thickness: nm(0),
    bonded: null,
    layers: null,
    because: because('closed-joint', { proven }),
  });
}
