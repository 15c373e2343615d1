import { LOAF_MODEL, readLoaf } from '../../../src/core/log/read-loaf.ts';
import type { Instant } from '../../../src/core/units.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { heat } from './bake-at-oven.ts';
import { must, work, type BakeDay, type OnTheDay } from './bake-day.ts';
import {
  bulkSigns,
  doughReading,
  edgeReading,
  levainSigns,
  loafSigns,
  measure,
  mended,
  riseReading,
  warmSigns,
} from './bake-signs.ts';
import type { Dice } from '../../truth/synthetic.ts';
import type { Hand } from './hand.ts';
import { listAt } from './onward.ts';
import { trueDough } from './true-dough.ts';

/** When the rise is read: as the long wait begins, and at shares of it as it then stands. */
const READ_AT = [0, 0.45, 0.8];

/** The minutes of hands before an act, and the act. */
const PLAIN: Readonly<Record<string, readonly [minutes: number, act: string]>> = {
  'read.plan': [2, 'readThrough'],
  'mix.work': [6, 'workedIn'],
  'bulk.spread': [6, 'spread'],
  'bulk.roll': [3, 'rolled'],
  'shape.preshape': [8, 'preshaped'],
  'shape.basket': [4, 'inBaskets'],
  'proof.toFridge': [2, 'inFridge'],
  'rescue.tray': [40, 'trayBaked'],
};

const likelyOf = ({ hand, day }: OnTheDay): Instant =>
  hand.kitchen.bakes[day.bake]!.context.marks['likely']!;

/** From the long wait to the press that ends the bulk; false where the bowl is left standing. */
function bulk(on: OnTheDay): boolean {
  const { hand, day } = on;
  const dough = on.dough!;
  const begin = hand.kitchen.bakes[day.bake]!.context.entered['mix.first']!;
  const end = Math.round(begin + (dough.ready - begin) * day.bulk);
  const from = hand.now;
  let reads = 0;
  for (;;) {
    const stage = hand.stage(day.bake);
    if (stage === 'bulk.look') {
      work(on, 2);
      if (day.goes === 'open') return false;
      bulkSigns(on);
      if (day.goes === 'tray') {
        if (hand.now >= end) return hand.press(day.bake, 'bulkOver');
      } else if (hand.now >= end - 10 * MINUTE) return hand.press(day.bake, 'bulkReady');
      must(hand.press(day.bake, 'bulkNotYet'), 'bulkNotYet');
      continue;
    }
    const due = Math.min(end, hand.deadline(day.bake)!);
    const next = from + (READ_AT[reads] ?? Infinity) * Math.max(0, likelyOf(on) - from);
    const read = day.measured && (reads === 0 || next < due);
    hand.turnTo(Math.max(hand.now, Math.round(read ? next : due)));
    if (hand.stage(day.bake) !== 'bulk.proving') continue;
    if (read) {
      measure(on, riseReading(on));
      if (reads === 0) measure(on, edgeReading(on));
      if (reads === 1) measure(on, doughReading(on));
      reads += 1;
    } else must(hand.press(day.bake, 'doughSeen'), 'doughSeen');
  }
}

