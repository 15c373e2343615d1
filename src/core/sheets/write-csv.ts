import { csvText } from './csv-text.ts';
import type { WrittenSheet } from './write-sheet.ts';

/** A sheet as CSV: its values, nothing in it is reckoned. */
export const writeCsv = ({ rows }: Pick<WrittenSheet, 'rows'>): string =>
  csvText(
    rows.map((row) =>
      row.map((cell) => {
        if (cell === null) return null;
        if ('text' in cell) return cell.text;
        return 'number' in cell ? cell.number : cell.value;
      }),
    ),
  );
