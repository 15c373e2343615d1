import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { beforeOven, beforeStart } from '../../src/core/speech/words/before.ts';
import { MINUTE } from '../../src/core/units.ts';
import type { House } from '../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../fakes/baking.ts';
import { makeHeardSpeaker } from '../fakes/heard-speaker.ts';
import { makeFakeWorld } from '../fakes/world.ts';

vi.setConfig({ testTimeout: 30_000 });
beforeEach(() => serveFormulas());
afterEach(() => vi.unstubAllGlobals());

const COMPLETE = /List complete\./g;

/** A house whose words last, so that a caption stands as long as its words do. */
async function openHeard(parts: Parameters<typeof makeFakeWorld>[0] = {}) {
  const speaker = makeHeardSpeaker();
  const fake = makeFakeWorld(parts);
  const world = { ...fake, speaker };
  const { house, begin } = await openBaking(world);
  const answer = (who: string, item: string, value: string) =>
    house.take({ kind: 'press', who, act: 'answer', item, value });
  /** What was said at last, once it is so. */
  const hears = (words: RegExp) =>
    vi.waitFor(() => expect(speaker.said.at(-1)?.words ?? 'nothing').toMatch(words), 5_000);
  const said = () => speaker.said.map(({ words }) => words).join(' ');
  return { house, world, speaker, begin, answer, hears, said, stage: stageIn(house) };
}
const stageIn = (house: House) => (id: string) => stageOf(house.kitchen().bakes[id]!);
/** All there is to say has been said: what is spoken comes by chunks of its own. */
const settled = () => new Promise((done) => setTimeout(done, 50));
const slabs = (list: typeof beforeStart) =>
  list.map(({ item, slab }) => [item, slab.value] as const);

describe('a checklist that is done', () => {
  it('is said to be complete, captioned alike, right before the next act', async () => {
    const { begin, answer, hears, said, house, stage } = await openHeard();
    const id = await begin('read.list' as never);
    for (const [item, value] of slabs(beforeStart)) {
      expect(said()).not.toMatch(COMPLETE);
      await answer(id, item, value);
    }
    expect(stage(id)).toBe('levain.feed');
    await hears(/^List complete\. .* of starter/);
    expect(house.caption()).toBe(said().slice(said().indexOf('List complete.')));
    expect(said().match(COMPLETE)).toHaveLength(1);
  });

  it('is not complete while an answer left an item open, and is once that is mended', async () => {
    const { begin, answer, hears, said, stage } = await openHeard();
    const id = await begin('read.list' as never);
    for (const [item, value] of slabs(beforeStart))
      await answer(id, item, item === 'hands' ? 'notYet' : value);
    await settled();
    expect([stage(id), said()]).toEqual(['read.list', expect.not.stringMatching(COMPLETE)]);
    await answer(id, 'hands', 'washed');
    await hears(/^List complete\. /);
  });

  it('says first what its last answer asks to heed', async () => {
    const { speaker, begin, answer, hears } = await openHeard();
    const id = await begin('read.list' as never);
    for (const [item, value] of slabs(beforeStart))
      await answer(id, item, item === 'fridge' ? 'warm' : value);
    await hears(/^Turn it colder now, and check it tonight\. List complete\.$/);
    speaker.finish();
    await hears(/of starter/);
  });

  it('is said to be complete again when its last answer was taken back and given again', async () => {
    const { house, begin, answer, hears, said, stage } = await openHeard();
    const id = await begin('read.list' as never);
    for (const [item, value] of slabs(beforeStart)) await answer(id, item, value);
    await hears(/^List complete\. /);
    await house.takeBack();
    expect(stage(id)).toBe('read.list');
    await hears(/^(?!List complete)/);
    await answer(id, 'fridge', 'cleared');
    await hears(/^List complete\. /);
    expect(said().match(COMPLETE)).toHaveLength(2);
  });

  it('names its bake once where two run', async () => {
    const { speaker, begin, answer, hears, said } = await openHeard();
    const id = await begin('read.list' as never);
    await begin('bulk.proving');
    for (const [item, value] of slabs(beforeStart)) await answer(id, item, value);
    await hears(/^Cherry bake[^.]*\. List complete\.(?!.* bake )/);
    speaker.finish();
    await hears(/^(?!.* bake )/);
    expect(said()).toMatch(/ of starter/);
    expect(said().match(COMPLETE)).toHaveLength(1);
  });

  it('is heard though another bake calls in the same instant', async () => {
    const { house, world, speaker, begin, answer, hears } = await openHeard();
    const other = await begin('mix.first');
    await house.take({ kind: 'press', who: other, act: 'mixed' });
    const id = await begin('read.list' as never);
    for (const [item, value] of slabs(beforeStart).slice(0, -1)) await answer(id, item, value);
    // The rest of the other dough ends; no timer has run since.
    world.clock.sleep(30 * MINUTE);
    await answer(id, 'fridge', 'cleared');
    await hears(/^It’s time: the salt goes in, Cherry bake/);
    speaker.finish();
    // Its name goes with what it is of, however much was said before it.
    await hears(/^Cherry bake[^.]*\. List complete\./);
  });

  it('is captioned where nothing can be heard, and not said again on the next opening', async () => {
    const mute = makeFakeWorld();
    const world = { ...mute, later: () => () => undefined };
    const { house, begin } = await openBaking(world);
    const id = await begin('read.list' as never);
    for (const [item, value] of slabs(beforeStart))
      await house.take({ kind: 'press', who: id, act: 'answer', item, value });
    await vi.waitFor(() => expect(house.caption()).toMatch(/^List complete\. /), 5_000);

    const again = await openHeard({ store: mute.store, at: mute.clock.now() + MINUTE });
    again.world.beat();
    await settled();
    expect(again.stage(id)).toBe('levain.feed');
    expect(again.said()).toBe('');
  });

  it('ends the list before the hot oven too, before the blade is told of', async () => {
    const { house, begin, answer, hears } = await openHeard();
    await begin('oven.queued');
    await house.take({ kind: 'press', who: 'oven', act: 'ovenOn' });
    await house.take({ kind: 'press', who: 'oven', act: 'ovenHot' });
    await house.take({ kind: 'press', who: 'oven', act: 'pokeReady' });
    for (const [item, value] of slabs(beforeOven)) await answer('oven', item, value);
    expect(stageOf(house.kitchen().oven)).toBe('score');
    await hears(/^List complete\. \w/);
  });
});

it('says of weighed lines that they are weighed, and no list complete', async () => {
  const { house, begin, answer, said, stage } = await openHeard();
  const id = await begin('levain.feed');
  for (const { item, grams } of house.kitchen().bakes[id]!.context.recipe.lines.feed)
    await answer(id, item, String(grams));
  expect(stage(id)).toBe('levain.ripening');
  await settled();
  expect(said()).toMatch(/\w/);
  expect(said()).not.toMatch(COMPLETE);
});
