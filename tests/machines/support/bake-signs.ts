import type { Fact, Reading } from '../../../src/core/records/fact.ts';
import { must, type OnTheDay } from './bake-day.ts';

/** A reading of this bake, where anything is measured in it. */
export function measure({ hand, day }: OnTheDay, reading: Reading): void {
  if (day.measured) must(hand.measure(day.bake, reading), reading.what);
}

const tenth = (celsius: number): number => Math.round(celsius * 10) / 10;

/** The dough's temperature, as a thermometer shows it. */
export const doughReading = ({ hand, dice, dough }: OnTheDay): Reading => ({
  what: 'doughTemperature',
  celsius: tenth(dice.normal(dough!.celsius(hand.now), 0.3)),
});

/** Its rise, as it is read off the tub: to five percent. */
export const riseReading = ({ hand, dice, dough }: OnTheDay): Reading => ({
  what: 'rise',
  percent: 5 * Math.round(Math.max(0, dice.normal(dough!.percent(hand.now), 8)) / 5),
  of: 'dough',
});

export const edgeReading = ({ hand, dough }: OnTheDay): Reading => {
  const risen = dough!.percent(hand.now);
  return {
    what: 'edge',
    edge: risen > 60 ? 'domed' : 'flat',
    bubbles: risen > 80 ? 'many' : risen > 45 ? 'some' : 'none',
  };
};

/** First keyed ten degrees too low, and mended two minutes later. */
export function mended(on: OnTheDay): void {
  const { hand, day } = on;
  const right = doughReading(on);
  if (right.what !== 'doughTemperature') return;
  must(hand.measure(day.bake, { ...right, celsius: tenth(right.celsius - 10) }), 'keyed wrong');
  const { id } = hand.records.at(-1)!.fact as Fact;
  hand.turn(2);
  must(hand.do({ kind: 'correct', target: id, reading: right }), 'mended');
}

const answered = (on: OnTheDay, who: string, answers: Readonly<Record<string, string>>): void => {
  if (on.day.measured) must(on.hand.answer(who, answers), Object.keys(answers).join());
};

export const levainSigns = (on: OnTheDay): void =>
  answered(on, on.day.bake, {
    ...{ colour: 'creamy', rise: 'doubled', top: 'domed', bubbles: 'many', smell: 'fresh' },
  });

/** What a look at the dough answers, by how far it has risen. */
export function bulkSigns(on: OnTheDay): void {
  const risen = on.dough!.percent(on.hand.now);
  const { edge, bubbles } = edgeReading(on) as Extract<Reading, { what: 'edge' }>;
  answered(on, on.day.bake, {
    rise: String(25 * Math.min(4, Math.floor(risen / 25))),
    ...{ edge, bubbles, wobble: risen > 60 ? 'jiggles' : 'firm', top: 'smooth' },
  });
}

export const loafSigns = (on: OnTheDay): void =>
  answered(on, on.day.bake, {
    grown: on.day.bulk < 0.9 ? 'little' : 'grown',
    rim: on.day.bulk > 1.1 ? 'above' : 'level',
    ...{ dent: 'slowly', wobble: 'jiggles', skin: 'smooth' },
  });

export const warmSigns = (on: OnTheDay, who: string): void =>
  answered(on, who, { dent: on.day.bulk > 1.1 ? 'stays' : 'slowly', grown: 'grown' });

export const crustSigns = (on: OnTheDay, who: string): void =>
  answered(on, who, {
    colour: on.day.crust,
    ...{ base: on.day.crust === 'pale' ? 'dull' : 'hollow', core: 'ready' },
  });
