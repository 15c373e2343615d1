import { it } from 'vitest';
import { expectKnuckle } from '../browser/harness/knuckle.ts';

it('takes 1,000 presses of a knuckle as they are meant, and none twice', async () => {
  await expectKnuckle(1_000);
});
