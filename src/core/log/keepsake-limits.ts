import { PICTURE_LIMITS } from '../pictures/picture-limits.ts';

/**
 * What may be kept of one bake beside its facts: letters, bytes, seconds, and how many. Judgement: a few
 * photos of crust and crumb, a minute to say why; a year of it does not fill a tablet.
 */
export const KEEPSAKE_LIMITS = {
  noteLetters: 1_000,
  tagLetters: 24,
  tags: 24,
  ate: 200,
  photos: 6,
  photoBytes: PICTURE_LIMITS.kept,
  voices: 6,
  voiceSeconds: 60,
  /** A minute of speech at the highest rate that browsers record in by themselves. */
  voiceBytes: 2_000_000,
} as const;
