// What a rule book holds the hottest insulation to, as it would be read: the limit of its lowest known class, lowered where
// a thermocouple or an infrared reading may miss the hottest place; in abnormal use the lowest limit of overload. Where
// something has no class, it may be of the lowest; above the limit of the highest class nothing is left to know.
//
// Step: heat-limit {class, limit, allowance, value} over temperature-limit and the rule of the allowance.

import type { Design } from '#model/design.ts';
import { because, type Because, type Judged } from '#standards/because.ts';
import type { Book } from '#books/questions/book.ts';
import { celsius, type Celsius } from '#units/quantity.ts';

export interface HeatLimits {
  /** Above it for certain too hot. */
  readonly best: Judged<Celsius>;
  /** Above it not shown to be cool enough. */
  readonly worst: Judged<Celsius>;
  /** How the temperature was read is not known: it counts as by thermocouple at worst. */
  readonly methodOpen: boolean;
  /** A tape or the former has no class: it counts as of the lowest at worst. */
  readonly classOpen: boolean;
}

type LimitOf = (thermalClass: number) => Judged<Celsius> | null;

const OVERLOAD_STATES = ['unprotected', 'firstHour', 'afterFirstHour', 'mean'] as const;

/** Null where the book has no limits for this use. */
export function heatLimits(
  { surroundings: { temperature } }: Design,
  book: Book,
  thermalClass: Celsius | null,
  classOpen: boolean,
): HeatLimits | null {
  const limitOf: LimitOf =
    temperature.condition === 'normal'
      ? (at) => book.insulationTemperature(at)
      : (at) => lowest(OVERLOAD_STATES.map((state) => book.windingTemperatureOverload(at, state)));
  const [lowestClass, highestClass] = [book.thermalClasses[0], book.thermalClasses.at(-1)];
  const [low, high] = [limitOf(lowestClass ?? 0), limitOf(highestClass ?? 0)];
  if (low === null || high === null) return null;
  const own = thermalClass === null ? high : (limitAtMost(book, thermalClass, limitOf) ?? low);
  const methodOpen = typeof temperature.method !== 'string';
  const isLow = methodOpen || temperature.method !== 'resistance';
  return {
    best: lowered(book, lower(own, high), isLow && !methodOpen),
    worst: lowered(book, classOpen ? lower(own, low) : own, isLow),
    methodOpen,
    classOpen,
  };
}

/** A class between two of the book's counts as the lower. */
const limitAtMost = (book: Book, thermalClass: Celsius, limitOf: LimitOf): Judged<Celsius> | null => {
  const at = book.thermalClasses.findLast((one) => one <= thermalClass);
  return at === undefined ? null : limitOf(at);
};

const lower = (a: Judged<Celsius>, b: Judged<Celsius>): Judged<Celsius> => (b.value < a.value ? b : a);

function lowest(all: readonly (Judged<Celsius> | null)[]): Judged<Celsius> | null {
  const known = all.filter((one) => one !== null);
  return known.length < all.length || known.length === 0 ? null : known.reduce(lower);
}

function lowered(book: Book, limit: Judged<Celsius>, byThermocouple: boolean): Judged<Celsius> {
  const { value: allowance, because: why } = book.thermocoupleAllowance;
  const value = celsius(limit.value - (byThermocouple ? allowance : 0));
  const from: readonly Because[] = byThermocouple ? [limit.because, why] : [limit.because];
  const values = { limit: limit.value, allowance: byThermocouple ? allowance : 0, value };
  return { value, because: because('heat-limit', values, [], from) };
}
