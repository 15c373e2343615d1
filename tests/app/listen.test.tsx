import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import Listen from '../../src/app/Listen.tsx';
import { OPEN_MS, SETTLE_MS } from '../../machines/listening/listening.ts';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { makeFakeWorld } from '../fakes/world.ts';
import { onBench } from '../screens/bench/on-bench.tsx';
import { tap } from '../screens/parts/touching.ts';
import { byEar, person, soon } from './by-ear.tsx';

beforeEach(() => {
  // What is on the page shows; nothing is laid out here.
  vi.spyOn(Element.prototype, 'getClientRects').mockReturnValue([{}] as never);
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

describe('a bake by voice', () => {
  it('is walked, its dough measured and its last press taken back', async () => {
    const at = await byEar('mix.first');
    await at.nudge();
    await at.hear('done');
    await soon(() => expect(at.facts().at(-1)).toMatchObject({ act: 'mixed' }));
    // In a wait nobody says that it is done.
    await soon(() => expect(at.ear.asked?.active[0]).toBe('longer'));
    expect(at.ear.asked!.active).not.toContain('done');
    await at.hear('longer');
    await soon(() => expect(at.said.at(-1)).toMatch(/minutes/));
    at.turn(30);
    await soon(() => expect(at.house.ringing()?.stage).toBe('mix.salt'));
    expect(at.ear.asked).toBeNull();
    at.touch(document.querySelector('.slab')!);
    await soon(() => expect(at.house.ringing()).toBeNull());
    for (let n = 0; stageOf(at.house.kitchen().bakes[at.bake]!) === 'mix.salt'; n += 1) {
      expect(n).toBeLessThan(5);
      const before = at.facts().length;
      await at.hear('done');
      await soon(() => expect(at.facts()).toHaveLength(before + 1));
    }
    await at.hear('done');
    await soon(() => expect(at.facts().at(-1)).toMatchObject({ act: 'workedIn' }));
    await at.hear('reading');
    await screen.findByRole('button', { name: '7' }, { timeout: 10_000 });
    await at.hear('two');
    for (const digit of ['four', 'point', 'five'] as const) at.say(digit);
    expect(document.querySelector('.pad-typed')!.textContent).toBe('24.5');
    expect(at.facts().at(-1)).toMatchObject({ act: 'workedIn' });
    at.wait(OPEN_MS);
    expect(at.said.at(-1)).toBe('24.5 °C. Say yes or no.');
    await soon(() => expect(at.ear.asked?.active).toEqual(['yes', 'no']));
    at.say('yes');
    await soon(() => expect(at.facts().at(-1)).toMatchObject({ kind: 'reading', by: 'hand' }));
    await at.hear('takeBack');
    await soon(() => expect(at.facts().at(-1)).toMatchObject({ kind: 'takeBack' }));
    expect(stageOf(at.house.kitchen().bakes[at.bake]!)).toBe('mix.temperature');
  });
});

const typed = (): string => document.querySelector('.pad-typed')?.textContent ?? '';

describe('the ear beside an act', () => {
  it('is off where nobody is known, and asks for no microphone', async () => {
    const world = makeFakeWorld();
    const at = await onBench('mix.first', {
      world,
      equip: { ear: 'plain' },
      over: (house, bake) => <Listen house={house} bake={bake} />,
    });
    tap(document.querySelector('.bench-edge')!);
    await soon(() => expect(at.house.hearing().state).toBe('off'));
    expect((await world.ear()).opened).toBe(0);
  });

  it('does nothing of what is not listened for, and nothing while it is shut', async () => {
    const at = await byEar('mix.first');
    const before = at.facts().length;
    at.say('done');
    await at.nudge();
    expect(at.ear.asked?.active).not.toContain('yes');
    at.say('yes');
    at.wait(OPEN_MS);
    expect(at.ear.asked).toBeNull();
    at.say('done');
    await Promise.resolve();
    expect(at.facts()).toHaveLength(before);
  });

  it('tells what it hears, and that it is shut again', async () => {
    const at = await byEar('mix.first');
    await screen.findByText('Ear shut');
    await at.nudge();
    await screen.findByText(/^Say: That’s done/);
    at.ear.tell({ kind: 'speaks', speaks: true });
    await screen.findByText('I hear you');
    at.ear.tell({ kind: 'said', heard: { phrase: null, why: 'other' } });
    at.wait(OPEN_MS);
    await screen.findByText('Ear shut');
  });

  it('has its microphone shut before anything is said', async () => {
    const atSay: unknown[] = [];
    const at = await byEar('mix.first', [person('a')], (world) => ({
      ...world,
      speaker: {
        ...world.speaker,
        say(words) {
          void world.ear().then(({ asked }) => atSay.push([words, asked]));
          return world.speaker.say(words);
        },
      },
    }));
    await at.nudge();
    expect(at.ear.asked).not.toBeNull();
    at.house.say('Something is told.');
    await soon(() => expect(atSay.at(-1)).toEqual(['Something is told.', null]));
    // And it opens again behind it.
    await soon(() => expect(at.ear.asked).not.toBeNull());
  });

  it('has its microphone shut before a call', async () => {
    const at = await byEar('mix.first');
    await at.house.take({ kind: 'press', who: at.bake, act: 'mixed' });
    at.turn(30 - 4 / 60);
    await at.nudge();
    await soon(() => expect(at.ear.asked).not.toBeNull());
    at.turn(2 / 60);
    expect(at.house.ringing()).toBeNull();
    expect(at.ear.asked).toBeNull();
    await at.nudge();
    expect(at.ear.asked).toBeNull();
  });

  it('gives it to the hands after two sayings that it did not understand', async () => {
    const at = await byEar('mix.first');
    await at.nudge();
    at.say(null);
    at.say(null);
    expect(at.house.hearing().state).toBe('tiles');
    await soon(() => expect(at.said.at(-1)).toBe('I did not understand. By hand, please.'));
    await screen.findByText('By hand, please');
    expect(at.ear.asked).toBeNull();
    await soon(() => expect(at.house.caption()).toBe(''));
    await at.nudge();
    expect(at.ear.asked).not.toBeNull();
  });

  it('says once that the microphone is gone, and tries it again where that is pressed', async () => {
    const at = await byEar('mix.first');
    const lose = (): void => at.ear.tell({ kind: 'over', why: 'gone' });
    await at.nudge();
    lose();
    expect(at.house.hearing().state).toBe('gone');
    await at.nudge();
    expect(at.ear.asked).toBeNull();
    await at.press(/^Mic gone/);
    at.wait(SETTLE_MS);
    await Promise.resolve();
    expect(at.ear.asked).not.toBeNull();
    lose();
    expect(at.house.hearing().state).toBe('gone');
    expect(at.said.filter((words) => /microphone is gone/.test(words))).toHaveLength(1);
  });

  it('opens and shuts with a note each, and with none where something else is heard', async () => {
    const at = await byEar('mix.first');
    await at.house.take({ kind: 'press', who: at.bake, act: 'mixed' });
    at.turn(30 - 4 / 60);
    await at.nudge();
    await soon(() => expect(at.ear.asked).not.toBeNull());
    expect(at.ear.tones.at(-1)).toBe('open');
    at.wait(OPEN_MS);
    expect(at.ear.tones.at(-1)).toBe('shut');
    await at.nudge();
    const before = [...at.ear.tones];
    expect(before.at(-1)).toBe('open');
    at.turn(2 / 60);
    expect(at.ear.asked).toBeNull();
    expect(at.ear.tones).toEqual(before);
  });

  it('listens to nobody over a sheet that is no reading', async () => {
    const at = await byEar('mix.first');
    await at.nudge();
    expect(at.ear.asked).not.toBeNull();
    await at.press(/^More$/);
    await screen.findByRole('dialog', {}, { timeout: 10_000 });
    at.wait(SETTLE_MS);
    expect(at.ear.asked).toBeNull();
  });

  it('clears a number that was heard wrong', async () => {
    const at = await byEar('mix.temperature');
    await at.nudge();
    await at.hear('reading');
    await screen.findByRole('button', { name: '7' }, { timeout: 10_000 });
    await at.hear('three');
    at.say('two');
    at.wait(OPEN_MS);
    expect(at.said.at(-1)).toBe('32 °C. Say yes or no.');
    await at.hear('no');
    expect(typed()).toBe('');
    await soon(() => expect(at.said.at(-1)).toBe('Say it digit by digit.'));
    await at.hear('two');
    expect(typed()).toBe('2');
    expect(at.facts().some(({ kind }) => kind === 'reading')).toBe(false);
  });

  it('leaves a number to the hand that began it', async () => {
    const at = await byEar('mix.temperature');
    await at.nudge();
    await at.hear('reading');
    await at.press(/^7$/);
    at.wait(SETTLE_MS);
    expect(typed()).toBe('7');
    expect(at.ear.asked?.active ?? []).not.toContain('one');
  });

  it('hears whoever spoke last first, and a child before all where small hands help', async () => {
    const at = await byEar('mix.first', [person('a'), person('b'), person('c', true)]);
    const order = () => at.ear.asked?.people.map(({ id }) => id);
    await at.nudge();
    expect(order()).toEqual(['a', 'b', 'c']);
    at.say('takeBack', 'b');
    await at.nudge();
    await soon(() => expect(order()).toEqual(['b', 'a', 'c']));
    at.wait(OPEN_MS);
    at.house.choose({ small: '7-9' });
    await at.nudge();
    await soon(() => expect(order()?.[0]).toBe('c'));
  });
});
