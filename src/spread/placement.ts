// How the hand places what the drawing says: how far each kind of figure may come out otherwise. Common practice of the
// winding table, open to change; none of it stands in a rule book.

export interface Placement {
  /** A margin comes out by so much narrower or wider, mm. */
  readonly margin: number;
  /** Tape is cut up to so much narrower than it should be, mm; it lies anywhere in what is free. */
  readonly tape: number;
  /** A sleeve is cut or pushed up to so much short, mm. */
  readonly sleeve: number;
  /** A tape layer is wound with one ply forgotten, once in so many; 0: never. */
  readonly forgottenPly: number;
}

export const PLACEMENT: Placement = { margin: 0.2, tape: 0.2, sleeve: 0.5, forgottenPly: 1000 };

/** Everything exactly as drawn: only the file's own tolerances are left. */
export const EXACT: Placement = { margin: 0, tape: 0, sleeve: 0, forgottenPly: 0 };
