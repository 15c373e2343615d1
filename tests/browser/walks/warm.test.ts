import { it } from 'vitest';
import { walkBread } from '../harness/walk-bread.ts';
import {
  HANDED_OVER,
  laterActs,
  loadActs,
  RING_TO_BOWL,
  SHAPED,
  TO_THE_BOWL,
  WAITS_TO_PROOF,
} from '../harness/way-parts.ts';

it('bakes a loaf that rises warm the same day', async () => {
  const load = loadActs(7, 'lidOff');
  await walkBread({
    bread: 'Lane wheat, same day',
    takeBack: [
      'inBaskets',
      'ovenOn',
      'answer:dent',
      'loafReady',
      'pokeOver',
      'loaded',
      'lidOff',
      'ovenOff',
    ],
    acts: [
      ...TO_THE_BOWL,
      ...['folded', 'folded', 'folded'],
      ...SHAPED,
      ...['1 answers', 'loafReady'],
      ...HANDED_OVER,
    ],
    // The first loaf was looked at where it rose; the second has risen on while that one baked.
    ovenActs: [
      'ovenOn',
      ...load.slice(2),
      ...laterActs('lidOff').map((act) => (act === 'pokeReady' ? 'pokeOver' : act)),
      'ovenOff',
    ],
    rings: [
      ...RING_TO_BOWL,
      ...['bulk.fold', 'bulk.fold', 'bulk.fold'],
      ...['bulk.look', 'shape.finalShape', 'turnOn', 'proof.poke'],
      ...['lift', 'judge'],
      ...['poke', 'lift', 'judge'],
      'cool.handOver',
    ],
    waits: [
      ...WAITS_TO_PROOF,
      'Let the loaves rise warm',
      'Leave the lid on',
      'Let the crust colour',
      'Let the pot reheat',
      'Let the loaves cool',
    ],
    reload: ['Let the loaves rise warm', 'Heat the oven, pot and lid in', 'Leave the lid on'],
  });
});
