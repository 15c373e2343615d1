export interface MarkShown {
  readonly x: number;
  readonly shape: 'lid' | 'out';
  /** The loaf's number, before its first hour. */
  readonly number: string | null;
  /** Null where it has no room. */
  readonly time: string | null;
}

/** Everything 0–1 from a lane's left. */
export interface LaneShown {
  readonly pot: string;
  readonly note: string | null;
  readonly blocks: readonly {
    readonly from: number;
    readonly lid: number;
    readonly to: number;
    readonly marks: readonly MarkShown[];
    readonly number: string | null;
    /** In the pot already; else it is planned. */
    readonly stands: boolean;
    readonly cutStart: boolean;
    readonly cutEnd: boolean;
  }[];
}

export interface LanesShown {
  readonly lanes: readonly LaneShown[];
  /** Null where another hour is on show. */
  readonly now: { readonly x: number; readonly label: string } | null;
  readonly from: string;
  readonly until: string;
  /** Whether anything comes out after what is shown. */
  readonly goesOn: boolean;
}
