/** Version of a saved log's first line; a file without that line is a bare log. */
export const FILE_VERSION = 1;
