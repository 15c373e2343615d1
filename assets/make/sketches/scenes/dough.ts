import type { Scenes } from '../scenes.ts';

export const dough: Scenes = {};
