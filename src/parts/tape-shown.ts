/** Everything `x`, `from`, `to`, `lid` is 0–1 from a row’s left. */
export interface TapeTouch {
  /** The same through every plan. */
  readonly key: string;
  readonly x: number;
  readonly time: string;
  /** What is done, in one or two short lines. */
  readonly lines: readonly string[];
  /** For ears: '16:20, Mix'. */
  readonly name: string;
  /** Which of several bakes it is of; null where there is one. */
  readonly mark: number | null;
  /** Put to its hour by the baker, or done. */
  readonly stays: boolean;
  /** Whether pressing it tells more. */
  readonly opens: boolean;
}

export interface TapeNote {
  /** Its middle. */
  readonly x: number;
  readonly lines: readonly string[];
  /** 0: beside the names of touches; 1: under them. */
  readonly level: 0 | 1;
}

/** One load in the oven. */
export interface TapeLane {
  readonly from: number;
  /** Where the lid comes off or the steam goes out; null: neither. */
  readonly lid: number | null;
  readonly to: number;
  readonly label: string;
  /** Where there is room for its words; under it they begin at the row’s left. */
  readonly side: 'right' | 'left' | 'under';
}

export interface TapeStretch {
  readonly from: number;
  readonly to: number;
}

/** One calendar day, or a part of it where it is longer than the screen is wide. */
export interface TapeRow {
  /** The day, where it begins with this row. */
  readonly day: string | null;
  readonly touches: readonly TapeTouch[];
  readonly ticks: readonly { readonly x: number; readonly long: boolean }[];
  /** Where a dough or levain is ready. */
  readonly windows: readonly TapeStretch[];
  /** Where no hands are there. */
  readonly away: readonly TapeStretch[];
  readonly notes: readonly TapeNote[];
  readonly lanes: readonly TapeLane[];
  /** Where its line begins and ends. */
  readonly line: TapeStretch;
}
