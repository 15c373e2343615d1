import type { HouseLog } from '../house-log.ts';
import type { House } from '../house.ts';

/** Where one is in the Log, and of which bake, by the id of its start fact. Each has one Match in Log.tsx. */
export type Face =
  | { readonly at: 'list' }
  | { readonly at: 'bake'; readonly start: string }
  | { readonly at: 'cut'; readonly start: string }
  | { readonly at: 'keepsakes'; readonly start: string }
  | { readonly at: 'share'; readonly start: string }
  /** Of one formula: its bakes side by side. */
  | { readonly at: 'compare'; readonly start: string }
  | { readonly at: 'plots' };

/** What every face of the Log is handed. */
export interface FaceProps {
  readonly house: House;
  readonly log: HouseLog;
  /** On to another face; from there it is one press back to this one. */
  readonly onOpen: (face: Face) => void;
  readonly onBack: () => void;
}
