import { it } from 'vitest';
import { expectKnuckle } from './harness/knuckle.ts';

it('takes the presses of a knuckle as they are meant, and none twice', async () => {
  await expectKnuckle(150);
});
