import type { Scenes } from '../scenes.ts';

export const rise: Scenes = {};
