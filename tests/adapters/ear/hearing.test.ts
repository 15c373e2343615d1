import { beforeEach, describe, expect, it } from 'vitest';
import type { Begun, SayingEngine } from '../../../src/adapters/ear/engine.ts';
import { makeHearing } from '../../../src/adapters/ear/hearing.ts';
import type { FromThread, ToThread } from '../../../src/adapters/ear/messages.ts';
import { HEARD_AT, type Cut } from '../../../src/core/ear/listener.ts';
import type { EarPerson, Saying } from '../../../src/core/ear/person.ts';
import { seeded } from '../../core/day/support/seeded.ts';

const RATE = 48_000;
const { next } = seeded(7);
/** A noise so loud, which is somebody or the room. */
const noise = (seconds: number, loud: number) =>
  Float32Array.from({ length: Math.round(seconds * RATE) }, () => loud * (2 * next() - 1));
const ROOM = 0.002;
/** Somebody talks: between syllables the room is heard. */
const voice = (seconds: number) =>
  noise(seconds, 0.3).map((sample, n) => (n % (0.3 * RATE) < 0.2 * RATE ? sample : sample / 150));

/** Rows as far apart as those of two phrases, and further. */
const sayingOf = (n: number): Saying => ({
  plain: {
    count: 12,
    size: 2,
    data: Float32Array.from({ length: 24 }, (_, i) => 10 * Math.sin((n + 1) * i)),
  },
  learned: null,
});

let told: FromThread[];
let cuts: Cut[];
let engine: SayingEngine | null;
let port: { onmessage: ((e: { data: Float32Array }) => void) | null; closed: number };
let ask: (asked: ToThread) => void;

const settled = async (): Promise<void> => {
  for (let n = 0; n < 60; n += 1) await Promise.resolve();
};
const hear = async (...sounds: readonly Float32Array[]): Promise<void> => {
  for (const sound of sounds)
    for (let at = 0; at < sound.length; at += 1_536) {
      port.onmessage?.({ data: sound.subarray(at, at + 1_536) });
      await settled();
    }
};
const said = (seconds = 0.6) => [noise(1, ROOM), voice(seconds), noise(1, ROOM)] as const;
const newPort = (): MessagePort => {
  const made = { onmessage: null, closed: 0, close: () => void (made.closed += 1) };
  return (port = made) as never;
};
const kinds = (): string[] =>
  told.map((one) => (one.kind === 'told' ? one.told.kind : one.kind)).filter((k) => k !== 'room');

beforeEach(() => {
  [told, cuts] = [[], []];
  engine = {
    saying(cut) {
      cuts.push(cut);
      return Promise.resolve(sayingOf(1));
    },
  };
  ask = makeHearing({
    engine: () => Promise.resolve(engine),
    tell: (one) => told.push(one),
  });
});

