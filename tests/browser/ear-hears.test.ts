import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { learnedEngine } from '../../src/adapters/ear/learned-engine.ts';
import { MOMENT, PAUSE, SHORT_PAUSE } from '../../src/core/ear/gate.ts';
import { HEARD_AT } from '../../src/core/ear/heard-at.ts';
import type { EarPhrase } from '../../src/core/ear/phrases.ts';
import { inKitchen } from '../bench/ear/noise.ts';
import { openNets } from '../bench/ear/nets.ts';
import { say } from '../bench/ear/say.ts';
import { SAYS, SETS } from '../bench/ear/texts.ts';
import { SCORING } from '../bench/ear/voices.ts';
import { earPage, EAR_SCRIPT, type EarPage, type ToldAt } from './harness/ear-page.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, untilKept, type App } from './harness/open-app.ts';
import {
  makeSpokenMicrophone,
  needVoice,
  type SpokenMicrophone,
} from './harness/spoken-microphone.ts';

const [VOICE] = SCORING;
const PHRASES = SETS[0]!;
/** A person says it three times, none like the other. */
const TAKES = [0.95, 1, 1.06];
/** How loud the kitchen is under what is said, dB: as they are learned, and as they are heard. */
const LEARNED = 30;
const HEARD = 12;
/** Before and behind what is said, s. */
const AROUND = 1.2;
/** What is understood later than this after it was said is answered by hand sooner, ms. */
const SOON = 800;
/** How much slower than this machine a kitchen tablet is taken to be. Judgement. */
const SLOWER = 4;
/** Answers, the middle one counts: another program on a shared machine takes this one's turn now and then. */
const RUNS = 7;
/** What is begun in the pause has so long until it is wanted, ms. */
const REST = 1000 * MOMENT * (PAUSE - SHORT_PAUSE);

let app: App;
let ear: EarPage;
let mic: SpokenMicrophone;
let profile: string;
let seed = 1;

const spoken = async (phrase: EarPhrase, haste: number) =>
  say(SAYS[phrase], VOICE!, { haste, pitch: 1 });
const kitchen = (said: Float32Array, under: number) => inKitchen(said, under, (seed += 1), AROUND);
const saidIn = (all: readonly ToldAt[]) =>
  all.flatMap(({ at, told }) => (told.kind === 'said' ? [{ at, heard: told.heard }] : []));
const phrasesIn = (all: readonly ToldAt[]) => saidIn(all).map(({ heard }) => heard.phrase);

/** What was understood, how long after its end, and how long it was worked on of that, ms. */
interface Answer {
  readonly phrase: EarPhrase | null;
  readonly late: number;
  readonly works: number;
}

/** The phrase, said in the kitchen: no microphone is open behind the answer. */
async function answerTo(phrase: EarPhrase): Promise<Answer> {
  const said = await spoken(phrase, 1.03);
  await mic.put(kitchen(said, HEARD));
  const all = await ear.listen('learned', PHRASES, 1);
  expect(await ear.live()).toBe(0);
  const opened = all.find(({ told }) => told.kind === 'open')!.at;
  const ended = all.findLast(({ told }) => told.kind === 'speaks')!.at;
  const [{ at, heard } = { at: Infinity, heard: null }] = saidIn(all);
  const last = said.findLastIndex((sample) => Math.abs(sample) > 0.02);
  const late = at - opened - 1000 * (AROUND + last / HEARD_AT);
  return { phrase: heard?.phrase ?? null, late, works: at - ended };
}

const middle = (all: readonly number[]): number =>
  all.toSorted((a, b) => a - b)[Math.floor(all.length / 2)]!;

/** How long this machine works in the pause at a phrase, ms. */
async function worksAhead(phrase: EarPhrase): Promise<number> {
  const engine = learnedEngine(await openNets());
  const sound = kitchen(await spoken(phrase, 1.03), HEARD);
  const begun = sound.subarray((AROUND - MOMENT * PAUSE) * HEARD_AT, -AROUND * HEARD_AT);
  const spent: number[] = [];
  for (let run = 0; run < RUNS; run += 1) {
    const before = performance.now();
    await engine.ahead!(begun, null);
    spent.push(performance.now() - before);
  }
  return middle(spent);
}

/**
 * How late the middle one is on a tablet, ms: a thread cannot be slowed by itself, so that what it works on
 * counts so many times, and what it works `ahead` where that is longer than the pause.
 */
