import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { BakeStage } from '../../src/core/records/stage.ts';
import { openBaking, serveFormulas } from '../fakes/baking.ts';
import { makeHeardSpeaker } from '../fakes/heard-speaker.ts';
import { makeFakeWorld } from '../fakes/world.ts';

vi.setConfig({ testTimeout: 30_000 });
beforeEach(() => serveFormulas());
afterEach(() => vi.unstubAllGlobals());

/** A house that has baked its first bread once and noted it, and whose words last as long as they are said. */
async function bakedOnce(text?: string) {
  const speaker = makeHeardSpeaker();
  const { house, begin } = await openBaking({ ...makeFakeWorld(), speaker });
  const press = (who: string, act: string, more: object = {}) =>
    house.take({ kind: 'press', who, act, ...more } as never);
  const note = async (words?: string): Promise<string> => {
    const id = await begin('cool.note');
    await press(id, 'noted', words === undefined ? {} : { text: words });
    expect(house.kitchen().bakes[id]).toBeUndefined();
    return id;
  };
  const first = await note(text);
  let from = 0;
  const heard = () =>
    speaker.said
      .slice(from)
      .map(({ words }) => words)
      .join(' ');
  /** What is said from now on. */
  const listen = () => void (from = speaker.said.length);
  /** All that was said by the time these words were. */
  const hears = async (words: RegExp): Promise<string> => {
    await vi.waitFor(() => {
      speaker.finish();
      expect(heard()).toMatch(words);
    }, 5_000);
    return heard();
  };
  const beginAt = (from: BakeStage): Promise<string> => {
    listen();
    return begin(from);
  };
  return { house, first, speaker, press, note, beginAt, listen, hears };
}

const READ = /See when it needs you\.$/;

describe('a bake that begins', () => {
  it('says what the last one was and what to do this time, captioned alike, before its first act', async () => {
    const { house, beginAt, speaker, listen, hears } = await bakedOnce('under');
    await beginAt('read.plan');
    await vi.waitFor(() => expect(house.caption()).toMatch(/^Last time/), 5_000);
    expect(house.caption()).toBe(speaker.said.at(-1)!.words);
    expect(await hears(READ)).toBe(
      'Last time it was under. This time wait for the dome. Read it through. See when it needs you.',
    );
    listen();
    await house.take({
      kind: 'press',
      who: Object.keys(house.kitchen().bakes)[0]!,
      act: 'readThrough',
    });
    expect(await hears(/Say how each thing really is/)).not.toMatch(/Last time|This time/);
  });

  it('pins nothing of it: its start is as any other', async () => {
    const { house, beginAt } = await bakedOnce('under');
    await beginAt('read.plan');
    const starts = house.records().flatMap(({ fact }) => (fact.kind === 'start' ? [fact] : []));
    expect(starts).toHaveLength(2);
    expect(Object.keys(starts[1]!)).toEqual(Object.keys(starts[0]!));
    expect(JSON.stringify(starts[1])).not.toMatch(/longerBulk|Last time|under/);
  });

  it('says nothing of it where there was no note, or one in own words', async () => {
    for (const text of [undefined, 'Less water']) {
      const { beginAt, hears } = await bakedOnce(text);
      await beginAt('read.plan');
      expect(await hears(READ)).toBe('Read it through. See when it needs you.');
    }
  });

  it('goes by the note that stands once one was taken back', async () => {
    const { house, press, beginAt, hears, first } = await bakedOnce('over');
    await house.takeBack();
    await press(first, 'noted', { text: 'pale' });
    await beginAt('read.plan');
    expect(await hears(READ)).toMatch(
      /^Last time the crust was too pale\. This time bake it five to ten minutes longer\. Read/,
    );
  });

  it('goes by a cut loaf before the note', async () => {
    const { house, beginAt, hears } = await bakedOnce('good');
    const { id: target } = house.records().find(({ fact }) => fact.kind === 'start')!.fact;
    await house.take({
      kind: 'cut',
      target,
      answers: { crumb: 'gummy', holes: 'underCrust', spread: 'spread' },
      read: {
        says: 'causes',
        causes: [{ cause: 'over', sure: 'likely' }],
        change: 'shorterCold',
        because: [],
        model: 'test',
      },
    });
    await beginAt('read.plan');
    expect(await hears(READ)).toMatch(
      /^Last time it looked over\. This time leave it in the cold for less time\. Read/,
    );
  });

  it('hears what it can still heed where it is joined, and nothing of what is past', async () => {
    const { note, beginAt, hears } = await bakedOnce('under');
    await beginAt('shape.divide');
    expect(await hears(/Weigh every piece/)).not.toMatch(/Last time|This time/);
    await note('dark');
    await beginAt('shape.divide');
    expect(await hears(/Weigh every piece/)).toMatch(
      /Last time the crust was too dark\. This time set the oven a little lower\. .*Weigh every piece/,
    );
  });
});
