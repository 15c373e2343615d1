import { describe, Fields, readText, Refused, type Misread } from '../formula/read-fields.ts';
import { readUntold } from '../formula/read-untold.ts';
import type { MinuteOfDay } from '../kitchen/equipment.ts';
import {
  CIRCLE,
  LABEL_LISTS,
  LABEL_PAPERS,
  type CircleWays,
  type Ingredient,
  type Neighbour,
  type Order,
  type OrderLine,
  type Standing,
} from './circle.ts';
import { isDayKey, type DayKey } from './day-key.ts';
import { keptAllergens } from './label/kept-allergens.ts';
import { NAME_LETTERS, oneLine } from './name.ts';
import { LISTS, type Change, type ListName, type Put, type Thing } from './row.ts';

/** What a row can hold at most. Judgement: far beyond any circle, and too little to fill a tablet. */
const MOST = { id: 200, text: 2_000, list: 2_000, skips: 5_000, count: 9_999, grams: 1e9 };
/** The last instant there is, ms (ECMA-262, Time Values). */
const LAST_INSTANT = 8.64e15;

/** @throws Refused */
const no = (path: string, expected: string, value: unknown): never => {
  throw new Refused({ path, expected, got: describe(value) });
};
/** Not one of those that every object has: they are found where nobody put them. */
const readId = (value: unknown, path: string): string => {
  const id = readText(value, path, MOST.id);
  return id in {} ? no(path, 'an id', value) : id;
};
const readLine =
  (most: number) =>
  (value: unknown, path: string): string => {
    const line = typeof value === 'string' ? oneLine(value, most) : '';
    return line === '' ? no(path, 'a text', value) : line;
  };
const readDay = (value: unknown, path: string): DayKey =>
  isDayKey(value) ? value : no(path, 'a day that there is, as 2031-05-03', value);
const readMinute = (of: Fields, name: string): MinuteOfDay => of.number(name, 0, 1439, true);
const readInstant = (of: Fields, name: string): number =>
  of.number(name, -LAST_INSTANT, LAST_INSTANT);
const orNull = <T>(of: Fields, name: string, one: () => T): T | null =>
  of.isNull(name) ? null : one();
const lineList = (of: Fields, name: string): string[] =>
  of.list(name, 0, MOST.list, readLine(MOST.text));

const readOrderLine = (value: unknown, path: string): OrderLine => {
  const of = Fields.read(value, path);
  return {
    bread: of.by('bread', readId),
    count: of.number('count', 0, MOST.count, true),
    grams: orNull(of, 'grams', () => of.number('grams', 1, MOST.grams)),
    cut: of.flag('cut'),
  };
};
const orderLines = (of: Fields): OrderLine[] => of.list('lines', 0, MOST.list, readOrderLine);

const READERS: { readonly [L in ListName]: (of: Fields) => Thing<L> } = {
  neighbours: (of): Neighbour => ({
    id: of.by('id', readId),
    name: of.by('name', readLine(NAME_LETTERS)),
    // By any other text nothing would be found of it in a bread.
    watch: keptAllergens(lineList(of, 'watch'), MOST.list),
  }),
  orders: (of): Order => ({
    id: of.by('id', readId),
    who: of.by('who', readId),
    day: of.by('day', readDay),
    at: orNull(of, 'at', () => readMinute(of, 'at')),
    lines: orderLines(of),
    paid: of.flag('paid'),
    handed: orNull(of, 'handed', () => readInstant(of, 'handed')),
    made: readInstant(of, 'made'),
    standing: orNull(of, 'standing', () => of.by('standing', readId)),
  }),
  standing: (of): Standing => ({
    id: of.by('id', readId),
    who: of.by('who', readId),
    weekday: of.number('weekday', 0, 6, true),
    at: orNull(of, 'at', () => readMinute(of, 'at')),
    lines: orderLines(of),
    from: of.by('from', readDay),
    until: orNull(of, 'until', () => of.by('until', readDay)),
    skips: of.list('skips', 0, MOST.skips, readDay),
  }),
  ingredients: (of): Ingredient => ({
    id: of.by('id', readId),
    name: of.by('name', readLine(MOST.text)),
    pack: orNull(of, 'pack', () => {
      const pack = of.inner('pack');
      const grams = pack.number('grams', Number.MIN_VALUE, MOST.grams);
      const usable = pack.number('usable', Number.MIN_VALUE, 1);
      return { grams, cost: pack.number('cost', 0, MOST.grams), usable };
    }),
    counted: orNull(of, 'counted', () => {
      const counted = of.inner('counted');
      return {
        grams: counted.number('grams', 0, MOST.grams),
        at: readInstant(counted, 'at'),
      };
    }),
    madeOf: orNull(of, 'madeOf', () => lineList(of, 'madeOf')),
  }),
};

