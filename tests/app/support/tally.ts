import type { OwedRing } from './owed-calls.ts';
import { WITHIN, type HeardRing } from './wrong-rings.ts';

/** How the alarms of a walk came out; each that was owed is one of the first five. */
export interface Tally {
  readonly owed: number;
  /** Heard within a second of its deadline; put off, of the instant it was put off to. */
  readonly inTime: number;
  /** Behind its deadline, for the tablet slept or a more urgent one rang; as soon as could be, and marked so late. */
  readonly late: number;
  /** At another instant than it had to be, or not marked as late as it was. */
  readonly wrong: number;
  readonly lost: number;
  /** Heard though nothing was owed, or once more. */
  readonly double: number;
  /** From the instant at which it had to begin, ms, of true time. */
  readonly most: number;
}

export const NONE: Tally = {
  ...{ owed: 0, inTime: 0, late: 0, wrong: 0, lost: 0, double: 0, most: 0 },
};

export const add = (a: Tally, b: Tally): Tally => ({
  owed: a.owed + b.owed,
  inTime: a.inTime + b.inTime,
  late: a.late + b.late,
  wrong: a.wrong + b.wrong,
  lost: a.lost + b.lost,
  double: a.double + b.double,
  most: Math.max(a.most, b.most),
});

/** Each that was owed beside the one that was heard by its name, whatever came between them. */
export function tallyOf(heard: readonly HeardRing[], owed: readonly OwedRing[]): Tally {
  const left = [...heard];
  const one = (wanted: OwedRing): Tally => {
    const at = left.findIndex(({ id }) => id === wanted.id);
    if (at < 0) return { ...NONE, owed: 1, lost: 1 };
    const [is] = left.splice(at, 1);
    const off = Math.abs(is!.truth - wanted.truth);
    const late = wanted.late ?? 0;
    const isMarked = wanted.late === null || Math.abs(is!.late - late) <= WITHIN;
    const how = off > WITHIN || !isMarked ? 'wrong' : late > WITHIN ? 'late' : 'inTime';
    return { ...NONE, owed: 1, [how]: 1, most: off };
  };
  const all = owed.map(one).reduce(add, NONE);
  return { ...all, double: left.length };
}

const HEAD = [
  ...['owed', 'in time', 'at waking or in turn, marked late', 'off'],
  ...['lost', 'double', 'most off, ms'],
];

/** As a table in markdown, a row each and the sum of all. */
export function tableOf(rows: Readonly<Record<string, Tally>>): string {
  const line = (cells: readonly (string | number)[]): string => `| ${cells.join(' | ')} |`;
  const all = { ...rows, 'all of them': Object.values(rows).reduce(add, NONE) };
  return [
    line(['alarms', ...HEAD]),
    line(['---', ...HEAD.map(() => '--:')]),
    ...Object.entries(all).map(([name, { owed, inTime, late, wrong, lost, double, most }]) =>
      line([name, owed, inTime, late, wrong, lost, double, Math.round(most)]),
    ),
  ].join('\n');
}
