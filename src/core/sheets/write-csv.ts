import type { WrittenSheet } from './write-sheet.ts';

/** A sheet program would reckon a text that begins so: then it stands behind an apostrophe. */
const RECKONED = /^[=+\-@\t\r]/;

const quoted = (text: string): string =>
  /[",;\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

/**
 * A sheet as CSV (RFC 4180, UTF-8 with its mark, so that sheet programs see letters as they are):
 * numbers with a point, rounded to 0.001, nothing in it is reckoned.
 */
export function writeCsv({ rows }: Pick<WrittenSheet, 'rows'>): string {
  const lines = rows.map((row) =>
    row
      .map((cell) => {
        if (cell === null) return '';
        if ('text' in cell) return quoted(RECKONED.test(cell.text) ? `'${cell.text}` : cell.text);
        const value = 'number' in cell ? cell.number : cell.value;
        return String(Number(value.toFixed(3)));
      })
      .join(','),
  );
  return `\uFEFF${lines.join('\r\n')}\r\n`;
}
