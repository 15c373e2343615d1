/** Every sketch by its name: the scenes of each part of a bake, put together. */
import type { Sketch } from '../../../src/core/sketches/sketches.ts';
import { bread } from './scenes/bread.ts';
import { dough } from './scenes/dough.ts';
import { meanwhile } from './scenes/meanwhile.ts';
import { oven } from './scenes/oven.ts';
import { pot } from './scenes/pot.ts';
import { proof } from './scenes/proof.ts';
import { ready } from './scenes/ready.ts';
import { rise } from './scenes/rise.ts';
import { shaping } from './scenes/shaping.ts';

/** What draws a sketch: the whole text of its file. */
export type Scenes = Readonly<Partial<Record<Sketch, () => string>>>;

export const scenes = (): Scenes => ({
  ...ready,
  ...dough,
  ...rise,
  ...meanwhile,
  ...shaping,
  ...proof,
  ...oven,
  ...pot,
  ...bread,
});
