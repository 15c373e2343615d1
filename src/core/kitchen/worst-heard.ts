import type { Heard } from './equipment.ts';

const FROM_WORST: readonly Heard[] = ['no', 'faint', 'yes'];

/** Of several calls the one heard worst counts: a kitchen is as loud as its quietest call. */
export const worstHeard = (heard: readonly Heard[]): Heard =>
  FROM_WORST.find((one) => heard.includes(one)) ?? 'sightOnly';
