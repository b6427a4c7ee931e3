// A design begun: what was typed so far, and every kind of construction laid out on the chosen former and judged, the chosen
// one first. An empty figure is not known.

import { formerStarts, type FormerStart } from '#state/fields/field-options.ts';
import { designEntries, entryFault, missingEntries } from './design-entries.ts';
import {
  constructions,
  designedBuild,
  type Construction,
  type DesignedBuild,
  type DesignWish,
} from './designed-build.ts';

const OWN = { width: '', height: '', wall: '', flange: '' };
/** A moment after the last key: constructions are judged one after the other. */
const PAUSE_MS = 200;

export class Designing {
  construction: Construction = $state('margins');
  material = $state('');
  bond = $state('');
  /** `own`: sizes of one's own. */
  former = $state('own');
  isJudging = $state(false);
  #typed: Readonly<Record<string, string>> = $state.raw(OWN);
  #built: Partial<Record<Construction, DesignedBuild>> = $state.raw({});
  readonly #judging: Parameters<typeof designedBuild>[1];

  constructor(judging: Parameters<typeof designedBuild>[1]) {
    this.#judging = judging;
  }

  text(name: string): string {
    return this.#typed[name] ?? '';
  }

  type(name: string, text: string): void {
    this.#typed = { ...this.#typed, [name]: text };
  }

  /** `more`: formers of one's own. */
  chooseFormer(id: string, more: readonly FormerStart[] = []): void {
    this.former = id;
    const { width, height, wall, flange } =
      [...more, ...formerStarts].find((former) => former.id === id) ?? OWN;
    this.#typed = { ...this.#typed, width, height, wall, flange };
  }

  /** What is still to be said before anything can be laid out. */
  readonly missing = $derived.by(() => missingEntries((name) => this.text(name)));

  readonly isReadable = $derived.by(
    () =>
      this.missing.length === 0 &&
      Object.values(designEntries)
        .flat()
        .every((entry) => entryFault(entry, this.text(entry.name)) === null),
  );

  readonly wish: Omit<DesignWish, 'construction'> = $derived.by(() => {
    const text = (name: string): string => this.text(name);
    return {
      former: { width: text('width'), height: text('height'), wall: text('wall'), flange: text('flange') },
      material: this.material,
      bond: this.bond,
      gap: text('gap'),
      supply: text('supply'),
      output: text('output'),
      turns: [text('turnsP'), text('turnsS')],
      wires: [text('wireP'), text('wireS')],
      switching: text('switching'),
      reflected: text('reflected'),
      spike: text('spike'),
    };
  });

  /** Null until it is judged. */
  built(construction: Construction): DesignedBuild | null {
    return this.#built[construction] ?? null;
  }

  /** Judges what is wished now, in a moment; to be called in an effect. Returns what stops it. */
  follow(): () => void {
    const { wish } = this;
    this.#built = {};
    let isOld = false;
    const timer = this.isReadable ? setTimeout(() => void fill(), PAUSE_MS) : undefined;
    const fill = async (): Promise<void> => {
      this.isJudging = true;
      const first = this.construction;
      const order = [...constructions].sort((a, b) => Number(b.id === first) - Number(a.id === first));
      for (const { id } of order) {
        const found = await designedBuild({ ...wish, construction: id }, this.#judging);
        if (isOld) return;
        this.#built = { ...this.#built, [id]: found };
      }
      this.isJudging = false;
    };
    return () => {
      isOld = true;
      clearTimeout(timer);
    };
  }
}