const WAYS: { readonly [K in keyof CircleWays]: (of: Fields) => CircleWays[K] } = {
  oven: (of) =>
    orNull(of, 'oven', () => {
      const oven = of.inner('oven');
      return { from: readMinute(oven, 'from'), to: readMinute(oven, 'to') };
    }),
  closes: (of) =>
    orNull(of, 'closes', () => {
      const closes = of.inner('closes');
      return { days: closes.number('days', 0, 365, true), at: readMinute(closes, 'at') };
    }),
  list: (of) => of.oneOf('list', LABEL_LISTS),
  paper: (of) => of.oneOf('paper', LABEL_PAPERS),
  lines: (of) => of.list('lines', 0, MOST.list, readLine(MOST.text)),
  currency: (of) =>
    of.by('currency', (value, path) =>
      typeof value === 'string' && /^[A-Z]{3}$/.test(value)
        ? value
        : no(path, 'three letters, as ISO 4217 has them', value),
    ),
  besides: (of) => orNull(of, 'besides', () => of.number('besides', 0, MOST.grams)),
  times: (of) => orNull(of, 'times', () => of.number('times', 0, 1_000)),
};
const WAY_NAMES = Object.keys(WAYS) as readonly (keyof CircleWays)[];

/**
 * One thing of a list, from the disk or from a file, or what of it cannot be read; never throws. Texts that
 * are too long are cut, a name to 40 characters. No reason repeats what stands in a text.
 */
export const readThing = <L extends ListName>(
  list: L,
  value: unknown,
):
  | { readonly thing: Thing<L>; readonly reason: null }
  | { readonly thing: null; readonly reason: Misread } => {
  const { read, reason } = readUntold(list, () => READERS[list](Fields.read(value, '')));
  return reason === null ? { thing: read as Thing<L>, reason } : { thing: null, reason };
};

/** How a circle is run: what of it cannot be read, or is missing, is as before anyone has said. */
export function readWays(value: unknown): {
  readonly ways: CircleWays;
  readonly misread: readonly Misread[];
} {
  const all = readUntold('ways', () => Fields.read(value, ''));
  if (all.read === null) return { ways: CIRCLE.ways, misread: [all.reason] };
  const { ways, misread } = readSome(
    all.read,
    (name) => all.read.has(name) || all.read.isNull(name),
  );
  return { ways: { ...CIRCLE.ways, ...ways }, misread };
}

function readSome(
  of: Fields,
  wanted: (name: keyof CircleWays) => boolean,
): { readonly ways: Partial<CircleWays>; readonly misread: readonly Misread[] } {
  const found = WAY_NAMES.filter(wanted).map(
    (name) => [name, readUntold('ways', () => WAYS[name](of))] as const,
  );
  return {
    ways: Object.fromEntries(
      found.flatMap(([name, { read, reason }]) => (reason === null ? [[name, read]] : [])),
    ) as Partial<CircleWays>,
    misread: found.flatMap(([, { reason }]) => reason ?? []),
  };
}

/** The change that would take the last one back, or what of it cannot be read: then all of it is left. */
export function readChange(
  value: unknown,
):
  | { readonly change: Change; readonly reason: null }
  | { readonly change: null; readonly reason: Misread } {
  const { read, reason } = readUntold('before', (): Change => {
    const of = Fields.read(value, '');
    const puts = of.list('puts', 0, Number.MAX_SAFE_INTEGER, (one, path): Put => {
      const each = Fields.read(one, path);
      const list = each.oneOf('list', LISTS);
      const id = each.by('id', readId);
      const thing = orNull(each, 'thing', () => READERS[list](each.inner('thing')));
      if (thing !== null && thing.id !== id)
        no(`${path}.thing.id`, 'the id it stands under', thing.id);
      return { list, id, thing } as Put;
    });
    if (!of.has('ways')) return { puts };
    const its = of.inner('ways');
    const { ways, misread } = readSome(its, (name) => its.has(name));
    if (misread[0]) throw new Refused(misread[0]);
    return { puts, ways };
  });
  return reason === null ? { change: read, reason } : { change: null, reason };
}
