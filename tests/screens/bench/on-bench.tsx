import { render, screen } from '@solidjs/testing-library';
import type { JSX } from 'solid-js';
import type { Equipment } from '../../../src/core/kitchen/equipment.ts';
import type { Fact } from '../../../src/core/records/fact.ts';
import type { BakeStage } from '../../../src/core/records/stage.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import Bench from '../../../src/screens/bench/Bench.tsx';
import type { House } from '../../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { makeFakeWorld, type FakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock, type Turned } from '../parts/touching.ts';

/** The bench of one bake in a DOM, where the first touch while something calls only hushes. */
export interface OnBench {
  readonly world: FakeWorld;
  readonly house: House;
  readonly bake: string;
  /** What judges the presses; `touch` turns it on long enough for anything new to be pressed. */
  readonly clock: Turned;
  /** What the screens had said. */
  readonly said: string[];
  /** Kitchen time goes on, and the page with it. */
  turn(minutes: number): void;
  touch(el: Element): void;
  /** One tap on the latest button of that name. */
  press(name: RegExp): Promise<void>;
  facts(): readonly Fact[];
}

interface Wanted {
  readonly world?: FakeWorld;
  readonly clock?: Turned;
  readonly equip?: Partial<Equipment>;
  /** False: what the screens have said is noted, and no voice says it. */
  readonly spoken?: boolean;
  /** What lies over the bench. */
  readonly over?: (house: House, bake: string) => JSX.Element;
}

export async function onBench(from: BakeStage, wanted: Wanted = {}): Promise<OnBench> {
  serveFormulas();
  const clock = wanted.clock ?? turnedClock();
  const world = wanted.world ?? makeFakeWorld();
  const { house: real, begin } = await openBaking(world);
  const said: string[] = [];
  const house: House = {
    ...real,
    say(words) {
      said.push(words);
      if (wanted.spoken !== false) real.say(words);
    },
  };
  if (wanted.equip) house.equip(wanted.equip);
  const bake = await begin(from);
  render(() => (
    <PressGround now={clock} firstTouch={() => house.hush()}>
      <Bench
        house={house}
        bake={bake}
        onHome={() => undefined}
        onBake={() => undefined}
        onKitchen={() => undefined}
        onDay={() => undefined}
      />
      {wanted.over?.(house, bake)}
    </PressGround>
  ));
  const touch = (el: Element): void => {
    clock.at += 1_100;
    tap(el);
  };
  return {
    world,
    house,
    bake,
    clock,
    said,
    touch,
    turn(minutes) {
      world.clock.turn(minutes * MINUTE);
      world.beat();
    },
    async press(name) {
      // The pages are chunks of their own, compiled at their first use.
      const found = await screen.findAllByRole('button', { name }, { timeout: 10_000 });
      touch(found.at(-1)!);
      await Promise.resolve();
    },
    facts: () => house.records().map(({ fact }) => fact),
  };
}

/** The rest is over and the salt calls. */
export async function salting(wanted: Wanted = {}): Promise<OnBench> {
  const at = await onBench('mix.first', wanted);
  await at.house.take({ kind: 'press', who: at.bake, act: 'mixed' });
  at.turn(30);
  if (at.house.ringing()?.stage !== 'mix.salt') throw new Error('The salt does not call.');
  return at;
}
