import { it } from 'vitest';
import { walkBread } from '../harness/walk-bread.ts';
import {
  COLD_PROOF,
  HANDED_OVER,
  laterActs,
  loadActs,
  RING_COLD,
  RING_TO_BOWL,
  SHAPED,
  sheetActs,
  TO_THE_BOWL,
  WAITS_COLD,
  WAITS_TO_PROOF,
} from '../harness/way-parts.ts';

it('bakes olive and seed on a hot stone with steam', async () => {
  // Without a lid nobody is asked about its knob.
  const load = loadActs(6, 'steamOut');
  await walkBread({
    bread: 'Olive and seed',
    takeBack: [
      ...['answer:filling:pumpkin', 'answer:filling:sesame', 'rolled', 'bulkReady', 'inFridge'],
      ...['loaded', 'steamOut', 'crustReady', 'unloaded'],
    ],
    acts: [...TO_THE_BOWL, ...sheetActs(3), ...SHAPED, ...COLD_PROOF, ...HANDED_OVER],
    ovenActs: ['ovenOn', ...load, ...laterActs('steamOut'), 'ovenOff'],
    rings: [
      ...RING_TO_BOWL,
      ...['bulk.fold', 'bulk.spread', 'bulk.fold'],
      ...RING_COLD,
      ...['poke', 'vent', 'judge'],
      ...['poke', 'vent', 'judge'],
      'cool.handOver',
    ],
    waits: [
      ...WAITS_TO_PROOF,
      ...WAITS_COLD,
      'Let the stone get hot',
      'Leave the steam in',
      'Let the crust colour',
      'Let the stone reheat',
      'Let the loaves cool',
    ],
    reload: [
      'Let the stone get hot',
      'Leave the steam in',
      'Let the steam out, face back',
      'What colour is the crust?',
    ],
  });
});
