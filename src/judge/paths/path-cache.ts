// What was solved before: sections of a build, networks of sections, pieces. What a change did not touch is not solved
// again. Keyed by all that shapes it; what the last two judgings did not ask for is dropped, networks after each.

import type { Build, StuffId } from '#solver/section/build.ts';
import type { Counting } from '#solver/paths/ply-count.ts';
import { findPieces, networkOf, type SectionLimits } from '#solver/paths/find-pieces.ts';
import { StuffNumbers } from '#judge/assume/stuff.ts';
import { GeometryKeys } from '#judge/paths/keyed/geometry-key.ts';
import { knownBetween, type KnownLengths } from './known-lengths.ts';
import { LayOut, type LayOutOptions } from '#solver/placing/lay-out.ts';
import type { Network } from '#solver/network/network.ts';
import { PathFinder } from '#solver/paths/path-finder.ts';
import type { Piece, SolidOptions } from '#solver/network/pieces.ts';
import type { Section } from '#solver/section/section.ts';
import { SolidsKeys } from '#judge/paths/keyed/solids-key.ts';
import { type KeyedSection, SectionList } from '#judge/paths/keyed/section-list.ts';

/** Data only, so that all of it tells two searches apart. */
export interface KeyedLimits extends Pick<SectionLimits, 'metric' | 'x' | 'length' | 'window'> {
  /** Conductors that no piece asked for lies between; left out: every two are searched. */
  readonly farEnds?: readonly string[];
  /** What is known already; left out: nothing. */
  readonly known?: KnownLengths;
  /** No clearance longer than this will be looked for in the section, now or later in this judging. Shapes no piece. */
  readonly sightsUpTo: number;
}

/** Networks are by far the largest; those of one build with its ends moved one way are used again and again. */
const MOST_NETWORKS = 100;

/** Builds of which sections are kept, and searches of which pieces are. */
const MOST_LAY_OUTS = 40;
const MOST_SEARCHES = 20_000;

/** So many places where a pair fell short are tried first. */
const MOST_SHORT = 12;

/** A buffer that outlives one judging, hence a class. */
export class PathCache {
  readonly stuffs = new StuffNumbers();
  readonly #layOuts = new Generations<LayOut>(MOST_LAY_OUTS);
  readonly #sections = new Generations<SectionList>(MOST_LAY_OUTS);
  readonly #builds = new WeakMap<Build, ToldBuild>();
  readonly #keyed = new WeakMap<Section, KeyedSection>();
  readonly #geometries = new Generations<number>();
  readonly #pieces = new Generations<readonly Piece[]>(MOST_SEARCHES);
  readonly #networks = new Generations<Network>(MOST_NETWORKS);
  readonly #short = new Map<string, readonly (readonly string[])[]>();
  readonly #finder = new PathFinder();
  /** Numbers of data by what it says, and of the objects that were told before. */
  readonly #told = new Generations<number>();
  readonly #numbers = new WeakMap<object, number>();
  readonly #searches = new WeakMap<KeyedLimits, Search>();
  readonly #numberOfText = (told: string): number => this.#told.get(told, () => this.#count++);
  readonly #keys = new GeometryKeys(this.#numberOfText);
  readonly #solids = new SolidsKeys(this.#numberOfText);
  #count = 0;

  /** Call before each judging of a document. */
  nextGeneration(): void {
    this.#layOuts.next();
    this.#sections.next();
    this.#geometries.next();
    this.#pieces.next();
    this.#told.next();
    this.#networks.clear();
    this.stuffs.clear();
    this.#short.clear();
  }

  /** Sections of a build, each distinct geometry once, the plain one first. */
  sections(build: Build, strength: LayOutOptions): SectionList {
    return this.#listOf(build, strength, null, () => []);
  }

  /** Those in which only what belongs to these circuits or to none has moved, as far as none of `sections` is the same. */
  sectionsMovedAlone(
    build: Build,
    circuits: readonly [string, string],
    strength: LayOutOptions,
  ): SectionList {
    const known = () => this.sections(build, strength).all.map(({ geometry }) => geometry);
    return this.#listOf(build, strength, circuits, known);
  }

