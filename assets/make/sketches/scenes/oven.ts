import type { Scenes } from '../scenes.ts';

export const oven: Scenes = {};
