import type { Component } from 'solid-js';
import type { Call } from '../../../machines/attention/attention.ts';
import type { EarShown } from '../../../src/core/ear/shown.ts';
import { BenchFrame } from '../../../src/parts/BenchFrame.tsx';
import { Control } from '../../../src/parts/Control.tsx';
import { RuledEdge } from '../../../src/parts/RuledEdge.tsx';
import { Slab } from '../../../src/parts/Slab.tsx';
import { Words } from '../../../src/parts/Words.tsx';
import type { House } from '../../../src/screens/house.ts';
import { KitchenEar } from '../../../src/screens/KitchenEar.tsx';

const nothing = (): void => {};
const CALL: Call = { id: 'a:mix.salt:1', who: 'a', stage: 'mix.salt', kind: 'act', since: 1 };
const ticks = Array.from({ length: 14 }, (_, i) => ({ long: i % 5 === 0 }));

const bench =
  (
    hearing: EarShown,
    more: { readonly hushed?: Call; readonly toChild?: () => void } = {},
    sound: ReturnType<House['sound']> = 'armed',
  ): Component =>
  () => {
    const house = {
      hearing: () => hearing,
      showHearing: nothing,
      sound: () => sound,
      unheard: () => false,
      lit: () => 'held',
      holds: true,
      kitchen: () => ({
        attention: { context: { calls: [CALL], heard: [CALL.id], snoozed: {} } },
      }),
    } as unknown as House;
    return (
      <BenchFrame
        label="Bench"
        further="Read on"
        edge={<RuledEdge label="Fold" ticks={ticks} at={4} />}
        words={<Words headline="Fold the dough" detail="Four times, a quarter turn each." />}
        controls={
          <>
            <Control label="Take that back" onPress={nothing} />
            <Control label="Say that again" onPress={nothing} />
            <Control label="New reading" onPress={nothing} />
          </>
        }
        ear={<KitchenEar house={house} onMore={nothing} {...more} />}
        slab={<Slab label="That’s done" then="then it rests" onPress={nothing} />}
      />
    );
  };

const OPEN: EarShown = { state: 'open', active: ['takeBack', 'sayAgain', 'longer', 'reading'] };
const none = (state: EarShown['state']): EarShown => ({ state, active: [] });

export const earScenes: Record<string, Component> = {
  earShut: bench(none('shut')),
  earOpen: bench({ state: 'open', active: ['done', 'takeBack', 'sayAgain', 'longer'] }),
  earLong: bench({ state: 'open', active: ['longer', 'sayAgain'] }),
  earOne: bench({ state: 'open', active: ['takeBack'] }),
  earDigits: bench({ state: 'open', active: ['zero', 'one'] }),
  earSpeaks: bench({ ...OPEN, state: 'speaks' }),
  earTiles: bench(none('tiles')),
  earDenied: bench(none('denied')),
  earNone: bench(none('none')),
  earGone: bench(none('gone')),
  earFailed: bench(none('failed')),
  earPutOff: bench(OPEN, { hushed: CALL }),
  earMute: bench(OPEN, { hushed: CALL }, 'unavailable'),
  earLocked: bench(OPEN, {}, 'locked'),
  earChild: bench(OPEN, { toChild: nothing }),
};
