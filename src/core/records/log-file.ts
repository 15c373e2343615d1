/** Version of a saved log's first line; a file without that line is a bare log. */
export const FILE_VERSION = 3;
/** The first that may hold a circle. */
export const CIRCLE_VERSION = 3;
/** One without a circle, or without pictures too, holds nothing that an older program would lose, and says so. */
export const versionOf = (pictures: number, circle: number): number =>
  circle > 0 ? CIRCLE_VERSION : pictures > 0 ? 2 : 1;
