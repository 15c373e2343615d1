import { assign } from 'xstate';
import type { AttentionPlace } from '../../src/core/records/position.ts';
import type { Instant } from '../../src/core/units.ts';
import type { CallKind } from '../ports.ts';
import { setup } from '../setup.ts';

/** The program asking for the baker. Derived from where the machines stand, never stored. */
export interface Call {
  /** `who:stage:since`: the same call has the same id on every replay. */
  readonly id: string;
  readonly who: string;
  readonly stage: string;
  readonly kind: CallKind;
  readonly since: Instant;
  /** It stands to be seen and makes no sound. */
  readonly quiet?: true;
}

/** A look or an act may be put off twice, two minutes each. A hot call never. */
export const SNOOZE_MS = 2 * 60_000;
export const MOST_SNOOZES = 2;

export type AttentionContext = AttentionPlace & { readonly calls: readonly Call[] };

export type AttentionEvent =
  | { type: 'sync'; at: Instant; calls: readonly Call[] }
  | { type: 'heard'; at: Instant; call: string }
  | { type: 'snoozed'; at: Instant; call: string; until: Instant }
  | { type: 'due'; at: Instant }
  | { type: 'wake'; at: Instant };

const URGENCY: Readonly<Record<CallKind, number>> = { hot: 0, act: 1, look: 2 };

/** Calls that sound now, the most urgent first, then the oldest. */
export const sounding = (context: AttentionContext): readonly Call[] =>
  context.calls
    .filter((call) => !call.quiet && !context.heard.includes(call.id))
    .toSorted((a, b) => URGENCY[a.kind] - URGENCY[b.kind] || a.since - b.since);

/** How often a pending call may still be put off: never a hot one, nor one that is put off already. */
export const snoozesLeft = (context: AttentionContext, id: string): number => {
  const call = context.calls.find((pending) => pending.id === id);
  const { until = null, times = 0 } = context.snoozed[id] ?? {};
  const may = call !== undefined && call.kind !== 'hot' && !call.quiet && until === null;
  return may ? MOST_SNOOZES - times : 0;
};

/** When the next snooze ends, or null. */
export const snoozeEnds = (context: AttentionContext): Instant | null => {
  const ends = Object.values(context.snoozed).flatMap(({ until }) => until ?? []);
  return ends.length > 0 ? Math.min(...ends) : null;
};

const attentionSetup = setup({
  types: { context: {} as AttentionContext, events: {} as AttentionEvent },
  actions: {
    /** A call that is answered by its act takes its silence with it. */
    settle: assign(({ context, event }) => {
      if (event.type !== 'sync') return {};
      const ids = new Set(event.calls.map((call) => call.id));
      return {
        calls: event.calls,
        heard: context.heard.filter((id) => ids.has(id)),
        snoozed: Object.fromEntries(Object.entries(context.snoozed).filter(([id]) => ids.has(id))),
      };
    }),
    silence: assign(({ context, event }) =>
      event.type === 'heard' || event.type === 'snoozed'
        ? { heard: [...context.heard.filter((id) => id !== event.call), event.call] }
        : {},
    ),
    putOff: assign(({ context, event }) =>
      event.type === 'snoozed'
        ? {
            snoozed: {
              ...context.snoozed,
              [event.call]: {
                until: event.until,
                times: (context.snoozed[event.call]?.times ?? 0) + 1,
              },
            },
          }
        : {},
    ),
    /** A snooze over rings again; how often it was put off stays known. */
    ringAgain: assign(({ context, event }) => {
      const over = Object.entries(context.snoozed)
        .filter(([, { until }]) => until !== null && until <= event.at)
        .map(([id]) => id);
      return {
        heard: context.heard.filter((id) => !over.includes(id)),
        snoozed: Object.fromEntries(
          Object.entries(context.snoozed).map(([id, { until, times }]) => [
            id,
            { until: over.includes(id) ? null : until, times },
          ]),
        ),
      };
    }),
    /** After a take-back every pending call speaks anew, else an earlier hush would keep it silent. */
    unhear: assign(({ context }) => ({
      heard: [],
      snoozed: Object.fromEntries(
        Object.entries(context.snoozed).map(([id, { times }]) => [id, { until: null, times }]),
      ),
    })),
  },
  guards: {
    rings: ({ context, event }) =>
      event.type === 'heard' && sounding(context).some((call) => call.id === event.call),
    maySnooze: ({ context, event }) =>
      event.type === 'snoozed' &&
      event.until > event.at &&
      event.until <= event.at + SNOOZE_MS &&
      snoozesLeft(context, event.call) > 0,
    noneCalls: ({ context }) => context.calls.length === 0,
    someSound: ({ context }) => sounding(context).length > 0,
    noneSounds: ({ context }) => context.calls.length > 0 && sounding(context).length === 0,
  },
});

const toQuiet = { guard: 'noneCalls', target: 'quiet' } as const;
const toRinging = { guard: 'someSound', target: 'ringing' } as const;
const toSilenced = { guard: 'noneSounds', target: 'silenced' } as const;

/** What calls are pending and whether one sounds. One a kitchen. */
export const attentionMachine = attentionSetup.createMachine({
  id: 'attention',
  options: { maxIterations: 50 },
  context: { calls: [], heard: [], snoozed: {} },
  initial: 'quiet',
  on: {
    sync: { actions: 'settle' },
    heard: { guard: 'rings', actions: 'silence' },
    snoozed: { guard: 'maySnooze', actions: ['silence', 'putOff'] },
    due: { actions: 'ringAgain' },
    wake: { actions: 'unhear' },
  },
  states: {
    quiet: { always: [toRinging, toSilenced] },
    ringing: { always: [toQuiet, toSilenced] },
    silenced: { always: [toQuiet, toRinging] },
  },
});
