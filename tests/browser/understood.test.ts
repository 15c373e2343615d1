import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { HEAR_RECORD_SCRIPT, heard } from './harness/hear.ts';
import { NUMBERS, PROMPTS, type Prompt } from './harness/prompts.ts';
import { HEARD_AT, needRecogniser, recognise } from './harness/recognise.ts';
import { recorded, samplesIn } from './harness/recorded.ts';
import { openSoundSite, type SoundSite } from './harness/sound-site.ts';
import { openTab, type Tab } from './harness/tab.ts';

let site: SoundSite;
let tab: Tab;
beforeAll(async () => {
  site = await openSoundSite();
  tab = await openTab(site.server.url, HEAR_RECORD_SCRIPT);
});
afterAll(async () => {
  await tab.close();
  await site.close();
});

const choicesOf = ({ says, twins }: Prompt) => [says, ...twins];
/** The words as the voice plays them, without waiting for them. */
const played = (words: string) => samplesIn(tab, `render(${JSON.stringify(words)}, ${HEARD_AT})`);

test('numbers that sound in the page are taken for what they are', async (context) => {
  needRecogniser(context);
  const label = () => tab.evaluate('document.querySelector("button")?.textContent');
  await expect.poll(label).toBe('locked');
  await tab.tap('button');
  await expect.poll(label).toBe('armed');
  await expect.poll(async () => (await heard(tab)).length).toBeGreaterThan(20);
  // Index and files come with the first words.
  await tab.evaluate(`speaker.say('stand back').over`);
  const audio = async () => (await heard(tab)).at(-1)!.audio;
  const ends: number[] = [await audio()];
  for (const { says } of NUMBERS) {
    await tab.evaluate(`speaker.say(${JSON.stringify(says)}).over`);
    const over = Number(await tab.evaluate('sound.context().currentTime'));
    await expect.poll(audio).toBeGreaterThan(over + 0.2);
    ends.push(over + 0.2);
  }
  const all = await recorded(tab, HEARD_AT);
  // Samples are counted from when the ear began, not from when the audio did.
  const began = (await audio()) - all.length / HEARD_AT;
  const taken = await recognise(
    NUMBERS.map((number, i) => ({
      choices: choicesOf(number),
      samples: all.slice(
        Math.max(0, (ends[i]! - began) * HEARD_AT),
        (ends[i + 1]! - began) * HEARD_AT,
      ),
    })),
  );
  expect(taken).toEqual(NUMBERS.map(({ says }) => says));
});

describe('of words as they are played', () => {
  test('numbers and prompts of a bake are taken for what they are', async (context) => {
    needRecogniser(context);
    const all = [...NUMBERS, ...PROMPTS];
    expect(all.length).toBe(23);
    const utterances = [];
    for (const prompt of all)
      utterances.push({ choices: choicesOf(prompt), samples: await played(prompt.says) });
    expect(await recognise(utterances)).toEqual(all.map(({ says }) => says));
  });

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
      utterances.push({ choices, samples: await played(instead) });
    expect(await recognise(utterances)).toEqual(wrong.map(({ instead }) => instead));
  });
});
