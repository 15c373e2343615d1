import { render, screen } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { vi } from 'vitest';
import type { Fact } from '../../../src/core/records/fact.ts';
import type { BakeStage } from '../../../src/core/records/stage.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import Bench from '../../../src/screens/bench/Bench.tsx';
import type { House } from '../../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';

/** A baker in a DOM: the whole house in memory, the bench of one bake, and a count of presses. */
export interface AtBench {
  readonly house: House;
  readonly bake: string;
  /** What the bench had said. */
  readonly said: string[];
  /** What was said of a stage as it was entered, utterance by utterance. */
  readonly heard: string[];
  presses: number;
  /** Begins another bake; the bench still shows the one it showed. */
  begin(from: BakeStage): Promise<string>;
  /** Brings a bake to the front, as a call of it does. */
  show(bake: string): void;
  /** Long enough for anything new on the screen to be pressed. */
  beat(): void;
  /** One tap on a button by the beginning of its name. */
  press(name: string | RegExp): Promise<void>;
  facts(): readonly Fact[];
}

/** A name's first words, as plain text. */
const starting = (name: string): RegExp =>
  new RegExp(`^${name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}`);

export async function atBench(from: BakeStage, loaves = 2): Promise<AtBench> {
  serveFormulas();
  const heard: string[] = [];
  const fake = makeFakeWorld();
  const say = (words: string) => {
    heard.push(words);
    return fake.speaker.say(words);
  };
  const world = { ...fake, speaker: { ...fake.speaker, say } };
  const { house: real, begin } = await openBaking(world);
  const bake = await begin(from, loaves);
  const [front, setFront] = createSignal(bake);
  const said: string[] = [];
  const house: House = { ...real, say: (words) => void said.push(words) };
  const clock = turnedClock();
  render(() => (
    <PressGround now={clock}>
      <Bench
        house={house}
        bake={front()}
        onHome={() => undefined}
        onBake={setFront}
        onKitchen={() => undefined}
        onDay={() => undefined}
      />
    </PressGround>
  ));
  const at: AtBench = {
    house,
    bake,
    said,
    heard,
    presses: 0,
    begin,
    show: setFront,
    beat: () => void (clock.at += 1_100),
    async press(name) {
      const wanted = typeof name === 'string' ? starting(name) : name;
      const found = screen.findAllByRole(
        'button',
        { name: wanted },
        // The pages are chunks of their own, compiled at their first use.
        { timeout: 10_000 },
      );
      const button = (await found).at(-1)!;
      clock.at += 1_100;
      at.presses += 1;
      tap(button);
      await Promise.resolve();
    },
    facts: () => house.records().map(({ fact }) => fact),
  };
  return at;
}

/** The latest fact, once it is of that kind. */
export const lastFact = async <K extends Fact['kind']>(
  at: AtBench,
  kind: K,
): Promise<Extract<Fact, { kind: K }>> => {
  await vi.waitFor(() => {
    if (at.facts().at(-1)?.kind !== kind) throw new Error(`The last fact is no ${kind}.`);
  });
  return at.facts().at(-1) as Extract<Fact, { kind: K }>;
};
