import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loudness } from '../../assets/make/voice/wave.ts';
import { aloud } from '../../src/core/speech/aloud.ts';
import {
  isPaced,
  PACES as LIMITS,
  rateOf,
  wordsIn,
  type Pace,
} from '../../src/core/speech/pace.ts';
import { HEAR_RECORD_SCRIPT } from './harness/hear.ts';
import { choicesOf, NUMBERS, PROMPTS } from './harness/prompts.ts';
import { HEARD_AT, needRecogniser, recognise } from './harness/recognise.ts';
import { samplesIn } from './harness/recorded.ts';
import { armed, openSoundSite, type SoundSite } from './harness/sound-site.ts';
import { openTab, type Tab } from './harness/tab.ts';

let site: SoundSite;
let tab: Tab;
beforeAll(async () => {
  site = await openSoundSite();
  tab = await openTab(site.server.url, HEAR_RECORD_SCRIPT);
  await armed(tab);
});
afterAll(async () => {
  await tab.close();
  await site.close();
});

const PACES = ['grown', 'small'] as const;
/** The words as the voice plays them at this pace, without waiting for them. */
const played = (words: string, pace: Pace) =>
  samplesIn(tab, `render(${JSON.stringify(words)}, ${HEARD_AT}, '${pace}')`);

/** Sound is louder than this against full, in moments of 10 ms, as `stretches` has it. */
const FLOOR = 0.003;
const MOMENT = HEARD_AT / 100;
/** How long it sounds from first to last, and its silences within, the longest first: ms. */
function heardIn(samples: Int16Array): { long: number; silences: number[] } {
  const loud = Array.from(
    { length: Math.floor(samples.length / MOMENT) },
    (_, i) => loudness(samples.subarray(i * MOMENT, (i + 1) * MOMENT)) > FLOOR,
  );
  const spoken = loud.slice(loud.indexOf(true), loud.lastIndexOf(true) + 1);
  const silences = spoken
    .map((one) => (one ? '#' : ' '))
    .join('')
    .split(/#+/)
    .map(({ length }) => length * 10);
  return { long: spoken.length * 10, silences: silences.sort((x, y) => y - x) };
}

const ALL = [...NUMBERS, ...PROMPTS];

describe('of words as they are played', () => {
  test.for(PACES)(
    'numbers and prompts of a bake are taken for what they are: %s',
    async (pace, context) => {
      needRecogniser(context);
      const utterances = [];
      for (const prompt of ALL)
        utterances.push({ choices: choicesOf(prompt), samples: await played(prompt.says, pace) });
      expect(await recognise(utterances)).toEqual(ALL.map(({ says }) => says));
    },
  );

  test.each(PACES)(
    'sentences are half a second apart, and nothing in them sounds like their end: %s',
    async (pace) => {
      expect(ALL).toHaveLength(23);
      for (const { says } of ALL) {
        const { long, silences } = heardIn(await played(says, pace));
        const parts = says.split(/(?<=[.?!])\s+/).length;
        for (const between of silences.slice(0, parts - 1)) {
          expect(between, says).toBeGreaterThanOrEqual(480);
          expect(between, says).toBeLessThanOrEqual(750);
        }
        expect(silences[parts - 1] ?? 0, says).toBeLessThanOrEqual(200);
        expect(long, says).toBeLessThanOrEqual(8_000);
        // As it is heard: what is cut off before and behind speech makes it a little faster.
        const seconds = (long - silences.slice(0, parts - 1).reduce((a, c) => a + c, 0)) / 1000;
        const words = wordsIn(aloud(says));
        const { wpm, syllables } = rateOf({ words, seconds, pauses: 0 });
        expect(wpm, says).toBeLessThanOrEqual(LIMITS[pace].most * 1.06);
        if (pace === 'small') expect(syllables, says).toBeLessThanOrEqual(3.4 * 1.06);
        const asFast = [1, 1.06].map((by) => ({ words, seconds: seconds * by, pauses: 0 }));
        expect(
          asFast.some((one) => isPaced(one, pace)),
          says,
        ).toBe(true);
      }
    },
  );

  test('the wrong ones are taken for what they are too', async (context) => {
    needRecogniser(context);
    const wrong = [
      ...NUMBERS.map((number) => ({ instead: number.twins[0]!, choices: choicesOf(number) })),
      ...PROMPTS.map((prompt, i) => {
        const instead = PROMPTS[(i + 1) % PROMPTS.length]!.says;
        return { instead, choices: [...choicesOf(prompt), instead] };
      }),
    ];
    const utterances = [];
    for (const { instead, choices } of wrong)
      utterances.push({ choices, samples: await played(instead, 'grown') });
    expect(await recognise(utterances)).toEqual(wrong.map(({ instead }) => instead));
  });
});