describe('a thread that listens', () => {
  const person = (id: string, n: number): EarPerson => ({
    ...{ id, mark: 'star', child: false },
    sayings: { done: [sayingOf(n), sayingOf(n)], hush: [sayingOf(n + 4), sayingOf(n + 4)] },
  });
  const listen = async (turn = 1): Promise<void> => {
    const people = [person('ada', 6), person('ben', 1)];
    ask({
      kind: 'listen',
      ask: { engine: 'plain', people, active: ['done', 'hush'] },
      ...{ turn, port: newPort(), rate: RATE },
    });
    await settled();
  };

  it('tells that it is open, that somebody speaks, how loud the room is and what was said', async () => {
    await listen();
    expect(told).toEqual([]);
    await hear(...said());
    expect(kinds()).toEqual(['open', 'speaks', 'speaks', 'said']);
    expect(told.filter((one) => one.kind === 'told' && one.told.kind === 'room').length).toBe(2);
    expect(told.at(-2)).toMatchObject({
      turn: 1,
      told: { kind: 'said', heard: { phrase: 'done', person: 'ben' } },
    });
    // All that goes to the page is small, and none of it is sound.
    expect(JSON.stringify(told).length).toBeLessThan(1_000);
  });

  it('takes what wakes a microphone for no room: what comes after nothing at all is no voice', async () => {
    await listen();
    await hear(new Float32Array(RATE / 2), noise(3, 0.02));
    expect(kinds()).toEqual(['open']);
  });

  it('begins with a saying in its pause, goes on with it in the next, and forgets it once it is told', async () => {
    const begun: (Begun | null | undefined)[] = [];
    engine = {
      ahead(sound, before) {
        begun.push(before);
        return Promise.resolve({ rows: sound, learned: sayingOf(1).plain });
      },
      saying(_, before) {
        begun.push(before);
        return Promise.resolve(sayingOf(1));
      },
    };
    await listen();
    await hear(noise(1, ROOM), voice(0.6), noise(0.2, ROOM), voice(0.6), noise(1, ROOM), ...said());
    const [none, first, second, fresh, third] = begun;
    expect(begun).toHaveLength(5);
    expect([none, fresh]).toEqual([null, null]);
    const long = [first, second, third].map((its) => its!.rows.length / HEARD_AT);
    expect(long[1]! - long[0]!).toBeCloseTo(0.8, 1);
    expect(long[2]!).toBeCloseTo(long[0]!, 1);
  });

  it('takes talk for no phrase, without a look at it', async () => {
    await listen();
    await hear(...said(4));
    expect(kinds()).toEqual(['open', 'speaks', 'said', 'speaks']);
    expect(told.find((one) => one.kind === 'told' && one.told.kind === 'said')).toMatchObject({
      told: { heard: { phrase: null, why: 'long' } },
    });
    expect(cuts).toEqual([]);
  });

  it('hears nothing once it is shut, and tells nothing of what it had heard', async () => {
    let understood = (): void => {};
    engine = {
      saying: () => new Promise((then) => (understood = () => then(sayingOf(1)))),
    };
    await listen();
    await hear(...said());
    const before = told.length;
    ask({ kind: 'shut', turn: 1 });
    understood();
    await settled();
    expect([port.closed, port.onmessage, told.length]).toEqual([1, null, before]);
  });

  it('shuts the one before when it is asked anew, and is not shut by an old stop', async () => {
    await listen(1);
    const first = port;
    await listen(2);
    ask({ kind: 'shut', turn: 1 });
    expect([first.closed, port.closed]).toEqual([1, 0]);
    await hear(...said());
    expect(new Set(told.map(({ turn }) => turn))).toEqual(new Set([2]));
  });

  it('says that it failed where its engine is not here, or falls', async () => {
    engine = { saying: () => Promise.reject(new Error('no room')) };
    await listen();
    await hear(...said());
    expect(told).toContainEqual({ turn: 1, kind: 'failed', message: 'no room' });
    engine = null;
    await listen(2);
    expect(told.at(-1)).toEqual({ turn: 2, kind: 'failed', message: 'its engine is not here' });
  });
});

describe('a thread that takes a saying', () => {
  const take = async (): Promise<void> => {
    ask({ kind: 'take', engine: 'plain', turn: 3, port: newPort(), rate: RATE });
    await settled();
  };

  it('takes it as it is and as it sounds in a louder kitchen, once, and hears no more', async () => {
    await take();
    await hear(...said(), ...said());
    expect(kinds()).toEqual(['open', 'speaks', 'speaks', 'taken']);
    expect(told.at(-1)).toEqual({ turn: 3, kind: 'taken', sayings: [sayingOf(1), sayingOf(1)] });
    const [plain, louder] = cuts as [Cut, Cut];
    expect(cuts).toHaveLength(2);
    expect([louder.lead, louder.sound.length]).toEqual([plain.lead, plain.sound.length]);
    // Of the word, which is in its middle, it has all; before it the room is louder.
    const loudness = (sound: Float32Array) => Math.hypot(...sound.subarray(0, HEARD_AT / 10));
    expect(loudness(louder.sound)).toBeGreaterThan(3 * loudness(plain.sound));
    expect([port.closed, port.onmessage]).toEqual([1, null]);
  });

  it('is silent where nobody begins in eight seconds, and where somebody only talks', async () => {
    await take();
    await hear(noise(7.9, ROOM));
    expect(kinds()).toEqual(['open']);
    await hear(noise(0.2, ROOM));
    expect(told.at(-1)).toEqual({ turn: 3, kind: 'taken', sayings: null });
    told = [];
    await take();
    await hear(noise(1, ROOM), voice(18.9));
    expect(kinds()).not.toContain('taken');
    await hear(voice(0.2));
    expect(told.at(-1)).toEqual({ turn: 3, kind: 'taken', sayings: null });
  });

  it('takes what was said till now, or says that it was nothing', async () => {
    await take();
    await hear(noise(1, ROOM), voice(0.6));
    ask({ kind: 'enough', turn: 3 });
    await settled();
    expect(told.at(-1)).toMatchObject({ kind: 'taken', sayings: [sayingOf(1), sayingOf(1)] });
    told = [];
    await take();
    await hear(noise(1, ROOM));
    ask({ kind: 'enough', turn: 3 });
    expect(told.at(-1)).toEqual({ turn: 3, kind: 'taken', sayings: null });
  });
});

it('has an engine or not', async () => {
  ask({ kind: 'fetch', turn: 9, engine: 'learned' });
  await settled();
  engine = null;
  ask({ kind: 'fetch', turn: 10, engine: 'learned' });
  await settled();
  expect(told).toEqual([
    { turn: 9, kind: 'fetched', here: true },
    { turn: 10, kind: 'fetched', here: false },
  ]);
});
