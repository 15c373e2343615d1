import type { Scenes } from '../scenes.ts';

export const bread: Scenes = {};
