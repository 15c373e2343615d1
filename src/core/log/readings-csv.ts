import { wallTime } from '../day/plan/wall-clock.ts';
import type { Fact } from '../records/fact.ts';
import { numberIn } from '../records/reading-number.ts';
import { slotOf } from '../records/reading-slot.ts';
import type { LogRecord } from '../records/record.ts';
import { csvText } from '../sheets/csv-text.ts';
import { logSheet as words } from '../speech/words/log-sheet.ts';
import { readingNames } from '../speech/words/readings.ts';
import { showReading } from '../speech/reading-text.ts';
import { showBread } from '../speech/show-bread.ts';
import { fahrenheitOf, HOUR, ouncesOf, type Instant, type Units } from '../units.ts';
import { correctionsIn, takenReading, type TakenReading } from './bake-readings.ts';
import { withdrawnIn } from './bake-rows.ts';

/** How a sheet of readings is written. */
export interface ReadingsAs {
  /** IANA name: times are the wall's. */
  readonly zone: string;
  readonly units: Units;
  /** The starts' bakes that are wanted; left out: all of the log. */
  readonly bakes?: ReadonlySet<string>;
}

type Start = Extract<Fact, { kind: 'start' }>;
type Cell = string | number | null;

/** "2031-05-03 06:05", which sheet programs read as a time. */
function stamp(at: Instant, zone: string): string {
  const { year, month, day, hour, minute } = wallTime(at, zone);
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${year}-${two(month)}-${two(day)} ${two(hour)}:${two(minute)}`;
}

/** The number of a reading in the baker's units, and its unit; a sign has neither. */
function numberOf({ reading }: TakenReading, { heat, weight }: Units): readonly [Cell, Cell] {
  const number = numberIn(reading);
  if (number === null) return [null, null];
  if ('celsius' in reading) {
    return heat === 'F' ? [fahrenheitOf(number), '°F'] : [number, '°C'];
  }
  if ('grams' in reading) return weight === 'oz' ? [ouncesOf(number), 'oz'] : [number, 'g'];
  return [number, '%'];
}

function rowOf(start: Start, taken: TakenReading, { zone, units }: ReadingsAs): readonly Cell[] {
  const { formula } = start.recipe;
  const { at, by, reading, odd, was } = taken;
  const [number, unit] = numberOf(taken, units);
  return [
    showBread(formula.name),
    formula.version,
    stamp(start.at, zone),
    stamp(at, zone),
    (at - start.at) / HOUR,
    readingNames[slotOf(reading)],
    number,
    unit,
    number === null ? showReading(reading, units) : null,
    words[by],
    odd ? words.yes : null,
    was.length > 0 ? was.map((one) => showReading(one.reading, units)).join('; ') : null,
  ];
}

function rowsOf(
  records: readonly LogRecord[],
  as: ReadingsAs,
  had: ReadonlySet<string>,
): readonly (readonly Cell[])[] {
  const withdrawn = withdrawnIn(records);
  const standing = records.flatMap(({ fact }) => (withdrawn.has(fact.id) ? [] : [fact]));
  const corrections = correctionsIn(standing);
  const starts = new Map<string, Start>();
  const rows: (readonly Cell[])[] = [];
  for (const fact of standing) {
    if (fact.kind === 'start') starts.set(fact.bake, fact);
    if (fact.kind !== 'reading' || as.bakes?.has(fact.bake) === false || had.has(fact.id)) continue;
    const start = starts.get(fact.bake);
    if (start) rows.push(rowOf(start, takenReading(fact, corrections.get(fact.id)), as));
  }
  return rows;
}

const heads = (): readonly string[] => [
  words.bread,
  words.version,
  words.begun,
  words.taken,
  words.hours,
  words.what,
  words.number,
  words.unit,
  words.seen,
  words.by,
  words.odd,
  words.was,
];

/**
 * The readings of bakes as a sheet, a row each in the order they were taken: what was taken back is not
 * among them, what was corrected says so. Of a bake with no reading there is no row.
 *
 * @throws RangeError for a zone nobody knows
 */
export const readingsCsv = (records: readonly LogRecord[], as: ReadingsAs): string =>
  csvText([heads(), ...rowsOf(records, as, new Set())]);

/**
 * The same of several logs, one behind the other, each by itself: a bake's name may come again in another. A
 * reading that two of them have stands once. Null: there is none.
 *
 * @throws RangeError for a zone nobody knows
 */
export function readingsOfLogs(
  logs: readonly (readonly LogRecord[])[],
  as: ReadingsAs,
): string | null {
  const had = new Set<string>();
  const rows = logs.flatMap((log) => {
    const its = rowsOf(log, as, had);
    for (const { fact } of log) had.add(fact.id);
    return its;
  });
  return rows.length === 0 ? null : csvText([heads(), ...rows]);
}
