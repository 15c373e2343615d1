import type { Scenes } from '../scenes.ts';

export const shaping: Scenes = {};