  #listOf(
    build: Build,
    strength: LayOutOptions,
    circuits: readonly [string, string] | null,
    known: () => Iterable<number>,
  ): SectionList {
    const { common, own } = this.#toldOf(build);
    const asked = JSON.stringify([strength, circuits]);
    return this.#sections.get(`${asked} ${common} ${own}`, () => {
      const layOut = this.#layOuts.get(`${asked} ${common}`, () => new LayOut(build, strength, circuits));
      return new SectionList(build, layOut, (section) => this.#keyedOf(section), known());
    });
  }

  #toldOf(build: Build): ToldBuild {
    const known = this.#builds.get(build);
    if (known) return known;
    const { lays, past, ...rest } = build;
    const told = {
      common: this.#numberOfText(JSON.stringify(rest)),
      own: this.#numberOfText(JSON.stringify([lays, past])),
    };
    this.#builds.set(build, told);
    return told;
  }

  #keyedOf(section: Section): KeyedSection {
    const known = this.#keyed.get(section);
    if (known) return known;
    const geometry = this.#geometries.get(this.#keys.of(section), () => this.#count++);
    // its parts have served to tell it
    const keyed = { ...section, parts: undefined, geometry };
    this.#keyed.set(section, keyed);
    return keyed;
  }

  /** Leads laid in where a pair was found to fall short in this judging: what is likely to fail it again. */
  shortAt(between: readonly [string, string]): readonly (readonly string[])[] {
    return this.#short.get(between.join('\n')) ?? [];
  }

  noteShort(between: readonly [string, string], { lays }: Section): void {
    const key = between.join('\n');
    const known = this.#short.get(key) ?? [];
    const isKnown = known.some((names) => names.join('\n') === lays.join('\n'));
    if (known.length < MOST_SHORT && !isKnown) this.#short.set(key, [...known, lays]);
  }

  pieces(
    section: KeyedSection,
    options: SolidOptions,
    closedJoint: StuffId,
    counting: Counting,
    limits: KeyedLimits,
  ): readonly Piece[] {
    if (limits.window !== null) {
      // conductors that nothing joins in the whole section are not joined in a part of it
      const whole = this.pieces(section, options, closedJoint, counting, this.#searchOf(limits).whole);
      if (whole.length === 0) return whole;
    }
    const search = this.#searchOf(limits);
    const of = this.#solids.passing(section, closedJoint, options);
    const counted = this.#solids.counted(section, closedJoint, options, counting, of);
    return this.#pieces.get(`${of} ${counted.number} ${search.number}`, () => {
      const { wanted } = search;
      const known = this.#networks.find(of);
      const net =
        known && known.sightsUpTo >= wanted
          ? known
          : networkOf(section, options, closedJoint, Math.max(wanted, limits.sightsUpTo), this.#finder);
      this.#networks.set(of, net);
      return findPieces(net, counted.counting, search.limits, this.#finder);
    });
  }

  /** Worked out once for each: callers hand in the same limits for many sections. */
  #searchOf(limits: KeyedLimits): Search {
    const known = this.#searches.get(limits);
    if (known) return known;
    const { metric, x, length, window, farEnds, known: lengths } = limits;
    const asked = {
      metric,
      x,
      length,
      window,
      ...(farEnds && { farEnds }),
      ...(lengths && { known: lengths }),
    };
    // the clearance crosses gaps of any width
    const number = this.#numberOf(metric === 'clearance' ? { ...asked, x: 0 } : asked);
    const wanted = metric === 'clearance' ? Math.max(...length) : 0;
    const search = { number, wanted, limits: sectionLimits(asked), whole: { ...limits, window: null } };
    this.#searches.set(limits, search);
    return search;
  }

  /** The same for data that says the same, each object told once. */
  #numberOf(data: object): number {
    const known = this.#numbers.get(data);
    if (known !== undefined) return known;
    const number = this.#told.get(JSON.stringify(data, finite), () => this.#count++);
    this.#numbers.set(data, number);
    return number;
  }
}

/** What a build has in common with others, and its leads, each told apart by a number. */
interface ToldBuild {
  readonly common: number;
  readonly own: number;
}

/** What is looked for, told apart by a number. */
interface Search {
  readonly number: number;
  /** Sight lines up to this length are needed. */
  readonly wanted: number;
  readonly limits: SectionLimits;
  /** The same without a window. */
  readonly whole: KeyedLimits;
}

/** In JSON what has no end and what is left out are told alike. */
const finite = (_: string, value: unknown): unknown => (value === Infinity ? 'without end' : value);

function sectionLimits({ farEnds, known, ...limits }: Omit<KeyedLimits, 'sightsUpTo'>): SectionLimits {
  return {
    ...limits,
    ...(farEnds && { ends: (conductor: string) => !farEnds.includes(conductor) }),
    ...(known && { between: knownBetween(known) }),
  };
}

/** Keeps what was asked for in this generation and the one before; begins one by itself when it holds `most`. */
class Generations<T> {
  readonly #most: number;
  #young = new Map<string, T>();
  #old = new Map<string, T>();

  constructor(most = Infinity) {
    this.#most = most;
  }

  next(): void {
    this.#old = this.#young;
    this.#young = new Map();
  }

  clear(): void {
    this.next();
    this.next();
  }

  get(key: string, make: () => T): T {
    const value = this.find(key) ?? make();
    this.set(key, value);
    return value;
  }

  find(key: string): T | undefined {
    return this.#young.get(key) ?? this.#old.get(key);
  }

  set(key: string, value: T): void {
    if (this.#young.size >= this.#most) this.next();
    this.#young.set(key, value);
  }
}
