import { it } from 'vitest';
import { walkBread } from '../harness/walk-bread.ts';
import { HANDED_OVER, loadActs, RING_TO_BOWL, TO_THE_BOWL } from '../harness/way-parts.ts';

it('bakes a dough of much rye, spooned into its tins', async () => {
  const load = loadActs(5, 'lidOff').filter((act) => act !== 'lidOff');
  await walkBread({
    bread: 'Harbour rye',
    takeBack: ['scooped', 'ovenOn', 'loafReady', 'loaded', 'crustReady', 'ovenOff', 'handedOver'],
    acts: [
      // All its water goes in at once: the salt alone comes later.
      ...TO_THE_BOWL.map((act) => (act === '2 answers' ? '1 answers' : act)),
      ...['5 answers', 'bulkReady', 'scooped'],
      ...['1 answers', 'loafReady'],
      ...HANDED_OVER,
    ],
    ovenActs: ['ovenOn', ...load.slice(2), 'ovenOff'],
    rings: [...RING_TO_BOWL, ...['bulk.look', 'turnOn', 'proof.poke', 'judge', 'cool.handOver']],
    waits: [
      'Leave the levain to rise',
      'Let the dough rest',
      'Leave the dough to rise',
      'Let the loaves rise warm',
      'Let the crust colour',
      'Let the loaves cool',
    ],
    reload: ['Let the loaves rise warm', 'Let the loaves cool'],
  });
});
