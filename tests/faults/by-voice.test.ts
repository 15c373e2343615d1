import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { learnedEngine } from '../../src/adapters/ear/learned-engine.ts';
import { HEARD_AT } from '../../src/core/ear/heard-at.ts';
import type { EarPhrase } from '../../src/core/ear/phrases.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { enrolled } from '../bench/ear/corpus.ts';
import { learnPerson } from '../bench/ear/learn.ts';
import { openNets } from '../bench/ear/nets.ts';
import { inKitchen } from '../bench/ear/noise.ts';
import { say } from '../bench/ear/say.ts';
import { SAYS } from '../bench/ear/texts.ts';
import { SCORING } from '../bench/ear/voices.ts';
import { Baker } from '../browser/harness/baker.ts';
import { expectNoFaults } from '../browser/harness/faults.ts';
import { expectWhole, logOf } from '../browser/harness/logged.ts';
import { openApp, untilKept, type App } from '../browser/harness/open-app.ts';
import { putPerson } from '../browser/harness/put-person.ts';
import { putSetting } from '../browser/harness/put-rows.ts';
import {
  makeSpokenMicrophone,
  needVoice,
  type SpokenMicrophone,
} from '../browser/harness/spoken-microphone.ts';
import { VoiceWalker } from '../browser/harness/voice-walker.ts';

const [VOICE] = SCORING;
/** How far what is said is over its kitchen, dB. */
const OVER = 12;
/** Before and behind it, and between two digits, s. */
const AROUND = 1.2;
const BETWEEN = 0.7;
/** More than any bake has. */
const MOST_STEPS = 400;

/** What a voice did, in its order: the first of it taken back. */
const SPOKEN = [
  ...['readThrough', 'takeBack', 'readThrough', 'answer:seed', 'answer:flour:wheat'],
  ...['answer:water', 'levainRipe', 'starterKept', 'answer:flour:wheat', 'answer:flour:rye'],
  ...['answer:water', 'answer:levain', 'mixed', 'answer:salt', 'answer:secondWater', 'workedIn'],
  ...['reading', 'folded', 'spread', 'answer:filling:cherry', 'answer:filling:hazelnut'],
  ...['rolled', 'folded', 'bulkReady', 'divided', 'preshaped', 'shaped', 'inBaskets', 'inFridge'],
  ...['answer:dent', 'loafReady', 'answer:dent', 'pokeReady', 'answer:dent', 'pokeReady'],
  'handedOver',
];
const LOAF = ['scored', 'loaded', 'lidOff', 'crustReady', 'unloaded'];
const BY_HAND = ['ovenOn', ...LOAF, ...LOAF, 'ovenOff', 'noted'];
/** Of all that is said, so much is said once more at most. */
const MOST_AGAIN = 4;

let app: App;
let mic: SpokenMicrophone;
let profile: string;

/** Said one after the other, a pause between them. */
async function saying(phrases: readonly EarPhrase[]): Promise<Float32Array> {
  const parts: Float32Array[] = [];
  for (const phrase of phrases) {
    const gap = new Float32Array(BETWEEN * HEARD_AT);
    parts.push(
      ...(parts.length > 0 ? [gap] : []),
      await say(SAYS[phrase], VOICE!, { haste: 1.02, pitch: 1 }),
    );
  }
  const all = new Float32Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

let seed = 1;
const kitchen = {
  put: (sound: Float32Array) => mic.put(sound),
  async sound(phrases: readonly EarPhrase[]): Promise<Float32Array> {
    seed += 1;
    const said = await saying(phrases.length > 0 ? phrases : ['hush']);
    const all = inKitchen(said, OVER, seed, AROUND);
    // Nobody speaks: what the kitchen is like before somebody did.
    return phrases.length > 0 ? all : all.slice(0, AROUND * HEARD_AT);
  },
};

beforeAll(async () => {
  profile = await mkdtemp(join(tmpdir(), 'loafward-profile-'));
  mic = await makeSpokenMicrophone();
  app = await openApp({
    ...{ profile, flags: mic.flags },
    context: { permissions: ['microphone'] },
  });
});
afterAll(async () => {
  await app.close();
  await mic.close();
  await rm(profile, { recursive: true, force: true, maxRetries: 5 });
});

it('walks a whole bake by what a voice says at 12 dB, with gates and signs of the oven by hand', async (context) => {
  needVoice(context);
  await untilKept(app.page);
  const person = await learnPerson(learnedEngine(await openNets()), 'a', await enrolled(VOICE!));
  await putPerson(app.page, person);
  await app.page.evaluate(putSetting('equipment', { ...EQUIPMENT, ear: 'learned' }));
  await app.reopen();
  const asked: string[] = [];
  const walker = new VoiceWalker(new Baker(app), kitchen);
  await walker.baker.begin('22');
  for (let n = 0; n < MOST_STEPS; n += 1) {
    const fact = await walker.goOn();
    if (walker.spoken.length === 1) await walker.takeThatBack();
    if (n === 10) app.context.on('request', (request) => asked.push(request.url()));
    if (fact?.kind === 'press' && fact.act === 'noted') break;
  }
  expect(walker.spoken).toEqual(SPOKEN);
  // Whatever is hot or sharp was done by a hand, and nothing of it by a voice.
  const byHand = walker.byHand.map((one) => one.split(':')[0]!);
  expect(byHand.filter((act) => act !== 'answer')).toEqual(BY_HAND);
  expect(walker.again).toBeLessThanOrEqual(MOST_AGAIN);
  const records = await logOf(app);
  expectWhole(records);
  expect(asked.filter((url) => !url.startsWith(app.server.url))).toEqual([]);
  expectNoFaults(app.faults);
});
