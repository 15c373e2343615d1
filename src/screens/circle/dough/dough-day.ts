import { weighInsOf } from '../../../../machines/kitchen/weigh-ins.ts';
import { baseDoughs, type BaseDough } from '../../../core/circle/base-dough.ts';
import { batchesOf, type Batch, type BatchTrouble } from '../../../core/circle/batches.ts';
import type { Circle } from '../../../core/circle/circle.ts';
import type { DayKey } from '../../../core/circle/day-key.ts';
import { ordersOn } from '../../../core/circle/orders.ts';
import { ovenBatch } from '../../../core/circle/oven-batch.ts';
import { ovenDay, runsOf, type OvenDay, type Run } from '../../../core/circle/oven-day.ts';
import { doughPage } from '../../../core/speech/words/circle-dough.ts';
import { shown } from '../../../core/speech/facts.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { tellNotice } from '../../../core/speech/tell-notice.ts';
import { showWeight } from '../../../core/speech/weights.ts';
import type { Units } from '../../../core/units.ts';
import type { House } from '../../house.ts';

/** A batch in the oven: its loads and hours, counted from the first loading. */
export interface Baking {
  readonly batch: Batch;
  /** Null: nothing in this kitchen bakes it. */
  readonly run: Run | null;
}

/** All that a day's orders are made of. */
export interface DoughDay {
  readonly batches: readonly Batch[];
  readonly troubles: readonly BatchTrouble[];
  readonly doughs: readonly BaseDough[];
  /** In the order in which they are loaded; what bakes nowhere last. */
  readonly baking: readonly Baking[];
  /** Instants are counted from the first loading. */
  readonly oven: OvenDay;
}

const bakingOf = (batches: readonly Batch[], kitchen: Parameters<typeof ovenBatch>[1]) => {
  const each = batches.map((batch) => ({
    batch,
    oven: ovenBatch(batch.formula, kitchen, batch.loaves, batch.piece),
  }));
  const runs = runsOf(each.map(({ oven }) => oven));
  const baking = each
    .map(({ batch, oven }) => ({ batch, run: runs.find((run) => run.batch === oven) ?? null }))
    .toSorted((a, b) => (a.run?.from ?? Infinity) - (b.run?.from ?? Infinity));
  const oven = ovenDay(
    each.map(({ oven: one }) => one),
    0,
  );
  return { baking, oven };
};

/** What a day's orders come to in this kitchen. */
export function doughDayOf(house: House, circle: Circle, day: DayKey): DoughDay {
  const equipment = house.equipment();
  const { batches, troubles } = batchesOf(ordersOn(circle, day), {
    formulas: house.formulas().flatMap(({ formula }) => formula ?? []),
    weighIns: weighInsOf(house.kitchen()),
    scale: equipment.scale,
  });
  return {
    batches,
    troubles,
    doughs: baseDoughs(batches, equipment),
    ...bakingOf(batches, equipment),
  };
}

/** 'Lane wheat', or 'Lane wheat, 700 g' where it is wanted by its weight. */
export const batchName = ({ formula, grams }: Batch, units: Units): string =>
  grams === null
    ? showBread(formula.name)
    : fill(doughPage.sized, { name: showBread(formula.name), grams: showWeight(grams, units) });

/** What cannot be baked, and why. */
export function troubleWords(
  { bread, loaves, reason }: BatchTrouble,
  house: Pick<House, 'book' | 'ways'>,
): string {
  const name = showBread(house.book().find(({ id }) => id === bread)?.latest.name ?? bread);
  const words =
    reason.key === 'breadGone'
      ? fill(doughPage.breadGone, shown({ loaves }))
      : tellNotice(reason, house.ways());
  return fill(doughPage.trouble, { name, words });
}
