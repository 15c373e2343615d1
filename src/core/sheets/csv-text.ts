/** A sheet program would reckon a text that begins so: then it stands behind an apostrophe. */
const RECKONED = /^[=+\-@\t\r]/;

const quoted = (text: string): string =>
  /[",;\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

/**
 * Rows as CSV (RFC 4180, UTF-8 with its mark, so that sheet programs see letters as they are): numbers
 * with a point, rounded to 0.001, texts that nothing reckons, null an empty cell.
 *
 * @example
 * csvText([['=1+1', -2, null]]) // → '\uFEFF\'=1+1,-2,\r\n'
 */
export function csvText(rows: readonly (readonly (string | number | null)[])[]): string {
  const lines = rows.map((row) =>
    row
      .map((cell) => {
        if (cell === null) return '';
        if (typeof cell === 'number') return String(Number(cell.toFixed(3)));
        return quoted(RECKONED.test(cell) ? `'${cell}` : cell);
      })
      .join(','),
  );
  return `\uFEFF${lines.join('\r\n')}\r\n`;
}
