import type { Call } from '../../machines/attention/attention.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { STARTER } from '../../machines/kitchen/starter.ts';
import { TIMER } from '../../machines/kitchen/timers.ts';
import { timerNameOf } from '../core/records/timer-names.ts';
import { starterWords } from '../core/speech/words/starter.ts';
import { timer as words, timerWords, type TimerWords } from '../core/speech/words/timers.ts';
import { fill } from '../core/speech/fill.ts';
import type { Instant } from '../core/units.ts';
import { heatsIn } from './heats-in.ts';
import { potSaid } from './pot-of.ts';
import { subjectOf } from './call-subject.ts';
import { placedName } from './stage-names.ts';

/** More times at once are not read. */
export const MOST_SHOWN = 3;

/** A timer that stands: its words, its end, and whether that is past. */
export interface TimerShown {
  readonly id: string;
  readonly words: TimerWords;
  readonly until: Instant;
  readonly hot: boolean;
  readonly over: boolean;
}

/** All timers of the kitchen, the first to end first. */
export const timersOf = ({ timers, now }: Kitchen): readonly TimerShown[] =>
  Object.entries(timers)
    .map(([id, { name, until, call }]) => ({
      id,
      words: timerWords[timerNameOf(name)],
      until,
      hot: call === 'hot',
      over: until <= now,
    }))
    .toSorted((a, b) => a.until - b.until || (a.id < b.id ? -1 : 1));

/**
 * The timer that takes the screen, hot ones first, then the oldest; null: none is over and not put
 * off, or something else rings or burns, which goes first.
 */
export function timerOver(kitchen: Kitchen, ringing: Call | null): TimerShown | null {
  if (ringing !== null && ringing.who !== TIMER) return null;
  const { calls, snoozed } = kitchen.attention.context;
  if (calls.some(({ kind, who }) => kind === 'hot' && who !== TIMER)) return null;
  const isPutOff = (id: string): boolean =>
    calls.some((call) => call.who === TIMER && call.stage === id && snoozed[call.id]?.until);
  const over = timersOf(kitchen).filter((timer) => timer.over && !isPutOff(timer.id));
  return over.find(({ hot }) => hot) ?? over[0] ?? null;
}

const wordsOfCall = ({ timers }: Kitchen, { who, stage }: Pick<Call, 'who' | 'stage'>) =>
  who === TIMER
    ? timerWords[timerNameOf(timers[stage]?.name ?? '')]
    : who === STARTER
      ? starterWords.call
      : null;

/** What a call is about, a timer's and the starter's too, as it follows the call word; null where no words are known. */
export const aboutOf = (kitchen: Kitchen, call: Pick<Call, 'who' | 'stage'>): string | null =>
  wordsOfCall(kitchen, call)?.subject ?? subjectOf(call.stage, potSaid(kitchen, call.who));

/** The short name of what calls: a step's, a task's, a timer's or the starter's. */
export const calledOf = (kitchen: Kitchen, call: Pick<Call, 'who' | 'stage'>): string =>
  wordsOfCall(kitchen, call)?.name ?? placedName(call.who, call.stage, heatsIn(kitchen, call.who));

/** What is said as a timer ends, caution included; null for one that was stopped meanwhile. */
export function timerSaid(kitchen: Kitchen, id: string): string | null {
  const over = timersOf(kitchen).find((timer) => timer.id === id);
  if (over === undefined) return null;
  const { name, care } = over.words;
  return [fill(words.said, { name }), care].filter(Boolean).join(' ');
}