const usually = (answers: readonly Answer[], ahead: number): number =>
  middle(answers.map(({ late, works }) => late + (SLOWER - 1) * works)) +
  Math.max(0, SLOWER * ahead - REST);

beforeAll(async () => {
  profile = await mkdtemp(join(tmpdir(), 'loafward-profile-'));
  mic = await makeSpokenMicrophone();
  app = await openApp({
    ...{ profile, clock: 'real', flags: mic.flags },
    context: { permissions: ['microphone'] },
  });
  await untilKept(app.page);
  await app.context.addInitScript(EAR_SCRIPT);
  await app.reopen();
  ear = earPage(app.page);
});
afterAll(async () => {
  await app.close();
  await mic.close();
  await rm(profile, { recursive: true, force: true, maxRetries: 5 });
});

describe('somebody who says four phrases three times each, before the built app', () => {
  it('is learned, heard at 12 dB with no network at all, and told soon enough', async (context) => {
    needVoice(context);
    expect(await ear.open('learned')).toBe(true);
    for (const phrase of PHRASES)
      for (const haste of TAKES) {
        await mic.put(kitchen(await spoken(phrase, haste), LEARNED));
        expect(await ear.take('learned', phrase), phrase).toBe(2);
        expect(await ear.live()).toBe(0);
      }
    // Both engines come from the tablet alone from now on, on a page that is opened without a network.
    await ear.keep();
    const asked: string[] = [];
    app.context.on('request', (request) => asked.push(request.url()));
    const answers: Answer[] = [];
    for (const phrase of PHRASES) answers.push(await answerTo(phrase));
    expect(answers.map(({ phrase }) => phrase)).toEqual(PHRASES);
    expect(asked).toEqual([]);
    while (answers.length < RUNS) answers.push(await answerTo('done'));
    const ahead = await worksAhead('done');
    const told = JSON.stringify({ answers, ahead });
    expect(usually(answers, ahead), told).toBeLessThanOrEqual(SOON);
    expectNoFaults(app.faults);
  });

  it('leaves numbers on the tablet, fewer than a sound has, and nothing else of a voice', async (context) => {
    needVoice(context);
    const found = await app.page.evaluate(async () => {
      const kinds: Record<string, number> = {};
      const settled = <R>(request: IDBRequest<R>) =>
        new Promise<R>((resolve, reject) => {
          request.onsuccess = () => resolve(request.result);
          request.onerror = () => reject(new Error('unread'));
        });
      const look = (value: unknown, from: string): void => {
        if (typeof value !== 'object' || value === null) return;
        if (ArrayBuffer.isView(value) || value instanceof ArrayBuffer || value instanceof Blob) {
          const what = `${from}: ${value.constructor.name}`;
          const long = value instanceof Blob ? value.size : value.byteLength;
          kinds[what] = Math.max(kinds[what] ?? 0, long);
        } else for (const inner of Object.values(value)) look(inner, from);
      };
      for (const { name } of await indexedDB.databases()) {
        const database = await settled(indexedDB.open(name!));
        for (const store of database.objectStoreNames) {
          const rows = await settled(database.transaction(store).objectStore(store).getAll());
          look(rows, name!);
        }
        database.close();
      }
      return kinds;
    });
    expect(Object.keys(found)).toEqual(['loafward-voices: Float32Array']);
    // A second of sound, at a quarter of what telephones have, is as long.
    expect(found['loafward-voices: Float32Array']).toBeLessThan(2 * 8_000);
  });

  it('is heard where the browser will not change its rate, and by the plain engine', async (context) => {
    needVoice(context);
    await app.page.evaluate(() => {
      const create = AudioContext.prototype.createMediaStreamSource;
      AudioContext.prototype.createMediaStreamSource = function (stream) {
        if (this.sampleRate === 16_000) throw new DOMException('', 'NotSupportedError');
        return create.call(this, stream);
      };
    });
    await mic.put(kitchen(await spoken('done', 1.03), LEARNED));
    expect(phrasesIn(await ear.listen('plain', PHRASES, 1))).toEqual(['done']);
    expect(await ear.live()).toBe(0);
  });

  it('has the learned engine here without a network, on a page opened anew', async (context) => {
    needVoice(context);
    await app.context.setOffline(true);
    await app.reopen();
    ear = earPage(app.page);
    expect(await ear.open('learned')).toBe(true);
    await mic.put(kitchen(await spoken('done', 1), LEARNED));
    expect(await ear.take('learned', 'done')).toBe(2);
  });
});
