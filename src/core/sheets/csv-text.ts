/**
 * A sheet program would reckon a text that begins so, the wide signs of East Asian keyboards too: then it stands
 * behind an apostrophe, and so does one that seems to stand behind one already. As OWASP, "CSV Injection", has
 * it (from memory).
 */
const RECKONED = /^'*[=+\-@\t\r\n＝＋－＠]/;

/** What a reader may take for what parts cells. */
const PARTS = /[",;|\t\r\n]/;
const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/**
 * A cell of ours as it was before it stood behind an apostrophe.
 *
 * @example
 * unguarded("'=1+1") // → '=1+1'
 */
export const unguarded = (cell: string): string =>
  cell.startsWith("'") && RECKONED.test(cell) ? cell.slice(1) : cell;

/**
 * Rows as CSV (RFC 4180, UTF-8 with its mark, so that sheet programs see letters as they are): numbers
 * with a point, rounded to 0.001, texts that nothing reckons, null an empty cell. Where one text holds what may
 * part cells all of them are quoted: nobody guesses at another sign then.
 *
 * @example
 * csvText([['=1+1', -2, null]]) // → '\uFEFF\'=1+1,-2,\r\n'
 */
export function csvText(rows: readonly (readonly (string | number | null)[])[]): string {
  const isParted = rows.some((row) => row.some((c) => typeof c === 'string' && PARTS.test(c)));
  const lines = rows.map((row) =>
    row
      .map((cell) => {
        if (cell === null) return '';
        if (typeof cell === 'number') return String(Number(cell.toFixed(3)));
        const text = RECKONED.test(cell) ? `'${cell}` : cell;
        return isParted ? quoted(text) : text;
      })
      .join(','),
  );
  return `\uFEFF${lines.join('\r\n')}\r\n`;
}
