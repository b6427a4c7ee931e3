// The photographs on the desk: which one lies open, what is being picked on it, and the steps that this makes in the build.
// All that is kept stands in the build itself; here is only what the hand is about.

import { levelling, withinHalfTurn, type PicturePoint } from '#geometry/photo-span.ts';
import type { Laying } from '#geometry/photo-laying.ts';
import { photoScale } from '#geometry/photo-scale.ts';
import { MEASURES, pointsOf, type Measure } from '#model/measure/measurement-note.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import { keptPoint } from '#model/measure/note-text.ts';
import type { Editor } from '#state/document/editor.svelte.ts';
import { designText } from '#state/storage/files.ts';
import { edgeSent, type DraggedEdge } from './photo-edge.ts';
import { carried, type Grip, gripAt } from './photo-grip.ts';
import { typedMm } from './typed-mm.ts';
import { takePicture } from './photo-intake.ts';
import * as record from './photo-record.ts';

export const TOOLS = ['scale', 'level', ...MEASURES, 'turns'] as const;
export type Tool = (typeof TOOLS)[number];

/** Pixels of the screen within which a press takes a mark away. */
const MARK_REACH = 7;

export class PhotoDesk {
  /** The photograph that was asked for, by its id. */
  picked: string | null = $state(null);
  /** The measurement that is marked on it. */
  chosen: string | null = $state(null);
  /** What the picked points are for. */
  points: readonly PicturePoint[] = $state.raw([]);
  /** How the open photograph was laid under the section by hand; null: on the flanges. */
  laid: { readonly photo: string; readonly laying: Laying } | null = $state.raw(null);
  /** How far a point may lie from its true place at best, pixels. */
  half = $state(1);
  /** The same for the points in hand: no finer than what one could see when picking. */
  #pickedTo = $state(1);
  /** The length that the scale is told by, as typed. */
  knownLength = $state('10 mm');
  knownError = $state('0.1 mm');
  /** A point that lies there already and is being put elsewhere. */
  carry: { readonly grip: Grip; readonly to: PicturePoint } | null = $state.raw(null);
  /** What came of the last thing that was done. */
  says: { readonly text: string; readonly isWrong: boolean } | null = $state.raw(null);
  isBusy = $state(false);
  #tool: Tool = $state('scale');
  readonly #editor: Editor;

  constructor(editor: Editor) {
    this.#editor = editor;
  }

