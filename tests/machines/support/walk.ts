import { LISTS } from '../../../src/core/records/lists.ts';
import type { Hand } from './hand.ts';

const all = (items: readonly string[], value: string): Record<string, string> =>
  Object.fromEntries(items.map((item) => [item, value]));

type Step = readonly [name: string, act: (hand: Hand) => boolean];

const press = (who: string, act: string, extra: object = {}): Step => [
  act,
  (hand) => hand.press(who, act, extra),
];
const turn = (minutes: number): Step => [`+${minutes}`, (hand) => (hand.turn(minutes), true)];
const answers = (who: string, items: readonly string[], value: string): Step[] =>
  items.map((item) => [`${item}`, (hand) => hand.answer(who, all([item], value))]);

/** The oven's part of one loaf in one pot. */
const load = (loaf: string): Step[] => [
  ...answers('oven', LISTS.pokeSigns, 'slowly'),
  press('oven', 'pokeReady'),
  ...answers('oven', LISTS.beforeOven, 'ready'),
  press('oven', 'scored'),
  press('oven', 'loaded', { loaves: [loaf] }),
  turn(18),
  press('oven', 'lidOff'),
  turn(20),
  press('oven', 'crustReady'),
  press('oven', 'unloaded'),
];

/** A whole filled, retarded bake of two loaves through one pot, every step with a name. */
export const WHOLE_BAKE: readonly Step[] = [
  ['start', (hand) => hand.start('a')],
  press('a', 'readThrough'),
  ...answers('a', LISTS.beforeStart, 'ready'),
  ...answers('a', ['seed', 'flour', 'water'], 'in'),
  turn(300),
  press('a', 'levainRipe'),
  press('a', 'starterKept'),
  ...answers('a', ['flour:wheat', 'water', 'levain'], 'in'),
  press('a', 'mixed'),
  turn(30),
  ...answers('a', ['salt', 'secondWater'], 'in'),
  press('a', 'workedIn'),
  [
    'dough 25',
    (hand) =>
      hand.do({
        kind: 'reading',
        by: 'hand',
        bake: 'a',
        reading: { what: 'doughTemperature', celsius: 25 },
      }),
  ],
  turn(30),
  press('a', 'folded'),
  turn(30),
  press('a', 'spread'),
  ...answers('a', ['filling:cherry', 'filling:hazelnut'], '130'),
  press('a', 'rolled'),
  turn(30),
  press('a', 'folded'),
  turn(170),
  ...answers('a', LISTS.bulkSigns, 'domed'),
  press('a', 'bulkReady'),
  press('a', 'divided'),
  press('a', 'preshaped'),
  turn(20),
  press('a', 'shaped'),
  press('a', 'inBaskets'),
  turn(20),
  press('a', 'inFridge'),
  turn(720),
  press('a', 'loafReady'),
  press('oven', 'ovenOn'),
  turn(45),
  ...load('a1'),
  turn(10),
  ...load('a2'),
  press('oven', 'ovenOff'),
  turn(120),
  press('a', 'handedOver'),
  press('a', 'noted', { text: 'Good.' }),
];
