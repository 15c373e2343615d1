import type { Minutes } from '../units.ts';

/**
 * A loaf that went over, spread two fingers thick in an oiled tray: looked at after 20 minutes, out by 25.
 * Common practice, no source.
 */
export const TRAY: { readonly least: Minutes; readonly most: Minutes } = { least: 20, most: 25 };
