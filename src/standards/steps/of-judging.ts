// What the steps hold that say what is asked of a pair and what reaches it. V, Hz; lengths in mm.

interface Governed {
  readonly column: string;
  readonly value: number;
  /** What a laboratory may take instead of interpolating; null where no line was drawn. */
  readonly nextRow: number | null;
}

export interface JudgingSteps {
  /** A run through a solid from this length on, and what it shows, V peak. */
  /** A solid by itself; `shown` null: taken to stand whatever is asked. Levels are peaks. */
  readonly 'solid-worth': {
    readonly kind: string;
    readonly shown: number | null;
    readonly basic: number | null;
    readonly reinforced: number | null;
    readonly worth: string;
  };
  readonly 'thin-sheets': {
    readonly plies: number;
    readonly basic: number | null;
    readonly reinforced: number | null;
    readonly worth: string;
  };
  readonly 'bonded-sheets': {
    readonly plies: number;
    readonly factor: number;
    readonly shown: number | null;
    readonly worth: string;
  };
  /** A distance against what is asked; null: the book has no figure. */
  readonly 'distance-worth': {
    readonly length: number;
    readonly basic: number | null;
    readonly reinforced: number | null;
    readonly worth: string;
  };
  /** Insulations in series, and lengths over floating conductors added up. */
  readonly 'path-grade': {
    readonly length: number;
    /** Lengths of pieces under X, which count nothing. */
    readonly uncounted: readonly number[];
    readonly plies: number;
    readonly insulations: number;
    readonly grade: string;
  };
  /** No path is left: solids through which none leads. */
  readonly 'strong-solids': { readonly solids: number };
  readonly 'strong-run': {
    readonly material: string | null;
    readonly from: number;
    readonly shown: number;
  };
  readonly 'required-clearance': Governed & {
    readonly largest: number;
    readonly factor: number;
    readonly altitude: number;
    /** The largest voltage that lasts. */
    readonly lasting: number;
    readonly withstand: number;
  };
  readonly 'required-creepage': Governed & {
    readonly group: string;
    readonly pollutionDegree: number;
    readonly governs: 'rms' | 'high-frequency' | 'clearance';
  };
  /** What a market changes: V, overvoltage category or m. */
  readonly national: {
    readonly market: string;
    readonly quantity: 'mains' | 'entered' | 'category' | 'altitude';
    readonly value: number;
  };
  /** To the next higher rated impulse voltage, V. */
  readonly 'impulse-step': { readonly from: number; readonly to: number };
  /** What the working peak has above the rated one comes on top of the impulse. */
  readonly 'impulse-raised': { readonly impulse: number; readonly excess: number; readonly value: number };
  /** A peak times a factor, V. */
  readonly 'peak-raised': { readonly peak: number; readonly factor: number; readonly value: number };
  /** What is added to a clearance, mm. */
  readonly 'additional-clearance': {
    readonly before: number;
    readonly more: number;
    readonly value: number;
  };
  /** The row of the mains and what is added to it for a short time, V rms; `value` is its peak. */
  readonly 'short-overvoltage': { readonly row: number; readonly add: number; readonly value: number };
  /** The one row of means of operator protection, mm. */
  readonly 'operator-row': {
    readonly means: string;
    readonly quantity: string;
    readonly value: number;
  };
  /** Factor times the working voltage plus a term, V rms; `value` is its peak. */
  readonly 'test-formula': {
    readonly factor: number;
    readonly rms: number;
    readonly term: number;
    readonly value: number;
  };
  readonly 'test-level': { readonly column: string; readonly value: number };
  readonly 'high-frequency-test': {
    readonly peak: number;
    readonly factor: number;
    readonly reduction: number;
    readonly value: number;
  };
  readonly 'bridging-share': { readonly value: number; readonly clearance: number; readonly divisor: number };
  readonly 'judged-pair': {
    readonly needed: string | null;
    readonly achieved: string;
    readonly verdict: string;
  };
  readonly 'behind-reinforced': { readonly circuit: string };
  /** Headings: what they say stands in the steps below. */
  readonly distance: object;
  readonly stress: object;
  readonly 'through-insulation': object;
  readonly test: object;
  readonly verdict: object;
  readonly bridge: {
    readonly id: string;
    readonly kind: string;
    readonly grade: string;
    readonly unsafe: string | null;
  };
  readonly 'bridge-class': { readonly class: string; readonly grade: string };
  readonly 'bridge-series': { readonly inSeries: number; readonly each: string; readonly grade: string };
  readonly 'bridge-limits': {
    readonly mains: number;
    readonly mainsMost: number;
    readonly category: number;
    readonly categoryMost: number;
    readonly from: string;
    readonly grade: string;
  };
  readonly 'bridge-approval': { readonly approval: string; readonly most: string };
  readonly 'bridge-distances': {
    readonly clearance: number | null;
    readonly creepage: number | null;
    readonly byClearance: string;
    readonly byCreepage: string;
    readonly grade: string;
  };
  readonly 'bridge-rating': { readonly rated: number; readonly rms: number; readonly low: boolean };
  readonly 'bridge-rating-assumed': { readonly rms: number };
  readonly 'bridge-alone': { readonly inSeries: number };
  readonly 'outside-grade': {
    readonly what: string;
    readonly clearance: number | null;
    readonly creepage: number | null;
    readonly materialGroup: string;
    readonly byClearance: string | null;
    readonly byCreepage: string | null;
    readonly grade: string | null;
  };
}
