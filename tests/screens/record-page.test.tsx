import { cleanup, render, screen } from '@solidjs/testing-library';
import { createRoot, createSignal } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Call } from '../../machines/attention/attention.ts';
import type { NoTake, Studio } from '../../machines/ports.ts';
import { openHouse } from '../../src/app/open-house.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import type { House } from '../../src/screens/house.ts';
import { VoicePage } from '../../src/screens/kitchen/VoicePage.tsx';
import { serveFormulas } from '../fakes/baking.ts';
import { makeHeardSpeaker, type HeardSpeaker } from '../fakes/heard-speaker.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';
import './settle.ts';
import { down, tap, turnedClock, up } from './parts/touching.ts';

/** A studio whose takes end as the test says. */
function makeTurnedStudio() {
  const held = new Set<string>();
  const kept = new Set<string>();
  const log: string[] = [];
  let finish: (ended: NoTake | null) => void = () => {};
  const studio: Studio = {
    clips: [
      ...['read it through', 'fold the dough', 'stand back', 'lid off', 'wet', 'none here'],
      'fresh cheese meat cooked food garlic in oil never here',
    ]
      .map((id) => ({ id, file: 'start.mp3' }))
      .concat({ id: 'eighteen', file: 'numbers.mp3' }),
    recorded: async () => new Set([...held, ...kept]),
    record(id, onHeard) {
      log.push(`record ${id}`);
      let end: (ended: NoTake | null) => void = () => {};
      const over = new Promise<NoTake | null>((resolve) => (end = resolve));
      finish = (ended) => {
        if (ended === null) held.add(id);
        onHeard(false);
        end(ended);
      };
      onHeard(true);
      return {
        over,
        stop: () => void log.push('stop'),
        cancel() {
          log.push('cancel');
          end('stopped');
        },
      };
    },
    async keep(id) {
      if (log.includes('full')) throw new Error('No room.');
      held.delete(id);
      kept.add(id);
    },
    async drop(id) {
      if (!held.delete(id)) kept.delete(id);
    },
  };
  return { studio, log, kept, held, finish: (ended: NoTake | null) => finish(ended) };
}

let world: FakeWorld;
let house: House;
let speaker: HeardSpeaker;
let fake: ReturnType<typeof makeTurnedStudio>;
let isThere: boolean;
const [ringing, setRinging] = createSignal<Call | null>(null);
const clock = turnedClock();

