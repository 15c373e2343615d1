import { it } from 'vitest';
import { lookWalk, WAYS } from '../browser/harness/look-walk.ts';
import { everyWay } from '../browser/harness/ways.ts';

it('holds the look in every way there is', async () => {
  await lookWalk(() => everyWay(WAYS));
});
