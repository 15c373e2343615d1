/**
 * The shape of the catalogue. Every word on the screen or in the air comes from it; a template's
 * {names} are filled by `fill`.
 */

/** What a stage says. `then` stands under the slab's word; `spoken` is at most two sentences. */
export interface StageWords {
  readonly headline: string;
  readonly detail: string;
  readonly slab: string;
  readonly then: string;
  readonly spoken: string;
  /** The usual caution, shown and spoken at this step. */
  readonly care?: string;
}

/** One way to answer; `value` is what the record keeps. */
export interface Option {
  readonly value: string;
  readonly label: string;
}

/** One line of a checklist: never answered by "OK", always by a state or a value. */
export interface Question {
  readonly item: string;
  readonly ask: string;
  readonly detail?: string;
  /** The big press. */
  readonly slab: Option;
  readonly tiles: readonly Option[];
}