beforeEach(async () => {
  serveFormulas();
  fake = makeTurnedStudio();
  isThere = true;
  speaker = makeHeardSpeaker();
  world = {
    ...makeFakeWorld(),
    speaker,
    studio: () => (isThere ? Promise.resolve(fake.studio) : Promise.reject(new Error('Asleep.'))),
  };
  house = { ...(await createRoot(() => openHouse(world))), ringing };
  setRinging(null);
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

const settle = async (): Promise<void> => {
  for (let i = 0; i < 30; i += 1) await Promise.resolve();
};
const button = (name: RegExp) => screen.getByRole('button', { name });
const press = async (name: RegExp): Promise<void> => {
  clock.at += 1_100;
  tap(button(name));
  await settle();
};
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
const show = (): void =>
  void render(() => (
    <PressGround now={clock}>
      <VoicePage house={house} onBack={() => undefined} />
    </PressGround>
  ));
const hold = async (): Promise<void> => {
  const slab = await screen.findByRole('button', { name: /^Hold to go on/ });
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  clock.at += 1_100;
  down(slab);
  vi.advanceTimersByTime(1_300);
  up(slab);
  vi.useRealTimers();
  await settle();
};
const toClip = async (name = /^Fold the dough/): Promise<void> => {
  show();
  await press(/^Record it yourself/);
  await hold();
  await press(/^Before the dough/);
  await press(name);
};

describe('recording clips', () => {
  it('is behind a hold for grown-ups, which tells where the voice goes', async () => {
    show();
    await press(/^Record it yourself/);
    await screen.findByText('Your voice stays on this tablet, in no saved file.');
    expect(headline()).toMatch(/^A grown.up does this$/);
    isThere = false;
    await hold();
    expect(screen.getByText(/list of words did not come/)).toBeTruthy();
    isThere = true;
    await hold();
    expect(headline()).toBe('Which words?');
    expect(button(/^Before the dough/).textContent).toContain('0 of 7');
    expect(button(/^Numbers/).textContent).toContain('0 of 1');
  });

  it('lists four clips a page in the order they are read, long ones cut short', async () => {
    show();
    await press(/^Record it yourself/);
    await hold();
    await press(/^Before the dough/);
    const shown = () =>
      [...document.querySelectorAll('.kitchen-grid .control')].map((el) => el.textContent);
    expect(shown()).toEqual(
      ['Read it through', 'Fold the dough', 'Stand back', 'Lid off'].map((w) => `${w}As it came`),
    );
    expect(document.querySelectorAll('.control')).toHaveLength(6);
    await press(/^Next words/);
    expect(shown()).toEqual(
      ['Wet', 'None here', 'Fresh cheese meat cooked food garlic…'].map((w) => `${w}As it came`),
    );
    expect(button(/^Next words/).getAttribute('aria-disabled')).toBe('true');
    await press(/^That’s it/);
    await press(/^Numbers/);
    expect(screen.getByText(/once all of its words are/)).toBeTruthy();
  });

  it('counts what is recorded, and goes to the next that is not', async () => {
    fake.kept.add('read it through').add('fold the dough').add('lid off');
    show();
    await press(/^Record it yourself/);
    await hold();
    expect(screen.getByText('3 of 8 are yours.')).toBeTruthy();
    await press(/^Next to record/);
    expect(screen.getByText('“Stand back”')).toBeTruthy();
    // What is yours already is passed over; behind the last it goes on from the top.
    await press(/^Next to record/);
    expect(screen.getByText('“Wet”')).toBeTruthy();
    for (const id of ['none here', fake.studio.clips[6]!.id]) fake.kept.add(id);
    await press(/^Record/);
    fake.finish('silent');
    await settle();
    await press(/^Next to record/);
    expect(screen.getByText('“Stand back”')).toBeTruthy();
    await press(/^Record/);
    fake.finish(null);
    await settle();
    await press(/^Keep it/);
    await press(/^Before the dough/);
    await press(/^That’s it/);
    expect(screen.getByText('6 of 8 are yours.')).toBeTruthy();
    // A list opens where something is left.
    await press(/^Before the dough/);
    expect(button(/^Wet/).textContent).toContain('As it came');
    await press(/^Wet/);
    expect(screen.queryByRole('button', { name: /^Next to record/ })).toBeNull();
    await press(/^Record/);
    fake.finish(null);
    await settle();
    await press(/^Keep it/);
    await press(/^Before the dough/);
    await press(/^That’s it/);
    await press(/^Next to record/);
    expect(screen.getByText('“Eighteen”')).toBeTruthy();
  });

  it('records between two presses, is listened to, kept, and goes on to the next words', async () => {
    await toClip();
    expect(screen.getByText('“Fold the dough”')).toBeTruthy();
    await press(/^Record/);
    expect(button(/^Stop/).textContent).toContain('I hear you');
    await press(/^Stop/);
    expect(fake.log).toEqual(['record fold the dough', 'stop']);
    fake.finish(null);
    await settle();
    await press(/^Listen/);
    await vi.waitFor(() => expect(speaker.said.at(-1)?.words).toBe('Fold the dough'));
    await press(/^Keep it/);
    expect(fake.kept).toEqual(new Set(['fold the dough']));
    expect(screen.getByText('“Stand back”')).toBeTruthy();
    await press(/^Before the dough/);
    expect(button(/^Fold the dough/).textContent).toContain('Yours');
    expect(fake.kept.size).toBe(1);
  });

  it('is recorded again, and thrown away, held or kept', async () => {
    await toClip();
    await press(/^Record/);
    fake.finish(null);
    await settle();
    await press(/^Record again/);
    fake.finish(null);
    await settle();
    await press(/^Throw away/);
    expect([fake.held.size, screen.queryByRole('button', { name: /^Throw away/ })]).toEqual([
      0,
      null,
    ]);
    fake.kept.add('lid off');
    await press(/^Before the dough/);
    await press(/^Lid off/);
    await press(/^Listen/);
    await press(/^Record/);
    fake.finish('silent');
    await settle();
    await press(/^Throw away/);
    expect(fake.kept.size).toBe(0);
  });

  it.each([
    ['denied', /^The microphone is not allowed/],
    ['none', /no microphone/],
    ['silent', /^Nobody was heard/],
    ['failed', /could not be recorded/],
  ] as const)('says in plain words why there is nothing: %s', async (why, text) => {
    await toClip();
    await press(/^Record/);
    fake.finish(why);
    await settle();
    expect(screen.getByText(text)).toBeTruthy();
    await press(/^Record/);
    expect(screen.queryByText(text)).toBeNull();
  });

  it('tells where it could not be kept, and is there till the page is left', async () => {
    await toClip();
    await press(/^Record/);
    fake.finish(null);
    await settle();
    fake.log.push('full');
    await press(/^Keep it/);
    expect(screen.getByText(/could not be kept/)).toBeTruthy();
    expect([fake.held.size, button(/^Keep it/) !== null]).toEqual([1, true]);
    cleanup();
    await settle();
    expect(fake.held.size).toBe(0);
  });

  it('shuts the microphone as a call rings, and when the page is left', async () => {
    await toClip();
    await press(/^Record/);
    setRinging({ id: 'a', who: 'a', stage: 'mix.salt', kind: 'act', since: 0 });
    expect(fake.log.at(-1)).toBe('cancel');
    await settle();
    expect(screen.getByText(/a call comes first/)).toBeTruthy();
    setRinging(null);
    await press(/^Record/);
    cleanup();
    expect(fake.log.slice(-2)).toEqual(['record fold the dough', 'cancel']);
  });

  it('shuts the microphone before a call that is to come, and opens none then', async () => {
    await house.take({
      kind: 'timer',
      timer: 't',
      name: 'kettle',
      call: 'act',
      until: house.now() + 9_000,
    } as never);
    await toClip();
    await press(/^Record/);
    const turn = (ms: number): void => {
      world.clock.turn(ms);
      world.beat();
    };
    turn(5_000);
    expect(fake.log).toEqual(['record fold the dough']);
    turn(2_000);
    expect(fake.log).toEqual(['record fold the dough', 'cancel']);
    await settle();
    await press(/^Record/);
    expect(fake.log).toHaveLength(2);
    expect(screen.getByText(/a call comes first/)).toBeTruthy();
  });

  it('is shut while something hot stands', async () => {
    await house.take({
      kind: 'timer',
      timer: 't',
      name: 'nuts',
      call: 'hot',
      until: house.now() + 900_000,
    } as never);
    show();
    expect(button(/^Record it yourself/).getAttribute('aria-disabled')).toBe('true');
    expect(button(/^Record it yourself/).textContent).toContain('Not while it is hot');
  });
});
