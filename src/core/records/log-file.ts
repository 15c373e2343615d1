/** Version of a saved log's first line; a file without that line is a bare log. */
export const FILE_VERSION = 2;
/** One without pictures holds nothing that an older program would lose, and says so. */
export const versionOf = (pictures: number): number => (pictures === 0 ? 1 : FILE_VERSION);
