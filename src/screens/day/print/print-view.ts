import type { DayPlan } from '../../../core/day/laid/day-plan.ts';
import { printed } from '../../../core/speech/words/live.ts';
import { tellTouch } from '../../../core/speech/tell-plan.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import type { Instant } from '../../../core/units.ts';
import type { House } from '../../house.ts';

export interface PrintedRow {
  readonly hour: string;
  readonly what: string;
  /** Its bake, where there are several. */
  readonly bake: string | null;
  readonly minutes: string;
  readonly fine: string;
  readonly last: string;
  readonly isBread: boolean;
}

export interface PrintedPart {
  readonly title: string;
  readonly rows: readonly PrintedRow[];
}

export interface PrintView {
  readonly names: string;
  readonly made: string;
  readonly days: readonly PrintedPart[];
  /** How close the lines stand, so that all of it is one page. */
  readonly close: 'roomy' | 'close' | 'columns';
}

type Read = Pick<House, 'hour' | 'day' | 'date' | 'midnight' | 'now'>;

/** Lines that a page holds in each of the ways, its titles counted. */
const HOLDS = { roomy: 26, close: 40 } as const;
/** A day's title takes the room of so many lines. */
const TITLE = 2;

/** A plan as lines on paper, day by day; hours of another day than their own have its name. */
export function printView({ touches, ready, ask }: DayPlan, read: Read): PrintView {
  const hourAt = (at: Instant, day: Instant): string =>
    read.midnight(at) === day ? read.hour(at) : `${read.day(at)} ${read.hour(at)}`;
  const isOne = ask.bakes.length === 1;
  const lines = [
    ...touches.map((touch) => ({ ...touch, isBread: false })),
    ...ready.map(({ batch, at }) => ({
      ...{ batch, at, fineUntil: at, lastPossible: at },
      ...{ name: 'ready', hands: 0, isBread: true },
    })),
  ].toSorted((a, b) => a.at - b.at);
  const days = new Map<Instant, PrintedRow[]>();
  for (const { batch, name, at, hands, fineUntil, lastPossible, isBread } of lines) {
    const day = read.midnight(at);
    const rows = days.get(day) ?? [];
    rows.push({
      hour: read.hour(at),
      what: isBread ? printed.ready : tellTouch(name),
      bake: isOne ? null : showBread(batch),
      minutes: hands > 0 ? String(hands) : '',
      fine: isBread ? '' : hourAt(fineUntil, day),
      last: isBread ? '' : hourAt(lastPossible, day),
      isBread,
    });
    days.set(day, rows);
  }
  const count = lines.length + days.size * TITLE;
  return {
    names: ask.bakes.map(({ name }) => showBread(name)).join(', '),
    made: `${read.date(read.now())} ${read.hour(read.now())}`,
    days: [...days].map(([day, rows]) => ({
      title: `${read.day(day)} ${read.date(day)}`,
      rows,
    })),
    close: count <= HOLDS.roomy ? 'roomy' : count <= HOLDS.close ? 'close' : 'columns',
  };
}