/** One press, list or look of the bake where it stands; false where only time leads on. */
function hands(on: OnTheDay, stage: string): boolean {
  const { hand, day, loaves, dice } = on;
  const { bake, recipe } = day;
  const press = (act: string, extra: object = {}): void => must(hand.press(bake, act, extra), act);
  const { answers, entered } = hand.kitchen.bakes[bake]!.context;
  const [minutes, act] = PLAIN[stage] ?? [];
  if (act !== undefined) {
    work(on, minutes!);
    press(act);
    return true;
  }
  const list = listAt(stage, recipe, answers);
  if (list) {
    const grams = new Map(
      Object.values(recipe.lines).flatMap((lines) => lines.map((l) => [l.item, l.grams])),
    );
    for (const item of list) {
      work(on, 1);
      press('answer', { item, value: grams.has(item) ? String(grams.get(item)) : 'ready' });
    }
    return true;
  }
  switch (stage) {
    case 'levain.look':
      work(on, 3);
      levainSigns(on);
      press('levainRipe');
      return true;
    case 'levain.ripe':
      press('starterKept', { grams: recipe.keepBack });
      return true;
    case 'mix.first':
      measure(on, { what: 'kitchenTemperature', celsius: Math.round(day.room) });
      work(on, 6);
      press('mixed');
      return true;
    case 'mix.temperature': {
      const salted = entered['mix.work']!;
      const begin = entered['mix.first']!;
      on.dough = trueDough(
        recipe,
        { begin, salted },
        { lnV: day.lnV, from: day.mixed, room: day.room },
      );
      hand.turn(1);
      if (!day.measured) press('unmeasured');
      else if (day.slip === 'correct') mended(on);
      else measure(on, doughReading(on));
      return true;
    }
    case 'bulk.fold':
      work(on, 3);
      press('folded');
      if (day.slip === 'takeBack' && hand.kitchen.bakes[bake]!.context.touches === 1) {
        must(hand.takeBack(), 'takeBack');
        hand.turn(4);
        press('folded');
      }
      return true;
    case 'shape.divide':
      work(on, 4);
      for (const _ of loaves) {
        measure(on, {
          ...{ what: 'weight', of: 'piece' },
          grams: Math.round(dice.normal(recipe.piece, 6)),
        });
      }
      press('divided');
      return true;
    case 'shape.finalShape':
      work(on, 6);
      press('shaped');
      return true;
    case 'proof.look':
      work(on, 2);
      loafSigns(on);
      press('loafReady');
      return true;
    case 'proof.poke':
      work(on, 2);
      measure(on, { what: 'poke', dent: 'slow' });
      warmSigns(on, bake);
      press('loafReady');
      return true;
    case 'cool.handOver':
      work(on, 5);
      for (const _ of loaves) {
        measure(on, {
          ...{ what: 'weight', of: 'loaf' },
          grams: Math.round(dice.normal(recipe.piece * 0.86, 7)),
        });
      }
      press('handedOver');
      return true;
    case 'cool.note':
      hand.turn(1);
      press('noted', day.note === null ? {} : { text: day.note });
      return true;
    default:
      return false;
  }
}

/** The next instant at which anything of this bake or the oven falls due. */
const nextDue = ({ hand, day }: OnTheDay): Instant => {
  const { bakes, oven, lanes } = hand.kitchen;
  const machines = [bakes[day.bake], oven, ...Object.values(lanes)];
  const dues = machines.flatMap((one) => (one ? (hand.fold.deadlineOf(one) ?? []) : []));
  return Math.min(...dues.filter((at) => at > hand.now));
};

/** What the cut loaf showed, told on the next morning. */
function cut({ hand, day, dice }: OnTheDay, start: string): void {
  if (day.cut === null) return;
  hand.turnTo(hand.now + dice.between(2, 14) * HOUR);
  const { says, causes, change, because } = readLoaf(day.cut, {
    filled: day.recipe.formula.fillings.length > 0,
  });
  const read = { says, causes, change, because, model: LOAF_MODEL };
  must(hand.do({ kind: 'cut', target: start, answers: day.cut, read }), 'cut');
}

/**
 * Bakes one invented day on a kitchen of the real machine, from the read-through to its note, with the
 * hand's models and its clock turned. @throws where the machine refuses a step.
 */
export function bakeThrough(hand: Hand, dice: Dice, day: BakeDay): void {
  const { bake, recipe, room, goes } = day;
  const loaves = Array.from({ length: recipe.loaves }, (_, i) => `${bake}.${i + 1}`);
  const on: OnTheDay = { hand, dice, day, loaves };
  const kitchen = Math.round(room);
  must(hand.do({ kind: 'start', bake, loaves, from: 'read.plan', recipe, kitchen }), 'start');
  const start = hand.records.at(-1)!.fact.id;
  for (let steps = 0; steps < 400; steps += 1) {
    const stage = hand.stage(bake);
    if (stage === 'shape.basket' && goes === 'early') {
      must(hand.press(bake, 'ended'), 'ended');
      return;
    }
    if (stage === 'bulk.proving') {
      if (bulk(on)) continue;
      return;
    }
    if (stage !== null && hands(on, stage)) continue;
    if (heat(on)) continue;
    if (stage === null) return cut(on, start);
    const due = nextDue(on);
    if (!Number.isFinite(due)) throw new Error(`${bake} stands still at ${stage}.`);
    hand.turnTo(due);
  }
  throw new Error(`${bake} does not end.`);
}
