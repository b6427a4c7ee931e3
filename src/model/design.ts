// A design file once read: every quantity in its branded unit, every default filled in, every reference checked.
// Plain readonly data. What the file left open stays `Unknown`; what took a default is named in `defaulted`.
// The fields are those of the file (format layerwright-design/1), in its order and under its names.

import type {
  Celsius,
  Farads,
  Hertz,
  Metres,
  Nm,
  Ohms,
  Seconds,
  VoltsDc,
  VoltsPeak,
  VoltsRms,
  Watts,
} from '#units/quantity.ts';
import type { Known, Reading, Unknown } from '#model/quantity/reading.ts';

export type Role = 'mains' | 'touchable' | 'earth' | 'isolated';
export type Side = 'left' | 'right';
export type MaterialGroup = 'I' | 'II' | 'IIIa' | 'IIIb';
export type PollutionDegree = 1 | 2 | 3;
export type OvervoltageCategory = 1 | 2 | 3 | 4;

export interface Design {
  readonly format: 'layerwright-design/1';
  readonly title: string;
  readonly origin: 'proposed' | 'dissected' | 'lesson';
  readonly made: string | null;
  readonly notes: string;
  /** Id of the rule book; whether it exists is for `rules` to say. */
  readonly rules: string;
  readonly supply: Supply;
  readonly surroundings: Surroundings;
  readonly converter: Converter | null;
  readonly workingVoltages: readonly WorkingVoltage[];
  readonly circuits: readonly Circuit[];
  readonly former: Former;
  readonly core: Core;
  readonly parts: readonly Part[];
  readonly windings: readonly Winding[];
  readonly layers: readonly Layer[];
  readonly outside: readonly Outside[];
  readonly bridges: readonly Bridge[];
  readonly evidence: readonly Evidence[];
  /** Cells of the standards' tables that the user read in a copy of their own. */
  readonly confirmed: readonly ConfirmedCell[];
  /** Taken apart from the outside: below the innermost layer listed nothing is known yet. */
  readonly unopened: boolean;
  /** Paths of fields that the file left out and that took a default which can shape the verdict. */
  readonly defaulted: readonly string[];
}

/** Named as its citation names it; `value`, as printed, is null where ours is right. */
export interface ConfirmedCell {
  readonly standard: string;
  /** Id of the table; `rules` of a rule in words. */
  readonly table: string;
  readonly cell: string;
  readonly value: number | null;
  readonly clause: string;
  /** The day on which it was read. */
  readonly on: string;
}

export interface Supply {
  readonly kind: 'ac' | 'dc';
  /** Highest voltage of the marked range; for a direct supply its direct voltage. */
  readonly voltage: Known<VoltsRms>;
  /** Lowest voltage of the marked range. */
  readonly lowest: Reading<VoltsRms>;
  /** Part of the voltage, 0.1 is 10 %. */
  readonly tolerance: number;
  readonly frequency: Known<Hertz>;
  readonly overvoltageCategory: OvervoltageCategory;
  /** The file names it. */
  readonly categoryStated: boolean;
  /** Where the build is sold, as a table names it; null: not said. */
  readonly market: string | null;
  /** A stated required withstand voltage, instead of the table's. */
  readonly transient: Known<VoltsPeak> | null;
}

export interface Surroundings {
  readonly pollutionDegree: PollutionDegree;
  readonly altitude: Known<Metres>;
  readonly hottestInsulation: Reading<Celsius>;
  readonly temperature: Temperature;
  readonly impregnation: 'none' | 'varnish' | 'potted';
  /** Covers potting, cemented joints and pollution degree 1. */
  readonly proof: 'tested' | 'none';
}

/** How the hottest insulation was measured, and in what use. */
export interface Temperature {
  readonly method: 'thermocouple' | 'resistance' | 'infrared' | Unknown;
  readonly condition: 'normal' | 'abnormal';
}

export interface Converter {
  readonly mode: ConverterMode | Unknown;
  readonly switchingFrequency: Known<Hertz>;
  readonly reflectedVoltage: Known<VoltsPeak>;
  readonly clampOvershoot: Known<VoltsPeak>;
  readonly rail: Rail | Unknown;
  /** Part of the switching period that the switch conducts, where the file gives it. */
  readonly duty: number | null;
  /** Null where the file does not give it: the bulk is then taken to be free of ripple. */
  readonly bulk: BulkCapacitor | null;
  readonly outputs: readonly ConverterOutput[];
  readonly variants: readonly ConverterVariant[];
}

export type ConverterMode = 'continuous' | 'discontinuous';

/** What the converter is fed from: the rectified mains, or a rail behind a power-factor stage at its own voltage. */
export type Rail =
  { readonly kind: 'mains' } | { readonly kind: 'boosted'; readonly voltage: Known<VoltsDc> };

/** The capacitor behind the mains rectifier, at the lowest mains that the device is marked for. */
export interface BulkCapacitor {
  readonly lowestMains: Known<VoltsRms>;
  readonly capacitance: Known<Farads>;
  /** Given out by all outputs together. */
  readonly power: Known<Watts>;
  /** Part of the power taken in. */
  readonly efficiency: number;
  /** For how long the rectifier conducts, in each half period. */
  readonly chargingTime: Known<Seconds>;
}

