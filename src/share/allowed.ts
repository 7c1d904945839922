/** What the angler lets go out of what others could use or need not know. */
export interface Allowed {
  water: boolean;
  peg: boolean;
  notes: boolean;
}

/** How every form begins: nothing is named until it is switched on. */
export const NOTHING_ALLOWED: Allowed = { water: false, peg: false, notes: false };
