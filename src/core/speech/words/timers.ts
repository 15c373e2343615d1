import { inTongue } from '../tongue.ts';
import type { TimerName } from '../../records/timer-names.ts';

/** A timer's name: on its key, beside a clock time, and as it follows a call word. */
export interface TimerWords {
  readonly name: string;
  readonly short: string;
  readonly subject: string;
  readonly care?: string;
}

export const timerWords: Readonly<Record<TimerName, TimerWords>> = inTongue(
  'timers',
  'timerWords',
  {
    nuts: {
      name: 'Nuts in the oven',
      short: 'Nuts',
      subject: 'nuts in the oven',
      care: 'The tray is hot: dry mitts, children 1 m back.',
    },
    inOven: {
      name: 'Something in the oven',
      short: 'Oven',
      subject: 'something in the oven',
      care: 'It is hot: dry mitts, children 1 m back.',
    },
    kettle: {
      name: 'Kettle',
      short: 'Kettle',
      subject: 'the kettle',
      care: 'Boiling water: a grown-up pours. Children 1 m back.',
    },
    other: { name: 'Something else', short: 'Timer', subject: 'a timer of yours' },
  },
);

export const timer = inTongue('timers', 'timer', {
  title: 'Timer',
  minutes: 'Key in how many minutes',
  /** The press on a name starts it. */
  ask: 'Till {time}: press what it is for',
  names: 'What it is for',
  unit: 'min',
  hint: 'Up to 999 minutes',
  began: '{name}: {minutes}, until {time}.',
  full: 'No more timers fit. Stop one first.',
  over: '{name}: time',
  said: '{name}: time.',
  ended: 'It ended at {time}.',
  stop: 'Stop it',
  stopThen: 'then back to what you did',
  stopOne: 'Stop: {name}, {time}',
  line: '{time} {name}',
  running: 'Timers: {lines}',
} as const);
