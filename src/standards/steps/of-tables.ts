// What the steps of a look-up hold: the cell that was read, the line between two, the factors after it.
// Lengths in mm, altitude in m, else base units (V, A, Hz, degC).

/** What a table was asked. */
interface AskedOf {
  readonly quantity: string;
  readonly unit: string;
  /** Name of the axis. */
  readonly along: string;
  readonly at: number;
}

export interface MetRow extends AskedOf {
  readonly interpolated: false;
  readonly rowAt: number | string;
  readonly row: number;
  readonly value: number;
}

export interface BetweenTwoRows extends AskedOf {
  readonly interpolated: true;
  readonly lowerAt: number;
  readonly lower: number;
  readonly upperAt: number;
  readonly upper: number;
  /** Before the table's rounding. */
  readonly raw: number;
  readonly value: number;
  /** What a laboratory may take instead of interpolating. */
  readonly nextRow: number;
}

export interface TableSteps {
  readonly 'table-value': MetRow | BetweenTwoRows;
  readonly 'factor-beyond-table': AskedOf & { readonly factor: number; readonly value: number };
  /** `place`: what was asked for beside the quantity, in short words. */
  readonly 'out-of-range': { readonly quantity: string; readonly place: string };
  readonly 'pollution-factor': {
    readonly pd: number;
    readonly factor: number;
    readonly before: number;
    readonly product: number;
    readonly value: number;
  };
  readonly 'reinforced-factor': {
    readonly factor: number;
    readonly basic: number;
    readonly value: number;
    readonly nextRow: number | null;
  };
  readonly 'high-frequency-value': {
    readonly quantity: string;
    readonly peak: number;
    readonly frequency: number;
    readonly row: number;
    readonly raw: number;
  };
  readonly 'not-high-frequency': {
    readonly quantity: string;
    readonly peak: number;
    readonly frequency: number;
  };
  readonly 'not-needed': { readonly quantity: string; readonly peak: number; readonly frequency: number };
  /** `column`: the frequency of the column that was read. */
  readonly 'field-reduction': {
    readonly material: string | number;
    readonly thickness: string | number;
    readonly frequency: number;
    readonly column: number;
    readonly value: number;
  };
  /** The mean of `rows` neighbouring rows, for a material that has none. */
  readonly 'field-reduction-mean': {
    readonly first: string;
    readonly last: string;
    readonly rows: number;
    readonly frequency: number;
    readonly column: number;
    readonly value: number;
  };
  readonly 'bridging-width': { readonly pd: number; readonly value: number };
  readonly 'needed-grade': { readonly a: string; readonly b: string; readonly value: string | null };
  readonly 'cover-shown': { readonly layers: number; readonly pair: number; readonly value: number };
  /** V peak a millimetre; `row`: the material of the row that was read. */
  readonly 'field-shown': {
    readonly material: string | null;
    readonly row: string;
    readonly field: number;
    readonly share: number;
  };
  readonly 'wire-layers': { readonly at: string | number; readonly value: string | null };
  readonly capacitor: { readonly at: string | number; readonly value: string | null };
  readonly 'capacitor-rated': { readonly at: string; readonly value: number };
  readonly 'touch-current': { readonly state: string; readonly kind: string; readonly value: number };
  readonly 'touch-current-limits': { readonly state: string };
  readonly 'temperature-limit': {
    readonly thermalClass: number;
    readonly state: string;
    readonly value: number;
  };
  /** The rule by its id, and its figures as printed there. */
  readonly rule: { readonly rule: string } & Readonly<Record<string, string | number | boolean | null>>;
  readonly 'touch-network': object;
}
