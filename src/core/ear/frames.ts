/** What is heard, moment by moment: `count` rows of `size` numbers, one after the other. */
export interface Frames {
  readonly count: number;
  readonly size: number;
  readonly data: Float32Array<ArrayBuffer>;
}