export interface ConverterOutput {
  readonly circuit: string;
  readonly voltage: Known<VoltsDc>;
}

export interface ConverterVariant {
  readonly name: string;
  readonly outputs: readonly ConverterOutput[];
  readonly switchingFrequency: Known<Hertz> | null;
  /** Null where the variant states none of its own. */
  readonly reflectedVoltage: Known<VoltsPeak> | null;
  readonly clampOvershoot: Known<VoltsPeak> | null;
  /** Turns of windings that differ from the file's layers, by the winding's id. */
  readonly turns: Readonly<Record<string, number>>;
}

export interface WorkingVoltage extends GivenVoltage {
  readonly between: readonly [string, string];
}

/** A working voltage that was measured or stated, of a pair or of one place. */
export interface GivenVoltage {
  readonly rms: Known<VoltsRms> | null;
  readonly peak: Known<VoltsPeak> | null;
  readonly frequency: Known<Hertz> | null;
  readonly basis: 'measured' | 'stated';
}

export interface Circuit {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  /** Whom a touchable circuit protects; asked by the medical book alone, null where the file does not say. */
  readonly means: 'patient' | 'operator' | null;
}

export interface Former {
  readonly height: Known<Nm>;
  readonly wall: Wall | Unknown;
  readonly flange: Reading<Nm>;
  /** Id in the table of formers; unknown counts as tracking group IIIb. */
  readonly material: string | Unknown;
  /** Tube, flanges and dividers are separate pieces: the seams between them are open. */
  readonly split: boolean;
  readonly chambers: readonly { readonly width: Known<Nm> }[];
  readonly dividers: readonly Known<Nm>[];
  /** Gives the length of a turn; null where nobody measured it. */
  readonly tube: Tube | null;
}

/** The tube's outer face, on which the first layer lies. */
export interface Tube {
  readonly shape: 'round' | 'rectangular';
  readonly width: Known<Nm>;
  readonly depth: Known<Nm>;
}

/** A moulded tube, or one wound from plies. */
export type Wall =
  { readonly kind: 'moulded'; readonly thickness: Known<Nm> } | ({ readonly kind: 'plies' } & Sheet);

/** Plies of one sheet material. Given figures win over the table's. */
export interface Sheet {
  readonly material: string | null;
  readonly plies: number | Unknown;
  /** Whole tape, for geometry; null: by the material. */
  readonly plyThickness: Reading<Nm> | null;
  /** Base film, for strength. */
  readonly film: Known<Nm> | null;
  readonly plyWithstand: Withstand | Unknown;
}

/** What a solid was shown to stand for 60 s. */
export type Withstand =
  | { readonly kind: 'rms'; readonly value: VoltsRms; readonly plusMinus: VoltsRms }
  | { readonly kind: 'dc'; readonly value: VoltsDc; readonly plusMinus: VoltsDc };

export interface Core {
  /** `floating`, the id of a circuit, or unknown (also when left out). */
  readonly bond: string | Unknown;
  readonly outerGap: Reading<Nm>;
  /** Tape round the core. */
  readonly wrap: Sheet | null;
}

/** An outer band, a clip: a conductor outside the window. */
export interface Part {
  readonly id: string;
  readonly bond: string;
  readonly touches: readonly string[];
}

export type WireKind = 'bare' | 'enamelled' | 'fully-insulated' | 'layer-insulated' | 'litz';

export interface Wire {
  readonly kind: WireKind | Unknown;
  readonly conductor: Reading<Nm> | null;
  /** Enamel 1 to 3; fully insulated wire 3 to 9. */
  readonly grade: number | Unknown;
  readonly insulationLayers: 1 | 2 | 3 | Unknown;
  readonly approval: 'wire-annex' | 'none' | Unknown;
  /** Wins over the tables. */
  readonly overallDiameter: Known<Nm> | null;
  /** What the cover was shown to stand. */
  readonly withstand: Withstand | Unknown;
  /** Litz: number of strands in one wire, each of `conductor` diameter, and whether it is served. */
  readonly litzStrands: number | null;
  readonly served: boolean;
}

export interface Winding {
  readonly id: string;
  readonly circuit: string;
  readonly wire: Wire;
  /** End turns bonded or taped down; earns credit only when `evidence` names the field. */
  readonly anchored: boolean;
  readonly leads: WindingLeads | 'not-judged' | Unknown;
  /** One per gap between layers of this winding that others lie in; unknown where left out although there are gaps. */
  readonly links: readonly Link[] | Unknown;
}

export interface WindingLeads {
  readonly start: Lead | Unknown;
  readonly finish: Lead | Unknown;
}

export interface Lead {
  readonly at: Side | Unknown;
  readonly exit: Side | Unknown;
  readonly way: 'slot' | 'riser' | 'top' | Unknown;
  readonly sleeve: Sleeve | null | Unknown;
  /** Length along the lead outside the flange from where it is bare. */
  readonly bareFrom: Reading<Nm>;
  /** Plies of the next tape between a lead that crosses back and its own winding. */
  readonly crossTape: number;
  /** Distance round the circumference to other leads at the same side. */
  readonly apart: Known<Nm> | null;
}

