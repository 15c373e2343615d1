import type { Scenes } from '../scenes.ts';

export const proof: Scenes = {};
