import type { Scenes } from '../scenes.ts';

export const meanwhile: Scenes = {};