export interface Sleeve {
  readonly material: string | null;
  readonly wall: Reading<Nm>;
  /** How far it reaches inside the flange's inner face. */
  readonly into: Reading<Nm>;
  readonly withstand: Withstand | Unknown;
}

export interface Link {
  readonly side: Side | Unknown;
  readonly way: 'riser' | Unknown;
  readonly sleeve: Sleeve | null | Unknown;
}

export type Layer = WindingLayer | TapeLayer | ScreenLayer;

export interface WindingLayer {
  readonly kind: 'winding';
  readonly chamber: number;
  readonly winding: string;
  readonly turns: number | Unknown;
  readonly strands: number;
  readonly spread: boolean;
  readonly margins: Margins;
  /** A measured position along x inside the chamber; wins over the margins. */
  readonly extent: { readonly from: Known<Nm>; readonly to: Known<Nm> } | null;
  /** Lies in the band of the layer before it. */
  readonly beside: boolean;
}

export interface TapeLayer extends Sheet {
  readonly kind: 'tape';
  readonly chamber: number;
  /** Plies that cannot be parted. */
  readonly bonded: boolean;
  /** The joints between its plies are closed; needs `surroundings.proof`. */
  readonly cemented: boolean;
  readonly inset: Record<Side, Known<Nm>>;
  readonly margins: Margins;
  /** Edges turned up the flange; earns credit only when `evidence` names the field. */
  readonly turnUp: Known<Nm> | null;
}

export interface ScreenLayer {
  readonly kind: 'screen';
  readonly chamber: number;
  /** Null: floating. */
  readonly circuit: string | null;
  readonly id: string | null;
  readonly thickness: Known<Nm>;
  /** The ends overlap, with plies of tape between. */
  readonly overlap: Sheet | null;
  readonly inset: Record<Side, Known<Nm>>;
  readonly margins: Margins;
  /** Null: floating, so that there is none. */
  readonly lead: Lead | 'not-judged' | Unknown | null;
}

export type Margins = Record<Side, Margin>;

export interface Margin {
  readonly width: Reading<Nm>;
  readonly filled: boolean;
  readonly height: Known<Nm> | null;
  readonly moulded: boolean;
  readonly material: string | null;
  readonly withstand: Withstand | Unknown;
}

export interface Outside {
  readonly between: readonly [string, string];
  readonly what: string;
  readonly clearance: Known<Nm> | null;
  readonly creepage: Known<Nm> | null;
  readonly materialGroup: MaterialGroup | Unknown;
  /** The voltage at this place, where it is known: it wins here over the pair's. */
  readonly working: GivenVoltage | null;
}

export interface Bridge {
  readonly id: string;
  readonly kind: 'capacitor' | 'optocoupler' | 'resistor';
  readonly between: readonly [string, string];
  readonly capacitance: Known<Farads> | null;
  readonly resistance: Known<Ohms> | null;
  readonly safetyClass: 'Y1' | 'Y2' | 'Y4' | 'X1' | 'X2' | 'none' | Unknown;
  /** Rated voltage of one part, rms. */
  readonly rated: Known<VoltsRms> | null;
  readonly inSeries: number;
  readonly clearance: Known<Nm> | null;
  readonly creepage: Known<Nm> | null;
  readonly throughInsulation: Known<Nm> | null;
  readonly approval: 'none' | 'basic' | 'reinforced' | Unknown;
  readonly working: GivenVoltage | null;
}

export interface Evidence {
  readonly id: string;
  readonly kind: 'photo' | 'measurement' | 'document';
  readonly says: string;
  /** Paths of the fields that it stands behind, e.g. `layers[2].margins.left.width`. */
  readonly fields: readonly string[];
  /** A picture or file as a data address, or its name. */
  readonly file: string | null;
  readonly measured: Measured | null;
  readonly picture: Picture | null;
}

/** A point of the unturned picture, pixels. */
export type PicturePoint = readonly [x: number, y: number];

/** What was measured on a photograph, and where. */
export interface Measured {
  /** Id of the photograph; null where it was measured otherwise. */
  readonly photo: string | null;
  readonly kind: 'distance' | 'diameter' | 'angle' | 'count';
  readonly points: readonly PicturePoint[];
  /** Half-width of the picking, pixels. */
  readonly picked: number | null;
  /** Millimetres a pixel. */
  readonly scale: number | null;
  /** Millimetres, degrees of an angle, or a number; null where nothing could be measured yet. */
  readonly found: { readonly value: number; readonly plusMinus: number } | null;
}

/** How a photograph is kept: its size in pixels, how far it is shown turned clockwise, and a known length on it. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly turned: number;
  readonly scale: {
    readonly length: Known<Nm>;
    readonly from: PicturePoint;
    readonly to: PicturePoint;
    readonly picked: number;
  } | null;
}
