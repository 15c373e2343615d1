import { sounding } from '../../machines/attention/attention.ts';
import { deadlineOf } from '../../machines/kitchen/dues.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { gate } from '../core/speech/words/gate.ts';
import { headsUp } from '../core/speech/words/heads-up.ts';
import { fill } from '../core/speech/fill.ts';
import { MINUTE } from '../core/units.ts';
import { potSaid } from '../screens/pot-of.ts';

/** A tablet that slept through it tells no minute that is half over. */
const LEAST = MINUTE / 2;

/**
 * What is said a minute before this lane's hot call. Null where it would be late, and while another
 * hot call sounds: its words have sent the children back, and are not cut short.
 */
export function headsUpOf(kitchen: Kitchen, who: string): string | null {
  const lane = kitchen.lanes[who];
  const end = lane === undefined ? null : deadlineOf(lane);
  if (lane === undefined || end === null || end - kitchen.now < LEAST) return null;
  if (sounding(kitchen.attention.context).some(({ kind }) => kind === 'hot')) return null;
  const words = headsUp[stageOf(lane) as keyof typeof headsUp];
  return words && [gate.bothHands, fill(words, { pot: potSaid(kitchen, who) })].join(' ');
}
