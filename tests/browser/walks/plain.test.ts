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
  TO_THE_BOWL,
  WAITS_COLD,
  WAITS_TO_PROOF,
} from '../harness/way-parts.ts';

it('bakes a plain loaf in the pot, with folds and no lamination', async () => {
  const touches = ['folded', 'folded', 'folded'];
  const load = loadActs(7, 'lidOff');
  await walkBread({
    bread: 'Lane wheat',
    takeBack: ['folded', 'divided', 'ovenOn', 'loaded', 'lidOff', 'ovenOff', 'handedOver'],
    acts: [...TO_THE_BOWL, ...touches, ...SHAPED, ...COLD_PROOF, ...HANDED_OVER],
    ovenActs: ['ovenOn', ...load, ...laterActs('lidOff'), 'ovenOff'],
    rings: [
      ...RING_TO_BOWL,
      ...['bulk.fold', 'bulk.fold', 'bulk.fold'],
      ...RING_COLD,
      ...['poke', 'lift', 'judge'],
      ...['poke', 'lift', 'judge'],
      'cool.handOver',
    ],
    waits: [
      ...WAITS_TO_PROOF,
      ...WAITS_COLD,
      'Let the pot get hot',
      'Leave the lid on',
      'Let the crust colour',
      'Let the pot reheat',
      'Let the loaves cool',
    ],
    reload: ['Leave the levain to rise', 'Leave the loaves in the fridge'],
  });
});
