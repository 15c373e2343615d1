import { screen } from '@solidjs/testing-library';
import { expect, vi } from 'vitest';
import Listen from '../../src/app/Listen.tsx';
import { SETTLE_MS } from '../../machines/listening/listening.ts';
import type { EarPerson, Saying } from '../../src/core/ear/person.ts';
import { EAR_PHRASES, type EarPhrase } from '../../src/core/ear/phrases.ts';
import type { BakeStage } from '../../src/core/records/stage.ts';
import type { ToldEar } from '../fakes/told-ear.ts';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';
import { onBench, type OnBench } from '../screens/bench/on-bench.tsx';
import { tap, turnedClock } from '../screens/parts/touching.ts';

const SAYING: Saying = { plain: { count: 1, size: 1, data: Float32Array.of(0) }, learned: null };

/** Somebody who has said all of these, or every phrase there is. */
export const person = (
  id: string,
  child = false,
  phrases: readonly EarPhrase[] = EAR_PHRASES,
): EarPerson => ({
  id,
  mark: child ? 'star' : 'moon',
  child,
  sayings: Object.fromEntries(phrases.map((phrase) => [phrase, [SAYING]])),
});

/** The pages are chunks of their own, compiled at their first use. */
export const soon = <T,>(then: () => T): Promise<T> => vi.waitFor(then, { timeout: 10_000 });

export interface ByEar extends OnBench {
  readonly ear: ToldEar;
  /** Time goes on for the ear. */
  wait(ms: number): void;
  /** A tap on what stands still: it opens the ear, and does nothing else. */
  nudge(): Promise<void>;
  /** Somebody speaks; what was made of it is told. Nothing where the ear is shut. */
  say(phrase: EarPhrase | null, by?: string): void;
  /** Once the ear is open for it, it is said. */
  hear(phrase: EarPhrase): Promise<void>;
}

/** A bench with an ear that hears what the test says. */
export async function byEar(
  from: BakeStage,
  people: readonly EarPerson[] = [person('a')],
  prepare: (world: FakeWorld) => FakeWorld = (world) => world,
): Promise<ByEar> {
  const clock = turnedClock();
  const world = prepare(makeFakeWorld());
  const waits = new Set<{ readonly at: number; readonly then: () => void }>();
  const later = (ms: number, then: () => void) => {
    const one = { at: clock.at + ms, then };
    waits.add(one);
    return () => void waits.delete(one);
  };
  const at = await onBench(from, {
    clock,
    world,
    equip: { ear: 'plain' },
    over: (house, bake) => <Listen house={house} bake={bake} now={clock} later={later} />,
  });
  const ear = await world.ear();
  const kept = await at.house.ear();
  for (const one of people) await kept.keep(one);
  const wait = (ms: number): void => {
    const to = clock.at + ms;
    for (;;) {
      const [first] = [...waits].filter((one) => one.at <= to).sort((a, b) => a.at - b.at);
      if (!first) break;
      waits.delete(first);
      clock.at = Math.max(clock.at, first.at);
      first.then();
    }
    clock.at = to;
  };
  const nudge = async (): Promise<void> => {
    tap(document.querySelector('.bench-edge')!);
    wait(SETTLE_MS);
    // The note before it is over.
    await Promise.resolve();
  };
  const say = (phrase: EarPhrase | null, by = 'a'): void => {
    ear.tell({ kind: 'speaks', speaks: true });
    wait(700);
    ear.tell({ kind: 'speaks', speaks: false });
    wait(500);
    ear.tell({
      kind: 'said',
      heard: phrase === null ? { phrase, why: 'other' } : { phrase, person: by },
    });
  };
  await screen.findByRole('heading', {}, { timeout: 10_000 });
  await soon(() => expect(at.house.hearing().state).not.toBe('off'));
  return {
    ...at,
    ear,
    wait,
    nudge,
    say,
    async hear(phrase) {
      await soon(() => {
        if (!ear.asked) wait(SETTLE_MS);
        expect(ear.asked?.active).toContain(phrase);
      });
      say(phrase);
      await Promise.resolve();
    },
  };
}
