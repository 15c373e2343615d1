import { it } from 'vitest';
import { walkBread } from '../harness/walk-bread.ts';
import {
  HANDED_OVER,
  loadActs,
  RING_TO_BOWL,
  SHAPED,
  TO_THE_BOWL,
  WAITS_TO_PROOF,
} from '../harness/way-parts.ts';

it('bakes two loaves in tins side by side, without a lid or steam', async () => {
  const load = loadActs(5, 'lidOff').filter((act) => act !== 'lidOff');
  await walkBread({
    bread: 'Barley tin',
    takeBack: ['bulkReady', 'ovenOn', 'loafReady', 'loaded', 'crustReady', 'unloaded', 'ovenOff'],
    acts: [
      ...TO_THE_BOWL,
      ...['folded', 'folded'],
      ...SHAPED,
      ...['1 answers', 'loafReady'],
      ...HANDED_OVER,
    ],
    ovenActs: ['ovenOn', ...load.slice(2), 'ovenOff'],
    rings: [
      ...RING_TO_BOWL,
      ...['bulk.fold', 'bulk.fold', 'bulk.look', 'shape.finalShape'],
      ...['turnOn', 'proof.poke', 'judge', 'cool.handOver'],
    ],
    waits: [
      ...WAITS_TO_PROOF,
      'Let the loaves rise warm',
      'Let the crust colour',
      'Let the loaves cool',
    ],
    reload: ['Leave the dough to rise', 'Let the loaves rise warm', 'Let the crust colour'],
  });
});
