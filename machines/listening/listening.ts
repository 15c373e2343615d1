import { assign, initialTransition, type SnapshotFrom } from 'xstate';
import { pureStep } from '../kitchen/pure-step.ts';
import { setup } from '../setup.ts';

/** How long the ear stays open after a prompt or a press, ms. Judgement. */
export const OPEN_MS = 6_000;
/** A saying that has begun is heard out, this long at most, ms: no phrase is longer. Judgement. */
export const SAYING_MS = 4_000;
/** What was said is told by then, or it was but a noise, ms. Judgement. */
export const DECIDE_MS = 1_500;
/** After a press the page answers first; nothing new on it may be pressed sooner either, ms. */
export const SETTLE_MS = 400;
/** After a digit the next one comes, or the number stands, ms. Judgement. */
export const NEXT_KEY_MS = 3_000;
/** No reading has more digits; then it is read back. */
export const MOST_KEYS = 6;
/** So many sayings in a row that were not understood: by hand from then on. */
export const MOST_FAILURES = 2;

/** Why there is no microphone. */
export type EarOver = 'denied' | 'none' | 'gone' | 'failed';

/** What a saying came to. `act`: something was done, or told. `key`: one digit of a number. `nothing`: it was not understood. */
export type Made = 'act' | 'key' | 'nothing';

/** All instants on the driver's clock, ms; it need not be the wall's. */
export type ListeningEvent = { readonly at: number } & (
  | { readonly type: 'sync'; readonly wanted: boolean; readonly sounds: boolean }
  /** A hand or a foot pressed something; never a voice. */
  | { readonly type: 'pressed' }
  /** Another act stands on the bench. */
  | { readonly type: 'act' }
  /** The page offers nothing that may be said. */
  | { readonly type: 'unasked' }
  | { readonly type: 'open' }
  | { readonly type: 'speaks'; readonly speaks: boolean }
  | { readonly type: 'said'; readonly made: Made }
  | { readonly type: 'over'; readonly why: EarOver }
  /** A lost microphone is tried once more. */
  | { readonly type: 'again' }
  | { readonly type: 'due' }
);

export interface ListeningContext {
  readonly wanted: boolean;
  /** A call rings or is about to, or the voice speaks. */
  readonly sounds: boolean;
  /** When the state is left by itself, by `due`; null: it is not. */
  readonly until: number | null;
  /** When this opening ends; a saying that began before is heard out. */
  readonly ends: number;
  /** Sayings in a row that were not understood. */
  readonly failures: number;
  /** Digits of this opening. */
  readonly keys: number;
}

const listeningSetup = setup({
  types: { context: {} as ListeningContext, events: {} as ListeningEvent },
  actions: {
    follow: assign(({ event }) =>
      event.type === 'sync' ? { wanted: event.wanted, sounds: event.sounds } : {},
    ),
    rest: assign({ until: null }),
    forgive: assign({ failures: 0 }),
    settle: assign(({ event }) => ({ until: event.at + SETTLE_MS })),
    begin: assign(({ event }) => ({
      until: event.at + OPEN_MS,
      ends: event.at + OPEN_MS,
      keys: 0,
    })),
    hearOut: assign(({ event }) => ({ until: event.at + SAYING_MS })),
    decide: assign(({ context, event }) => ({
      until: Math.min(context.until ?? Infinity, event.at + DECIDE_MS),
    })),
    resume: assign(({ context }) => ({ until: context.ends })),
    key: assign(({ context, event }) => ({
      keys: context.keys + 1,
      failures: 0,
      until: event.at + NEXT_KEY_MS,
      ends: event.at + NEXT_KEY_MS,
    })),
    fail: assign(({ context }) => ({ failures: context.failures + 1 })),
  },
  guards: {
    isWanted: ({ context }) => context.wanted,
    isUnwanted: ({ context }) => !context.wanted,
    mayOpen: ({ context }) => !context.sounds,
    sounds: ({ context }) => context.sounds,
    isDue: ({ context, event }) => context.until !== null && event.at >= context.until,
    /** The prompt is over. */
    fellSilent: ({ context, event }) =>
      event.type === 'sync' && event.wanted && context.sounds && !event.sounds,
    beginsToSpeak: ({ event }) => event.type === 'speaks' && event.speaks,
    hasSpoken: ({ event }) => event.type === 'speaks' && !event.speaks,
    isAct: ({ event }) => event.type === 'said' && event.made === 'act',
    isLastKey: ({ context, event }) =>
      event.type === 'said' && event.made === 'key' && context.keys + 1 >= MOST_KEYS,
    isKey: ({ event }) => event.type === 'said' && event.made === 'key',
    isLastFailure: ({ context }) => context.failures + 1 >= MOST_FAILURES,
    isStillOpen: ({ context, event }) => event.at < context.ends,
    isDenied: ({ event }) => event.type === 'over' && event.why === 'denied',
    isNone: ({ event }) => event.type === 'over' && event.why === 'none',
    isGone: ({ event }) => event.type === 'over' && event.why === 'gone',
  },
});

