import { createMemo, type Accessor } from 'solid-js';
import { SNOOZE_MS, snoozesLeft, type Call } from '../../machines/attention/attention.ts';
import { samePlain } from '../../machines/kitchen/same-plain.ts';
import { calls } from '../core/speech/words/calls.ts';
import { fill } from '../core/speech/fill.ts';
import type { House } from './house.ts';

/** What may be pressed to put a call off, and how often it still may be. */
export interface PutOff {
  readonly label: string;
  readonly left: string;
  readonly onPress: () => void;
}

/** Puts off a hushed call; `quietTill` tells of one that is, `press` is there while it may be. */
export function makePutOff(
  house: House,
  hushed: Accessor<Call | null>,
): { readonly press: Accessor<PutOff | undefined>; readonly quietTill: Accessor<string | null> } {
  const attention = () => house.kitchen().attention.context;
  const asked = createMemo(
    () => {
      const call = hushed();
      const left = call && house.holds ? snoozesLeft(attention(), call.id) : 0;
      return call && (left === 1 || left === 2) ? ({ call: call.id, left } as const) : null;
    },
    null,
    { equals: samePlain },
  );
  const put = async (call: string, left: 1 | 2): Promise<void> => {
    // Who wants to be called again wants to hear it: in the tap, or the browser does not allow it.
    if (house.sound() === 'locked') house.armSound();
    await house.take({ kind: 'snoozed', call, until: house.now() + SNOOZE_MS });
    if (attention().snoozed[call]?.until) house.say(calls.putOff[left]);
  };
  const press = createMemo((): PutOff | undefined => {
    const found = asked();
    return found
      ? {
          label: calls.snooze,
          left: calls.snoozesLeft[found.left],
          onPress: () => void put(found.call, found.left),
        }
      : undefined;
  });
  const quietTill = (): string | null => {
    const until = attention().snoozed[hushed()?.id ?? '']?.until;
    return until ? fill(calls.quietTill, { time: house.hour(until) }) : null;
  };
  return { press, quietTill };
}
