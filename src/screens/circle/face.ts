import type { DayKey } from '../../core/circle/day-key.ts';
import type { HouseCircle } from '../house-circle.ts';
import type { House } from '../house.ts';

/** Where one is in the Circle, and of what. Each has one Match in Circle.tsx. */
export type Face =
  | { readonly at: 'home' }
  | { readonly at: 'neighbours' }
  | { readonly at: 'new neighbour' }
  | { readonly at: 'neighbour'; readonly id: string }
  | DayOpened
  /** `from`: the page that is one press back. */
  | { readonly at: 'hand over'; readonly day: DayKey; readonly from: string }
  | { readonly at: 'standing' }
  | { readonly at: 'another day' }
  | { readonly at: 'cupboard' }
  | { readonly at: 'dough'; readonly day: DayKey }
  /** `day`: for its orders alone; null: for all that are ahead. */
  | { readonly at: 'shopping'; readonly day: DayKey | null }
  /** `day`: of its orders; null: asked first. */
  | { readonly at: 'labels'; readonly day: DayKey | null }
  /** `from`: the page that is one press back. */
  | { readonly at: 'room'; readonly day: DayKey; readonly from: string }
  | { readonly at: 'oven hours'; readonly from: string };

/** A bake day; or at once one order of it. */
export interface DayOpened {
  readonly at: 'day';
  readonly day: DayKey;
  readonly order?: string;
  /** Whether a change of a weekly order is of that day alone, or of all from there on. */
  readonly scope?: 'day' | 'all';
}

/** What every face of the Circle is handed. */
export interface FaceProps {
  readonly house: House;
  readonly circle: HouseCircle;
  /** On to another face; from there it is one press back to this one. */
  readonly onOpen: (face: Face) => void;
  readonly onBack: () => void;
}
