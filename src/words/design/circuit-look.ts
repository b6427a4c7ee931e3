// How a circuit is told apart everywhere: hue, mark in the turn, texture and letter.
// Warm is the mains' side, cool the hand's. By role and order in the file; letters never repeat, hues may.

import type { Circuit } from '#model/design.ts';
import type { Role } from '#units/terms.ts';
import { unreachable } from '#units/unreachable.ts';

export type HueKey = 'primary' | 'auxiliary' | 'output' | 'second-output' | 'earth' | 'isolated';
export type TurnMark = 'slash' | 'dot' | 'two-bars' | 'cross' | 'falling-bars' | 'ring';
export type Texture = 'slanted-stripes' | 'dots' | 'level-stripes' | 'squares' | 'dashes' | 'rings';

export interface CircuitLook {
  readonly circuit: string;
  readonly name: string;
  readonly role: Role;
  readonly letter: string;
  readonly hue: HueKey;
  readonly mark: TurnMark;
  readonly texture: Texture;
}

const MARKS: Readonly<Record<HueKey, { readonly mark: TurnMark; readonly texture: Texture }>> = {
  primary: { mark: 'slash', texture: 'slanted-stripes' },
  auxiliary: { mark: 'dot', texture: 'dots' },
  output: { mark: 'two-bars', texture: 'level-stripes' },
  'second-output': { mark: 'cross', texture: 'squares' },
  earth: { mark: 'falling-bars', texture: 'dashes' },
  isolated: { mark: 'ring', texture: 'rings' },
};

/** One look for each circuit, in the order given. */
export function circuitLooks(circuits: readonly Circuit[]): readonly CircuitLook[] {
  const taken = new Set<string>();
  const seen: Record<Role, number> = { mains: 0, touchable: 0, earth: 0, isolated: 0 };
  return circuits.map(({ id, name, role }) => {
    const place = seen[role]++;
    const hue = hueOf(role, place);
    const letter = freeLetter(role, taken);
    taken.add(letter);
    return { circuit: id, name: name === '' ? id : name, role, letter, hue, ...MARKS[hue] };
  });
}

function hueOf(role: Role, place: number): HueKey {
  switch (role) {
    case 'mains':
      return place === 0 ? 'primary' : 'auxiliary';
    case 'touchable':
      return place === 0 ? 'output' : 'second-output';
    case 'earth':
      return 'earth';
    case 'isolated':
      return 'isolated';
    default:
      return unreachable(role);
  }
}

/** Letters each role prefers, so that the first of each role always has its own. */
const PREFERRED: Readonly<Record<Role, string>> = {
  mains: 'PABCD',
  touchable: 'STUVWXYZ',
  earth: 'EFGH',
  isolated: 'NMLKJ',
};

function freeLetter(role: Role, taken: ReadonlySet<string>): string {
  const reserved = Object.entries(PREFERRED).flatMap(([other, letters]) =>
    other === role ? [] : [letters[0]],
  );
  const own = [...PREFERRED[role], ...'ABCDFGHJKLMQRUVWXYZ'].find(
    (letter) => !taken.has(letter) && !reserved.includes(letter),
  );
  if (own !== undefined) return own;
  for (let n = 2; ; n++) if (!taken.has(`${PREFERRED[role][0]}${n}`)) return `${PREFERRED[role][0]}${n}`;
}
