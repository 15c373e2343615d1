import type { Scenes } from '../scenes.ts';

export const ready: Scenes = {};
