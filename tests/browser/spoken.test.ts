import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { asSpoken } from '../core/speech/support/as-spoken.ts';
import {
  HEAR_APART_SCRIPT,
  heard,
  heardApart,
  stall,
  stretches,
  type Moment,
} from './harness/hear.ts';
import { openSoundSite, type SoundSite } from './harness/sound-site.ts';
import { openTab, type Tab } from './harness/tab.ts';

/** How long words take at their pace, ms. */
const longOf = (words: string): number => 1000 * asSpoken(words, 'grown').seconds;

let site: SoundSite;
let tab: Tab;
beforeAll(async () => {
  site = await openSoundSite();
  tab = await openTab(site.server.url, HEAR_APART_SCRIPT);
});
afterAll(async () => {
  await tab.close();
  await site.close();
});

/** Says it and waits till it is over; the real instants of both. */
async function say(words: string): Promise<{ from: number; until: number }> {
  const from = Date.now();
  await tab.evaluate(`speaker.say(${JSON.stringify(words)}).over`);
  return { from, until: Date.now() };
}
/** What was heard between two real instants, once it has been measured. */
async function heardUntil(from: number, until: number): Promise<Moment[]> {
  await expect.poll(async () => (await heard(tab)).at(-1)?.wall).toBeGreaterThan(until);
  return (await heard(tab)).filter(({ wall }) => wall > from && wall <= until);
}

test('bring nothing and are over at once in a page that nobody touched', async () => {
  const label = () => tab.evaluate('document.querySelector("button")?.textContent');
  await expect.poll(label).toBe('locked');
  await say('Children, stand back.');
  expect(stretches(await heard(tab))).toEqual([]);
  await tab.tap('button');
  await expect.poll(label).toBe('armed');
  await expect.poll(async () => (await heard(tab)).length).toBeGreaterThan(20);
  // The first words that can be heard bring index and file with them: that they come late is no matter.
  await say('Children, stand back.');
});

describe('words in a page that was tapped', () => {
  test.each([
    ['Lower it in, lid on, door shut. Children, stand back.', 2],
    ['nine hundred and eighteen, nine one eight, grams of strong wheat flour.', 1],
  ])('%s: heard, as long as their clips take', async (words, sentences) => {
    const { from, until } = await say(words);
    const moments = await heardUntil(from, until + 300);
    const spoken = stretches(moments, { gap: 350 });
    expect(spoken).toHaveLength(sentences);
    const long = spoken.at(-1)!.until - spoken[0]!.from;
    const uneven = 120 + stall(moments, from, until);
    expect(Math.abs(long - longOf(words))).toBeLessThan(uneven);
    // Heard over a kitchen: its loudest moment within 12 dB of all there is.
    expect(Math.max(...spoken.map(({ peak }) => peak))).toBeGreaterThan(0.25);
    expect(await tab.evaluate('losses')).toEqual([]);
  });

  test('are silent within 200 ms of being stopped', async () => {
    await tab.evaluate(`void (saying = speaker.say('Lower it in, lid on, door shut.'))`);
    await expect
      .poll(async () => (await heard(tab)).at(-1)!.rms, { interval: 10 })
      .toBeGreaterThan(0.01);
    const stopped = Number(await tab.evaluate('(saying.stop(), Date.now())'));
    const moments = await heardUntil(stopped - 400, stopped + 1_500);
    const last = stretches(moments).at(-1)!;
    expect(last.until - stopped).toBeLessThanOrEqual(
      200 + stall(moments, stopped - 100, stopped + 300),
    );
  });

  test('and a call never sound at once, and both are heard', async () => {
    const due = Number(await tab.evaluate(`[Date.now(), (stop = sound.ring('hot', 0))][0]`));
    const words = 'Hot, now: lift the lid. Children, stand back.';
    await say(words);
    await heardUntil(due, due + 7_500);
    await tab.evaluate('stop()');
    const outs = (await heardApart(tab)).map((out) => out.filter(({ wall }) => wall > due));
    const loud = outs.map(
      (out) =>
        new Set(out.filter(({ rms }) => rms > 0.003).map(({ audio }) => Math.round(audio * 100))),
    );
    const sounding = loud
      .map((moments, i) => ({ i, moments }))
      .filter(({ moments }) => moments.size > 0);
    expect(sounding).toHaveLength(2);
    const [one, other] = sounding.map(({ moments }) => moments) as [Set<number>, Set<number>];
    expect([...one].filter((moment) => other.has(moment))).toEqual([]);
    // The call begins, then the words come, then the call again.
    const all = stretches(
      (await heard(tab)).filter(({ wall }) => wall > due),
      { gap: 350 },
    );
    const [first] = all;
    expect(first!.from - due).toBeLessThan(400);
    const spoken = sounding.find(({ i }) => i === outs.length - 1)!;
    expect(spoken.moments.size * 10).toBeGreaterThan(0.6 * (longOf(words) - 500));
  });
});
