import papa from 'papaparse';
import { unguarded } from '../../core/sheets/csv-text.ts';
import { tableFault, type Table } from '../../core/sheets/table.ts';
import type { ReadTables } from './read-xlsx.ts';

/** Most characters of a CSV file. Judgement. */
const MOST = 500_000;

/**
 * The rows of a CSV text: commas, semicolons, tabs or bars, whichever part its cells; a mark of UTF-8
 * before it is passed over. Null with what was expected and what came. Never throws.
 */
export function readCsv(text: string, name = 'CSV'): ReadTables {
  const refuse = (expected: string, got: string): ReadTables => ({
    tables: null,
    reason: { path: 'the file', expected, got },
  });
  if (text.length > MOST) return refuse(`at most ${MOST} characters`, String(text.length));
  if (text.includes('\u0000')) return refuse('a text', 'something else');
  const { data, errors } = papa.parse<string[]>(text.replace(/^\uFEFF/, ''), {
    skipEmptyLines: 'greedy',
    delimitersToGuess: [',', ';', '\t', '|'],
  });
  const broken = errors.find(({ type }) => type === 'Quotes');
  if (broken) {
    const reason = {
      path: `row ${(broken.row ?? 0) + 1}`,
      expected: 'quotes in pairs',
      got: 'one',
    };
    return { tables: null, reason };
  }
  const rows: Table = data.map((row) => row.map((cell) => (cell === '' ? null : unguarded(cell))));
  if (rows.length === 0) return refuse('rows of cells', 'nothing');
  const fault = tableFault(rows);
  return fault ? { tables: null, reason: fault } : { tables: [{ name, rows }] };
}
