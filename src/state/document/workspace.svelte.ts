// All that the sheet shows, in one place: the build, what is picked, and what follows from both.
// Made once by the page and handed down by context; it knows no component.

import { createContext } from 'svelte';
import { circuitLooks, type CircuitLook } from '#words/design/circuit-look.ts';
import { worstFirst } from '#words/verdict/pair-words.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import type { Design } from '#model/design.ts';
import { Waiting } from '#state/judging/waiting.svelte.ts';
import type { Editor } from './editor.svelte.ts';
import type { PairVerdict, Verdict, WeakSpot } from '#state/judging/judged.ts';
import { duplicateLayers, moveLayers } from '#model/edit/layer-edits.ts';
import { Placing } from './placing.svelte.ts';
import { isPair, Selection, spotKey } from './selection.svelte.ts';
import { Templates } from '#state/storage/templates.svelte.ts';
import { Trial } from './trial.svelte.ts';
import { LengthUnitState } from './length-unit.svelte.ts';
import type { ThemeState } from './theme.svelte.ts';

export class Workspace {
  readonly editor: Editor;
  readonly theme: ThemeState;
  readonly selection = new Selection();
  readonly waiting = new Waiting();
  readonly placing: Placing;
  readonly trial: Trial;
  readonly templates = new Templates();
  readonly lengths = new LengthUnitState();

  constructor(editor: Editor, theme: ThemeState) {
    this.editor = editor;
    this.theme = theme;
    this.placing = new Placing(editor);
    this.trial = new Trial(editor);
  }

  /** What the judgement is of; before there is one, the build as read. */
  get design(): Design | null {
    return this.editor.judged?.design ?? this.editor.design;
  }

  get judgement(): Drawable | null {
    return this.editor.judged?.judgement ?? null;
  }

  get verdict(): Verdict | null {
    return this.judgement?.verdict ?? null;
  }

  /** What is judged, if anything, is not the build as it is now, and will not be within a moment. */
  readonly isStale: boolean = $derived.by(() => {
    const { kind } = this.editor.standing;
    return kind === 'judging' ? this.verdict === null || this.waiting.seconds !== null : kind !== 'judged';
  });

  readonly looks: readonly CircuitLook[] = $derived.by(() => circuitLooks(this.design?.circuits ?? []));

  readonly pairs: readonly PairVerdict[] = $derived.by(() =>
    this.verdict === null ? [] : worstFirst(this.verdict),
  );

  /** The picked pair, else the worst one that asks something. */
  readonly pair: PairVerdict | null = $derived.by(
    () => this.pairs.find(({ between }) => isPair(between, this.selection.pair)) ?? this.pairs[0] ?? null,
  );

  /** Place of the picked spot in the verdict's list; null where none is picked or it is mended. */
  readonly spot: number | null = $derived.by(() => {
    const place = this.verdict?.weakSpots.findIndex((spot) => spotKey(spot) === this.selection.spot) ?? -1;
    return place < 0 ? null : place;
  });

  /** Layers that are pointed out, those of the picked spot among them: shown, not picked. */
  readonly marked: readonly number[] = $derived.by(() => [
    ...this.selection.marked,
    ...(this.spot === null || this.editor.isShifted
      ? []
      : (this.verdict?.weakSpots[this.spot]?.layers ?? [])),
  ]);

  readonly sections: readonly string[] = $derived.by(
    () => this.editor.drawn?.judgement.sections.map(({ name }) => name) ?? [],
  );

  /** The section shown: the picked one, or the first where that is no more. */
  readonly section: string = $derived.by(() =>
    this.sections.includes(this.selection.section) ? this.selection.section : (this.sections[0] ?? 'plain'),
  );

  /** Shows a section; a picked spot that lies on another one is let go. */
  pickSection(name: string): void {
    const { selection } = this;
    const spot = this.spot === null ? null : (this.verdict?.weakSpots[this.spot] ?? null);
    if (spot !== null && spot.section !== name) selection.spot = null;
    selection.section = name;
    selection.leg = null;
  }

  /** Flags of the weak spots that touch a layer, with their numbers. */
  spotsAt(layer: number): readonly { readonly number: number; readonly spot: WeakSpot }[] {
    const spots = this.editor.isShifted ? [] : (this.verdict?.weakSpots ?? []);
    return spots.flatMap((spot, i) => (spot.layers.includes(layer) ? [{ number: i + 1, spot }] : []));
  }

  /** What is picked by its place means other layers after a step back or forward. */
  undo(): void {
    this.editor.undo();
    this.#letGo();
  }

  redo(): void {
    this.editor.redo();
    this.#letGo();
  }

  #letGo(): void {
    this.selection.layers = [];
    this.selection.marked = [];
  }

  /** Copies layers; the copies are picked then. */
  copyLayers(layers: readonly number[]): void {
    const { editor, selection } = this;
    editor.change(duplicateLayers(editor.doc, layers), layers.length === 1 ? 'copy layer' : 'copy layers');
    const before = (layer: number): number => layers.filter((other) => other < layer).length;
    selection.layers = layers.map((layer) => layer + before(layer) + 1);
    if (typeof selection.openRow === 'number') selection.openRow += before(selection.openRow);
  }

  /** Moves a layer, and all that are picked with it, to just inside the one at `before`; picks and open row follow. */
  moveLayers(layer: number, before: number): void {
    const { editor, selection } = this;
    const moving = selection.layers.includes(layer) ? selection.layers : [layer];
    const { doc, placeOf } = moveLayers(editor.doc, moving, before);
    editor.change(doc, moving.length === 1 ? 'move layer' : 'move layers');
    selection.layers = moving.map(placeOf);
    if (typeof selection.openRow === 'number') selection.openRow = placeOf(selection.openRow);
  }

  look(circuit: string | null | undefined): CircuitLook | null {
    return this.looks.find((look) => look.circuit === circuit) ?? null;
  }
}

export const [useWorkspace, provideWorkspace] = createContext<Workspace>();