  readonly photos: readonly record.Photo[] = $derived.by(() => record.photosOf(this.#editor.shown));

  readonly photo: record.Photo | null = $derived.by(
    () => this.photos.find(({ id }) => id === this.picked) ?? this.photos.at(-1) ?? null,
  );

  readonly all: readonly record.Measurement[] = $derived.by(() => record.measurementsOf(this.#editor.shown));

  /** On the open photograph. */
  readonly measurements: readonly record.Measurement[] = $derived.by(() =>
    this.all.filter(({ note }) => note.photo === this.photo?.id),
  );

  get tool(): Tool {
    return this.#tool;
  }

  set tool(tool: Tool) {
    this.#tool = tool;
    this.points = [];
    this.says = null;
  }

  /** Points that the tool takes. */
  get wanted(): number {
    if (this.#tool === 'turns') return Number.POSITIVE_INFINITY;
    return this.#tool === 'scale' || this.#tool === 'level' ? 2 : pointsOf(this.#tool);
  }

  open(photo: string, measurement: string | null = null): void {
    this.picked = photo;
    this.chosen = measurement;
    this.points = [];
    this.says = null;
  }

  /** `of`: path of what the photographs show, which they belong to. */
  async take(files: readonly File[], of: string | null = null): Promise<void> {
    for (const file of files) {
      this.isBusy = true;
      const taken = await takePicture(file, designText(this.#editor.doc).length).finally(
        () => (this.isBusy = false),
      );
      if (taken.kind === 'refused') {
        this.#tell(taken.says, true);
        continue;
      }
      const { address, width, height, says } = taken;
      const note = { words: file.name.slice(0, 100), width, height, turned: 0, scale: null };
      const [doc, id] = record.addPhoto(this.#editor.doc, address, note, of === null ? [] : [of]);
      this.#editor.change(doc, 'photograph');
      this.open(id);
      this.tool = 'scale';
      this.#tell(`${file.name}: ${says}.`);
    }
  }

  /** `seen`: pixels of the picture that one could just tell apart when picking. */
  pick(point: PicturePoint, seen = 0): void {
    if (this.photo === null) return;
    if (this.#tool === 'turns') return this.#mark(point, Math.max(1, seen) * MARK_REACH);
    const points = this.points.length >= this.wanted ? [] : this.points;
    const finest = points.length === 0 ? this.half : this.#pickedTo;
    this.#pickedTo = Math.max(finest, Math.ceil(seen * 10) / 10);
    this.points = [...points, keptPoint(point)];
    this.says = null;
    if (this.points.length < this.wanted || this.#tool === 'scale') return;
    if (this.#tool === 'level') this.#level();
    else this.#measure(this.#tool as Measure);
  }

  /** One more turn is marked; a mark that lies there already is taken away. */
  #mark(point: PicturePoint, reach: number): void {
    this.says = null;
    const near = this.points.findIndex(({ x, y }) => Math.hypot(x - point.x, y - point.y) <= reach);
    this.points = near < 0 ? [...this.points, keptPoint(point)] : this.points.filter((_, i) => i !== near);
  }

  /** The marked turns become those of a layer of windings, with their marks as evidence. */
  sendCount(layer: number): void {
    const { photo, points } = this;
    if (photo === null || points.length === 0) return;
    const counted = `${points.length} turns counted on ${photo.id}`;
    const doc = record.addCount(this.#editor.doc, {
      photo: photo.id,
      points,
      path: `layers[${layer}].turns`,
    });
    this.#change(doc, counted);
    this.points = [];
    this.#tell(`${counted}.`);
  }

  /** Takes the last point back. */
  unpick(): void {
    this.points = this.points.slice(0, -1);
  }

  /** Takes up the point that lies within reach of a place, in pixels of the picture; false where none does. */
  takeUp(place: PicturePoint, reach: number): boolean {
    if (this.photo === null) return false;
    const { photo, points: hand, measurements } = this;
    const grip = gripAt(place, reach, { hand, photo, measurements });
    this.carry = grip === null ? null : { grip, to: place };
    return grip !== null;
  }

  /** Puts the point down where it was carried, as one step. `seen` as in `pick`. */
  putDown(seen: number): void {
    const { carry, photo } = this;
    this.carry = null;
    if (carry === null || photo === null) return;
    const { of } = carry.grip;
    const finest = Math.ceil(seen * 10) / 10;
    const moved = { grip: carry.grip, to: keptPoint(carry.to) };
    if (of === 'hand') {
      this.#pickedTo = Math.max(this.#pickedTo, finest);
      this.points = carried(this.points, of, moved);
    } else if (of === 'scale') this.#moveScale(photo, moved, finest);
    else this.#movePoint(photo, of.measurement, moved, finest);
  }

  #moveScale(photo: record.Photo, moved: NonNullable<typeof this.carry>, finest: number): void {
    const { scale } = photo.note;
    if (scale === null) return;
    const [from = scale.from, to = scale.to] = carried([scale.from, scale.to], 'scale', moved);
    const half = Math.max(scale.half, finest);
    const known = { value: scale.length, plusMinus: scale.plusMinus };
    if (photoScale(known, from, to, half) === null)
      return this.#tell('Too short to tell a scale: the point stays where it was.', true);
    const note = { ...photo.note, scale: { ...scale, from, to, half } };
    this.#change(record.changePhoto(this.#editor.doc, photo, note), `scale of ${photo.id}`);
  }

  #movePoint(photo: record.Photo, id: string, moved: NonNullable<typeof this.carry>, finest: number): void {
    const measurement = this.measurements.find((each) => each.id === id);
    if (measurement === undefined) return;
    const { measure, points: before } = measurement.note;
    const points = carried(before, { measurement: id }, moved);
    const half = Math.max(measurement.note.half, finest);
    if (record.pickedSpan({ measure, points, half }) === null)
      return this.#tell('Nothing can be measured there: the point stays where it was.', true);
    const doc = record.changePoints(this.#editor.doc, measurement, photo, { points, half });
    this.#change(doc, `move a point of ${id}`);
    this.chosen = id;
  }

  /** The picked line is as long as the typed length says. */
  setScale(): void {
    const { photo } = this;
    const [from, to] = this.points;
    const length = typedMm(this.knownLength, true);
    const plusMinus = typedMm(this.knownError, false);
    if (photo === null || from === undefined || to === undefined)
      return this.#tell('Pick its two ends.', true);
    if (length === null || plusMinus === null)
      return this.#tell('The length must be one such as 10 mm, its error one such as 0.1 mm.', true);
    if (photoScale({ value: length, plusMinus }, from, to, this.#pickedTo) === null)
      return this.#tell('Too short to tell a scale: pick two points farther apart, or a surer length.', true);
    const scale = { length, plusMinus, from, to, half: this.#pickedTo };
    this.#change(
      record.changePhoto(this.#editor.doc, photo, { ...photo.note, scale }),
      `scale of ${photo.id}`,
    );
    this.tool = 'distance';
  }

  /** Turns the photograph as it is shown; what was measured stays. */
  turn(degrees: number): void {
    const { photo } = this;
    if (photo === null) return;
    const turned = Number(withinHalfTurn(degrees).toFixed(2)) + 0;
    this.#change(record.changePhoto(this.#editor.doc, photo, { ...photo.note, turned }), `turn ${photo.id}`);
  }

  nameMeasurement(measurement: record.Measurement, words: string): void {
    this.#change(
      record.changeWords(this.#editor.doc, measurement, words.slice(0, 200)),
      'name a measurement',
    );
  }

  namePhoto(photo: record.Photo, words: string): void {
    const note = { ...photo.note, words: words.slice(0, 500) };
    this.#change(record.changePhoto(this.#editor.doc, photo, note), 'name a photograph');
  }

  /** To several fields as one step. */
  send(measurement: record.Measurement, ...paths: readonly string[]): void {
    const doc = paths.reduce((edited, path) => record.sendTo(edited, measurement, path), this.#editor.doc);
    this.#change(doc, `${measurement.id} to ${paths.length === 1 ? 'a field' : `${paths.length} fields`}`);
  }

  /** Measured and sent to its field as one step; false where the picture does not show it, or too small to tell. */
  sendEdge(edge: DraggedEdge): boolean {
    const sent = this.photo && edgeSent(this.#editor.doc, this.photo, edge, this.half);
    if (sent === null) return false;
    this.#change(sent.doc, `${edge.label} by the photograph`);
    this.chosen = sent.id;
    return true;
  }

  /** The step of taking apart that a photograph was taken at, by the path of what it shows; null: none. */
  belong(photo: record.Photo, path: string | null): void {
    const fields = `evidence[${photo.index}].fields`;
    this.#change(editDesign(this.#editor.doc, fields, path === null ? [] : [path]), `what ${photo.id} shows`);
  }

  takeOut(measurement: record.Measurement): void {
    this.#change(record.removeMeasurement(this.#editor.doc, measurement), 'take out a measurement');
  }

  takeOutPhoto(photo: record.Photo): void {
    this.#change(record.removePhoto(this.#editor.doc, photo), 'take out a photograph');
    this.open('');
  }

  #level(): void {
    const [from, to] = this.points;
    const turn = from === undefined || to === undefined ? null : levelling(from, to);
    this.points = [];
    if (turn === null) return this.#tell('Both points lie in one place: pick again.', true);
    this.turn(turn);
  }

  #measure(measure: Measure): void {
    const { photo, points } = this;
    const half = this.#pickedTo;
    this.points = [];
    if (photo === null) return;
    if (record.pickedSpan({ measure, points, half }) === null)
      return this.#tell('These lines are too short, or lean too far towards each other: pick again.', true);
    const by = record.measuredBy({ measure, points, half }, photo.note);
    const note = { words: '', measure, photo: photo.id, points, half, ...by };
    const [doc, id] = record.addMeasurement(this.#editor.doc, note);
    this.#change(doc, `measure a ${measure}`);
    this.chosen = id;
  }

  #change(doc: ReturnType<typeof record.changeWords>, says: string): void {
    this.#editor.change(doc, says);
    this.says = null;
  }

  #tell(text: string, isWrong = false): void {
    this.says = { text, isWrong };
  }
}
