import { createMemo, createSignal, type Accessor } from 'solid-js';
import { dayAfter, type DayKey } from '../../../core/circle/day-key.ts';
import { ingredientKey } from '../../../core/circle/ingredient-key.ts';
import type { LookUp } from '../../../core/circle/label/ingredients.ts';
import { makeLabel, type MadeLabel } from '../../../core/circle/label/label.ts';
import { ordersOn } from '../../../core/circle/orders.ts';
import type { Formula } from '../../../core/formula/formula.ts';
import type { HouseCircle } from '../../house-circle.ts';
import type { House } from '../../house.ts';
import { dateShown, todayOf } from '../today.ts';
import { bakedOtherwise } from './baked-otherwise.ts';
import { fitLabel, labelPages, type LabelPage } from './fit.ts';
import { measureLabel } from './measure.tsx';
import { labelRows, oneBread, whosFor, type LabelRow } from './rows.ts';
import type { FittedLabel } from './LabelSheets.tsx';
import { showBread } from '../../../core/speech/show-bread.ts';

/** What is printed: whole pages, and the breads that are left out of it and why. */
export interface Printable {
  readonly pages: readonly LabelPage<FittedLabel>[];
  readonly count: number;
  readonly unanswered: readonly string[];
  readonly tooLong: readonly string[];
}

/** Of which bake: a day's orders, or one bread of today. */
export type LabelsFor = { readonly day: DayKey } | { readonly bread: string };

/** Labels as they are being put together; nothing of it is kept but answers and ways. */
export interface Labels {
  readonly day: Accessor<DayKey>;
  readonly rows: Accessor<readonly LabelRow[]>;
  count(row: LabelRow): number;
  setCount(row: LabelRow, count: number): void;
  readonly formula: (bread: string) => Formula | null;
  /** Without a name; null: its formula is gone. */
  made(row: LabelRow): MadeLabel | null;
  readonly lookUp: LookUp;
  days(bread: string): number | null;
  setDays(bread: string, days: number): void;
  /** The version that was baked last, where it is made otherwise than the latest; null: it is the same. */
  otherwise(bread: string): number | null;
  /** Names on this print alone. */
  readonly named: Accessor<boolean>;
  setNamed(named: boolean): void;
  /** Baked the day before it is fetched. */
  readonly before: Accessor<boolean>;
  setBefore(before: boolean): void;
  readonly printable: Accessor<Printable>;
}

export function createLabels(house: House, its: HouseCircle, of: Accessor<LabelsFor>): Labels {
  const [counts, setCounts] = createSignal<Readonly<Record<string, number>>>({});
  const [days, setDays] = createSignal<Readonly<Record<string, number>>>({});
  const [named, setNamed] = createSignal(false);
  const [before, setBefore] = createSignal(false);
  const day = createMemo((): DayKey => {
    const asked = of();
    return 'day' in asked ? asked.day : todayOf(house);
  });
  const rows = createMemo((): readonly LabelRow[] => {
    const asked = of();
    return 'day' in asked ? labelRows(ordersOn(its.circle(), asked.day)) : [oneBread(asked.bread)];
  });
  const count = (row: LabelRow): number => counts()[row.key] ?? Math.max(1, row.whos.length);
  const formula = (bread: string): Formula | null =>
    house.formulas().find((one) => one.formula?.id === bread)?.formula ??
    house.book().find(({ id }) => id === bread)?.latest ??
    null;
  const lookUp: LookUp = (name) =>
    its.circle().ingredients.find(({ id }) => id === ingredientKey(name)) ?? null;
  const make = (row: LabelRow, who: string | null): MadeLabel | null => {
    const bread = formula(row.bread);
    if (bread === null) return null;
    const { list, lines } = its.circle().ways;
    const { grams, cut } = row;
    const baked = dateShown(before() ? dayAfter(day(), -1) : day());
    const name = its.circle().neighbours.find(({ id }) => id === who)?.name ?? null;
    return makeLabel({
      ...{ formula: bread, list, lookUp, grams, cut, baked, lines },
      days: days()[row.bread] ?? null,
      who: name,
    });
  };
  const printable = createMemo((): Printable => {
    const { paper } = its.circle().ways;
    const fitted: FittedLabel[] = [];
    const unanswered = new Set<string>();
    const tooLong = new Set<string>();
    for (const row of rows()) {
      const name = showBread(formula(row.bread)?.name ?? '');
      const each = new Map<string | null, FittedLabel | null>();
      for (const who of whosFor(row, count(row))) {
        const whose = named() ? who : null;
        if (!each.has(whose)) {
          const { label = null } = make(row, whose) ?? {};
          if (label === null && name !== '') unanswered.add(name);
          const on = paper === 'roll' ? 'roll' : 'sheet';
          const fit = label && fitLabel(paper, measureLabel(label, on));
          if (label && fit === null) tooLong.add(name);
          each.set(whose, label && fit && { label, fit });
        }
        const one = each.get(whose);
        if (one) fitted.push(one);
      }
    }
    return {
      pages: labelPages(fitted),
      count: fitted.length,
      unanswered: [...unanswered],
      tooLong: [...tooLong],
    };
  });
  return {
    ...{ day, rows, count, formula, lookUp, named, setNamed, before, setBefore, printable },
    setCount: (row, to) => setCounts({ ...counts(), [row.key]: to }),
    made: (row) => make(row, null),
    otherwise: (bread) => {
      const entry = house.book().find(({ id }) => id === bread);
      return entry ? bakedOtherwise(entry) : null;
    },
    days: (bread) => days()[bread] ?? null,
    setDays: (bread, to) => setDays({ ...days(), [bread]: to }),
  };
}