/** Leads out of a state in which the microphone is open. */
const shutting = {
  always: [
    { guard: 'isUnwanted', target: 'off' },
    { guard: 'sounds', target: 'shut' },
  ],
} as const;
const said = [
  { guard: 'isAct', target: 'shut', actions: 'forgive' },
  { guard: 'isLastKey', target: 'shut', actions: ['key', 'rest'] },
  { guard: 'isKey', target: 'open', actions: 'key' },
  { guard: 'isLastFailure', target: 'tiles', actions: 'fail' },
  { guard: 'isStillOpen', target: 'open', actions: ['fail', 'resume'] },
  { target: 'shut', actions: 'fail' },
] as const;
const over = [
  { guard: 'isDenied', target: 'denied' },
  { guard: 'isNone', target: 'none' },
  { guard: 'isGone', target: 'gone' },
  { target: 'failed' },
] as const;
const pressed = { target: 'shut', actions: ['forgive', 'settle'] } as const;
const listening = { pressed, unasked: 'shut', over, act: { actions: 'forgive' } } as const;
/** There is no microphone: nothing opens until somebody asks for it once more. */
const lost = {
  entry: 'rest',
  always: { guard: 'isUnwanted', target: 'off' },
  on: { again: pressed },
} as const;

/**
 * When the microphone is open. It opens after a prompt of ours or a press of a hand or foot, for a few
 * seconds, and for one act: whoever goes on talking, shouts, or says the same again and again has to wait for
 * the next prompt, which is of another act and is said to its end first, or press something. So a voice does
 * no more than one thing for each that a hand or the program did. Digits are the exception: several of them
 * are one number, which does nothing until it was read back and agreed to in an opening of its own.
 *
 * It is shut while anything sounds: we do not hear ourselves, and a call is never kept quiet by an open
 * microphone. What was not understood twice in a row is pressed by hand: nobody is asked to say it again.
 */
export const listeningMachine = listeningSetup.createMachine({
  id: 'listening',
  options: { maxIterations: 50 },
  context: { wanted: false, sounds: false, until: null, ends: 0, failures: 0, keys: 0 },
  initial: 'off',
  on: { sync: { actions: 'follow' } },
  states: {
    off: {
      entry: ['rest', 'forgive'],
      always: { guard: 'isWanted', target: 'shut' },
    },
    shut: {
      always: { guard: 'isUnwanted', target: 'off' },
      exit: 'rest',
      on: {
        sync: [
          { guard: 'fellSilent', target: 'opening', actions: 'follow' },
          { actions: 'follow' },
        ],
        pressed: { actions: ['forgive', 'settle'] },
        act: { actions: 'forgive' },
        due: { guard: 'isDue', target: 'afterPress' },
      },
    },
    /** The page has answered; where it speaks, the ear opens behind that. */
    afterPress: { always: [{ guard: 'mayOpen', target: 'opening' }, { target: 'shut' }] },
    /** The microphone is asked for; nobody is told to speak yet. */
    opening: {
      tags: 'listens',
      exit: 'rest',
      entry: 'begin',
      ...shutting,
      on: {
        ...listening,
        open: { target: 'open', actions: 'resume' },
        due: { guard: 'isDue', target: 'shut' },
      },
    },
    open: {
      tags: ['listens', 'hears'],
      exit: 'rest',
      ...shutting,
      on: {
        ...listening,
        speaks: { guard: 'beginsToSpeak', target: 'speaks' },
        said,
        due: { guard: 'isDue', target: 'shut' },
      },
    },
    speaks: {
      tags: ['listens', 'hears'],
      exit: 'rest',
      entry: 'hearOut',
      ...shutting,
      on: {
        ...listening,
        // What is being said was begun at another act.
        act: { target: 'shut', actions: 'forgive' },
        speaks: { guard: 'hasSpoken', actions: 'decide' },
        said,
        due: [{ guard: 'isDue', target: 'heard' }],
      },
    },
    /** Nobody told what it was: a noise, or talk without an end. */
    heard: {
      always: [{ guard: 'isStillOpen', target: 'open', actions: 'resume' }, { target: 'shut' }],
    },
    tiles: {
      entry: 'rest',
      always: { guard: 'isUnwanted', target: 'off' },
      on: { pressed, act: { target: 'shut', actions: 'forgive' } },
    },
    denied: lost,
    none: lost,
    gone: lost,
    failed: lost,
  },
});

export type ListeningSnapshot = SnapshotFrom<typeof listeningMachine>;

export const beginListening = (): ListeningSnapshot => initialTransition(listeningMachine)[0];

export const stepListening = (at: ListeningSnapshot, event: ListeningEvent): ListeningSnapshot =>
  pureStep(listeningMachine, at, event)[0];
