import writeFile, { type Cell, type Feature } from 'write-excel-file/universal';
import type { Formula } from '../../core/formula/formula.ts';
import { flatten } from '../../core/sheets/flatten.ts';
import { writeSheet, type WrittenCell } from '../../core/sheets/write-sheet.ts';
import { sheetWords as words } from '../../core/speech/words/sheets.ts';
import type { Grams } from '../../core/units.ts';

const FORMATS = { pct: '0.##', grams: '0.0' } as const;

const escaped = (letter: string): string =>
  `_x${letter.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`;

/**
 * A text as cells hold it: what seems to be an escaped letter there is none (ECMA-376 part 1, ST_Xstring). What
 * writes files looks each text up in an object of its own, where a name that every object has would be found
 * before it was put in: its first letter is escaped.
 */
const textCell = (value: string): Cell => ({
  type: String,
  value:
    value in {}
      ? `${escaped(value)}${value.slice(1)}`
      : value.replace(/_(?=x[0-9A-F]{4}_)/gi, () => escaped('_')),
});

const toCell = (cell: WrittenCell): Cell => {
  if (cell === null) return null;
  if ('text' in cell) return textCell(cell.text);
  const format = FORMATS[cell.is];
  // What may be typed over is told apart by its ground, as sheets commonly do.
  return 'number' in cell
    ? { type: Number, value: cell.number, format, backgroundColor: '#FFF6D6' }
    : { type: 'Formula', value: cell.cell, format };
};

/**
 * What each reckoned cell comes to, written beside its formula: a viewer that does not reckon shows it,
 * and so it is read back. A sheet program reckons anew as it opens the file.
 */
const withValues = (values: ReadonlyMap<string, number>): Feature<Blob> => ({
  files: {
    transform: {
      'xl/worksheets/sheet{id}.xml': {
        transform: (xml, _, { sheetIndex }) =>
          sheetIndex > 0
            ? xml
            : xml.replace(
                /(<c r="([A-Z]+\d+)"[^>]*><f>[^<]*<\/f>)(?=<\/c>)/g,
                (all, _cell, address: string) => {
                  const value = values.get(address);
                  return value === undefined ? all : `${all}<v>${value}</v>`;
                },
              ),
      },
      'xl/workbook.xml': {
        transform: (xml) => xml.replace('<calcPr/>', '<calcPr fullCalcOnLoad="1"/>'),
      },
    },
  },
});

/**
 * A formula as an xlsx file: a live sheet for `flour` grams of all flour, and behind it all of the
 * formula as paths and values, so that the file reads back as the formula it was.
 */
export async function writeXlsx(formula: Formula, flour: Grams): Promise<Uint8Array<ArrayBuffer>> {
  const { rows } = writeSheet(formula, flour);
  const values = new Map<string, number>();
  rows.forEach((row, r) =>
    row.forEach((cell, c) => {
      if (cell && 'cell' in cell) values.set(`${'ABCD'[c]}${r + 1}`, cell.value);
    }),
  );
  const rest = [
    [words.path, words.value].map(textCell),
    ...flatten(formula).map(([path, value]) => [
      textCell(path),
      typeof value === 'number' ? { type: Number, value } : textCell(value ?? ''),
    ]),
  ];
  const blob = await writeFile(
    [
      {
        sheet: words.main,
        data: rows.map((row) => row.map(toCell)),
        columns: [{ width: 34 }, { width: 16 }, { width: 16 }, { width: 14 }],
      },
      { sheet: words.rest, data: rest, columns: [{ width: 34 }, { width: 40 }] },
    ],
    { features: [withValues(values)] },
  ).toBlob();
  return new Uint8Array(await blob.arrayBuffer());
}
