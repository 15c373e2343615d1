import { EAR_PHRASES } from '../../../src/core/ear/phrases.ts';
import { key, type Score } from './scored.ts';

const NAME = 10;
const CELL = 3;

/** What was said, a row each, and what it was taken for, a column each; the last column is nothing at all. */
export function confusion({ taken }: Score): string {
  const cell = (text: string): string => text.padStart(CELL);
  const columns = [...EAR_PHRASES, null];
  const head = columns.map((phrase, n) => cell(phrase === null ? '–' : `${n + 1}`)).join('');
  const rows = EAR_PHRASES.map((said, n) => {
    const counts = columns.map((heard) => taken.get(key(said, heard)) ?? 0);
    return `${cell(`${n + 1}`)} ${said.padEnd(NAME)}${counts.map((count) => cell(count ? `${count}` : '·')).join('')}`;
  });
  return [`${' '.repeat(CELL + 1 + NAME)}${head}`, ...rows].join('\n');
}
