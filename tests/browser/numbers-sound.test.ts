import { expect, onTestFinished, test } from 'vitest';
import { HEAR_RECORD_SCRIPT, heard } from './harness/hear.ts';
import { choicesOf, NUMBERS } from './harness/prompts.ts';
import { HEARD_AT, needRecogniser, recognise } from './harness/recognise.ts';
import { recorded } from './harness/recorded.ts';
import { armed, openSoundSite } from './harness/sound-site.ts';
import { openTab } from './harness/tab.ts';

test('numbers that sound in the page are taken for what they are', async (context) => {
  needRecogniser(context);
  const site = await openSoundSite();
  onTestFinished(() => site.close());
  const tab = await openTab(site.server.url, HEAR_RECORD_SCRIPT);
  onTestFinished(() => tab.close());
  await armed(tab);
  await expect.poll(async () => (await heard(tab)).length).toBeGreaterThan(20);
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
