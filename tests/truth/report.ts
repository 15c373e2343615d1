import { difference, scores } from './measure.ts';
import { misses } from './misses.ts';
import type { Row } from './row.ts';
import { TOLERANCES } from './tolerances.ts';

const MARKS: Readonly<Record<Row['mark'], string>> = {
  outside: '',
  practice: ' [practice]',
  memory: ' [from memory]',
  judgement: ' [judgement]',
  port: ' [tests the port, not the truth]',
};

const number = (n: number, digits = 7): string => String(Number(n.toPrecision(digits)));

const expectedOf = ({ expected }: Row): string =>
  typeof expected === 'number' ? number(expected) : expected.map((end) => number(end)).join('–');

const table = (lines: readonly (readonly string[])[]): string => {
  const widths = (lines[0] ?? []).map((_, i) => Math.max(...lines.map((l) => (l[i] ?? '').length)));
  return lines
    .map((line) =>
      line
        .map((cell, i) => cell.padEnd(widths[i] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
};

/** The whole table as text: every row, each model against its tolerance, and the known misses. */
export function report(rows: readonly Row[]): string {
  const each = rows.map((row) => [
    row.model,
    row.what,
    number(row.ours),
    expectedOf(row),
    `${number(difference(row), 2)} ${TOLERANCES[row.model].unit}`.trim(),
    `${row.source}${MARKS[row.mark]}`,
  ]);
  const models = scores(rows).map(({ model, rows: count, most, mean, ok }) => {
    const { unit, most: mostAllowed, mean: meanAllowed, why } = TOLERANCES[model];
    return [
      ok ? 'within' : 'BEYOND',
      model,
      String(count),
      `${number(mean, 2)} of ${meanAllowed} ${unit}`.trim(),
      `${number(most, 2)} of ${mostAllowed} ${unit}`.trim(),
      why,
    ];
  });
  const missed = misses().map(({ what, ours, expected, doubt, source }) => [
    what,
    number(ours),
    number(expected),
    doubt ?? 'no doubt told',
    source,
  ]);
  return [
    table([['model', 'what', 'ours', 'expected', 'difference', 'source'], ...each]),
    table([['', 'model', 'rows', 'mean', 'most', 'why this tolerance'], ...models]),
    table([['known misses', 'ours', 'expected', 'doubt told', 'source'], ...missed]),
  ].join('\n\n');
}
