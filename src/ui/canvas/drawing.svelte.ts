// The drawing as it stands: the scene of the picked section, how it is looked at, its handles, what is in the hand, and from
// all of these the picture that is painted. Made once by the component that shows it.

import { numberPlates } from '#drawing/marks/note-marks.ts';
import { palette } from '#drawing/scene/palette.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import type { View } from '#drawing/scene/view.ts';
import type { Workspace } from '#state/document/workspace.svelte.ts';
import type { Drag } from '#ui/canvas/handles/drag.ts';
import { ahead } from '#ui/canvas/handles/pending-handles.ts';
import { cornerOverview } from '#ui/canvas/viewport/corner-overview.ts';
import { flagsInSight, type PlacedFlag } from '#ui/canvas/flags/flags-in-sight.ts';
import { gripPlate, gripsOf, REACH, stands, type Grip } from '#ui/canvas/grips/grip.ts';
import { Hand } from '#ui/canvas/grips/pointer-tool.svelte.ts';
import type { DrawnSection, Handle } from '#ui/canvas/handles/handle.ts';
import { handlesOf } from '#ui/canvas/handles/handles.ts';
import type { FieldGround, Picture } from '#ui/canvas/nodes/picture.ts';
import { Measuring } from '#ui/canvas/measuring/measuring.svelte.ts';
import { Reading } from './path-narration.svelte.ts';
import { Viewport, type Overview } from '#ui/canvas/viewport/viewport.svelte.ts';
import { sightsOf } from '#ui/canvas/viewport/viewed.ts';

export class Drawing {
  readonly viewport: Viewport;
  readonly hand: Hand;
  readonly reading: Reading;
  readonly measuring = new Measuring();
  /** Id of the grip that has the keyboard. */
  keyed: string | null = $state(null);
  /** Layers carry their numbers, because no line leads to the list. */
  isNumbered = $state(false);
  /** The pointer is a finger. */
  isTouched = $state(false);
  readonly #workspace: Workspace;
  readonly #isStill: () => boolean;
  readonly #field: () => FieldGround | null;

  /** `focus` gives the keyboard to a grip that the pointer took; `isTaken`: something on the stage answers there itself;
   * `isStill`: no edge can be moved; `field`: drawn instead of the build's solids, on the section that it is solved on;
   * `keep`: as the hand's. */
  constructor(
    workspace: Workspace,
    focus: (id: string) => void,
    isTaken: (x: number, y: number) => boolean,
    isStill: () => boolean = () => false,
    field: () => FieldGround | null = () => null,
    keep: (drag: Drag, view: View) => boolean = () => false,
  ) {
    this.#workspace = workspace;
    this.#isStill = isStill;
    this.#field = field;
    this.viewport = new Viewport(() => sightsOf(this.scene));
    this.hand = new Hand(workspace, this.viewport, {
      scene: () => this.scene,
      section: () => this.section,
      isTaken,
      measuring: this.measuring,
      isStill,
      focus,
      keep: (drag) => keep(drag, this.viewport.view),
    });
    this.reading = new Reading(
      () => this.scene?.path ?? null,
      workspace.selection,
      () => matchMedia('(prefers-reduced-motion: reduce)').matches,
    );
  }

  readonly #isField: boolean = $derived.by(() => this.#field() !== null);

  readonly #name: string = $derived.by(() =>
    this.#isField ? (this.#workspace.sections[0] ?? 'plain') : this.#workspace.section,
  );

  readonly scene: Scene | null = $derived.by(() => {
    const { editor, pair, spot } = this.#workspace;
    if (editor.drawn === null) return null;
    const { design, judgement } = editor.drawn;
    const scene = sceneOf(design, judgement, this.#name, { pair: pair?.between ?? null, spot });
    // the field has flags of its own
    return this.#isField && scene !== null ? { ...scene, path: null, otherPaths: [], flags: [] } : scene;
  });

  readonly section: DrawnSection | null = $derived.by(
    () => this.#workspace.editor.drawn?.judgement.sections.find(({ name }) => name === this.#name) ?? null,
  );

  readonly handles: readonly Handle[] = $derived.by(() => {
    const { drawn, shown } = this.#workspace.editor;
    const { section } = this;
    const found =
      drawn === null || section === null || this.#isStill()
        ? []
        : ahead(handlesOf(drawn.design, section), drawn.doc, shown);
    const { drag } = this.hand;
    if (drag === null) return found;
    // in its place: a grip that moves in the list would lose the keyboard
    const held = { ...drag.handle, at: drag.position };
    const others = found.map((handle) => (handle.id === held.id ? held : handle));
    return others.includes(held) ? others : [...others, held];
  });

  readonly grips: readonly Grip[] = $derived.by(() =>
    gripsOf(this.handles, this.viewport.view, this.viewport.room),
  );

  readonly flags: readonly PlacedFlag[] = $derived.by(() => {
    const { scene, viewport } = this;
    if (scene === null) return [];
    const numbers = this.isNumbered ? numberPlates(scene, { view: viewport.view }) : [];
    return flagsInSight(scene, viewport.view, viewport.room, [
      ...this.grips.filter(stands).map(gripPlate),
      ...numbers,
    ]);
  });

  /** The handle in the hand or under the pointer. */
  readonly hot: Handle | null = $derived.by(
    () => this.hand.drag?.handle ?? this.handles.find(({ id }) => id === this.hand.over) ?? null,
  );

  /** Above a close view on a narrow page; in a corner of a wide one. */
  readonly overview: Overview | null = $derived.by(() => {
    const { scene, viewport } = this;
    if (
      viewport.strip !== null ||
      scene === null ||
      viewport.isSlim ||
      viewport.isWhole ||
      viewport.isOverviewHidden
    )
      return viewport.strip;
    return cornerOverview(scene, viewport.view, viewport.room);
  });

  readonly picture: Picture | null = $derived.by(() => {
    const { scene, viewport, hand, reading } = this;
    const { selection, spot, marked, theme } = this.#workspace;
    if (scene === null || viewport.width === 0) return null;
    return {
      scene,
      theme: palette[theme.shown],
      field: this.#field(),
      view: viewport.view,
      width: viewport.width,
      height: viewport.height,
      room: viewport.room,
      density: viewport.density,
      layers: [...selection.layers, ...marked],
      lit: reading.lit,
      told: reading.told,
      flag: spot === null ? null : spot + 1,
      isNumbered: this.isNumbered,
      overview: this.overview,
      flags: this.flags,
      grips: this.grips,
      reach: this.isTouched ? REACH.touch : REACH.mouse,
      hot: this.hot?.id ?? this.keyed,
      drag: hand.drag,
      carried: hand.carried,
      surface: hand.stroke ?? hand.surface,
      measure: this.measuring.shown,
    };
  });
}
