import { expect, test } from 'vitest';
import { ROUNDS } from '../../src/core/ear/known.ts';
import { MOMENT } from '../../src/core/ear/gate.ts';
import { HEARD_AT, makeListener } from '../../src/core/ear/listener.ts';
import { TAKES } from '../../src/core/ear/person.ts';
import type { EarPhrase } from '../../src/core/ear/phrases.ts';
import { hasVoices } from '../../src/serve/prepare/find-voices.mjs';
import { inKitchen } from '../bench/ear/noise.ts';
import { say } from '../bench/ear/say.ts';
import { SAYS } from '../bench/ear/texts.ts';
import { TO_A_VOICE } from '../bench/ear/to-a-voice.ts';
import { SCORING, type Voice } from '../bench/ear/voices.ts';
import { NEEDS } from '../reporter.ts';

/** Before somebody speaks who knows what to say, s: a simple reaction and drawing breath. From memory. */
const BEGINS = 0.6;
/** Once for each phrase: to read it, s. Three or four words at some 200 a minute; from memory. */
const READS = 1.2;
/** For each press: to find and to reach it, s. From memory. */
const PRESS = 2;
/** So much of a room is behind what is said, s. */
const BEHIND = 2;
const OVER = 20;

/** From the moment that it may be said until it is taken, s: heard by the listener itself, a moment at a time. */
async function takes(phrase: EarPhrase, voice: Voice): Promise<number> {
  const said = await say(SAYS[phrase], voice, { haste: 1, pitch: 1 });
  const sound = inKitchen(said, OVER, 1, BEHIND);
  const begins = Math.round((BEHIND - BEGINS) * HEARD_AT);
  const moment = Math.round(MOMENT * HEARD_AT);
  let isCut = false;
  const listener = makeListener({
    speaks: () => undefined,
    room: () => undefined,
    cut: () => (isCut = true),
  });
  for (let at = begins; at < sound.length; at += moment) {
    listener.push(sound.subarray(at, at + moment));
    if (isCut) return (at + moment - begins) / HEARD_AT;
  }
  throw new Error(`“${SAYS[phrase]}” was not heard.`);
}

test('a voice is learned in under two minutes: read, said and heard as often as it takes', async (context) => {
  context.skip(!hasVoices(), `${NEEDS}espeak-ng and flite`);
  for (const voice of SCORING.filter(({ name }) => name === 'slt' || name === 'five')) {
    let seconds = TO_A_VOICE * PRESS;
    for (const phrase of ROUNDS.phrases) seconds += READS + TAKES * (await takes(phrase, voice));
    expect(seconds).toBeGreaterThan(60);
    expect(seconds).toBeLessThan(120);
  }
});
