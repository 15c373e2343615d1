import { expect, it } from 'vitest';
import { Baker } from '../harness/baker.ts';
import { expectNoFaults } from '../harness/faults.ts';
import { actsOf, expectWhole, logOf, standing } from '../harness/logged.ts';
import { ManyWalker } from '../harness/many-walker.ts';
import { openApp } from '../harness/open-app.ts';
import {
  COLD_PROOF,
  HANDED_OVER,
  laterActs,
  loadActs,
  SHAPED,
  sheetActs,
  TO_THE_BOWL,
} from '../harness/way-parts.ts';

const wholeOf = (fillings: number): string[] => [
  ...TO_THE_BOWL,
  ...sheetActs(fillings),
  ...SHAPED,
  ...COLD_PROOF,
  ...HANDED_OVER,
];

const TAKEN_BACK = [
  'Cherry: levainRipe',
  'Cherry: rolled',
  'Cherry: inFridge',
  'Cherry: loaded',
  'Cherry: lidOff',
  'Olive: folded',
  'Olive: bulkReady',
  'Olive: loafReady',
  'Olive: loaded',
  'Olive: steamOut',
];

/** More than both have together. */
const MOST_STEPS = 900;

it('walks two breads at once through the one oven, and no press lands in the other', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const walker = new ManyWalker(baker, {
    takeBack: TAKEN_BACK,
    reload: [
      'Let the dough rest',
      'Leave the loaves in the fridge',
      'Leave the lid on',
      'Let the steam out, face back',
    ],
  });
  const toStart = async () => {
    await walker.clear();
    await baker.tap('.bench-ear .control');
    await baker.press('To the start');
  };
  const fromStart = (name: string) =>
    baker.tap(`.bake-control:has(.bake-name:text-is("${name}")) button`);
  const over = (act: string): number =>
    walker.done.filter(({ fact }) => fact.kind === 'press' && fact.act === act).length;

  await baker.begin('22', 'Cherry and hazelnut');
  walker.alone = 'Cherry';
  while ((await walker.look()).left === null) await walker.goOn();
  await app.turn(50 * 60_000);
  await toStart();
  await baker.begin('22', 'Olive and seed');

  let third: 'none' | 'runs' | 'ended' = 'none';
  for (let n = 0; n < MOST_STEPS && over('noted') < 2; n += 1) {
    const fact = await walker.goOn();
    const act = fact?.kind === 'press' ? fact.act : '';
    if (act === 'noted' && over('noted') === 1) {
      // What is left is one press from the start page.
      await baker.tap('.slab');
      walker.alone = walker.done.at(-1)!.bake === 'Cherry' ? 'Olive' : 'Cherry';
      await fromStart(walker.alone);
    }
    if (act === 'divided' && third === 'none') {
      await toStart();
      await baker.press('Where is your dough?');
      await app.turn(500);
      // Where a call of the other bakes rang just then, the first touch only silenced it.
      const ready = app.page.locator('button:has-text("My dough is ready to divide")');
      if ((await ready.count()) === 0) await baker.press('Where is your dough?');
      await baker.press('My dough is ready to divide');
      await baker.begin('22', 'Lane wheat');
      third = 'runs';
    }
    if (act === 'inBaskets' && third === 'runs' && walker.done.at(-1)!.bake === 'Lane wheat') {
      await baker.tap('.bench-ear .control');
      await baker.press('End this bake');
      const ended = await walker.noted(() => baker.hold());
      walker.done.push({ bake: 'Lane wheat', fact: ended });
      await baker.tap('.slab');
      await fromStart('Cherry');
      third = 'ended';
    }
  }
  const records = await logOf(app);
  const ids = new Map(
    records.flatMap(({ fact }) =>
      fact.kind === 'start' ? [[fact.recipe.formula.name, fact.bake] as const] : [],
    ),
  );
  const [cherry, olive, lane] = ['Cherry and hazelnut', 'Olive and seed', 'Lane wheat'].map(
    (name) => ids.get(name)!,
  );
  expect(actsOf(records, cherry!)).toEqual(wholeOf(2));
  expect(actsOf(records, olive!)).toEqual(wholeOf(3));
  expect(actsOf(records, lane!)).toEqual(['divided', 'preshaped', 'shaped', 'inBaskets', 'ended']);
  expect(actsOf(records, 'oven')).toEqual([
    'ovenOn',
    ...loadActs(7, 'lidOff'),
    ...laterActs('lidOff'),
    // A stone after a pot: what it wants is asked anew.
    ...loadActs(6, 'steamOut'),
    ...laterActs('steamOut'),
    'ovenOff',
  ]);
  const loads = standing(records).flatMap((fact) =>
    fact.kind === 'press' && fact.act === 'loaded' ? [fact.loaves] : [],
  );
  const starts = records.flatMap(({ fact }) => (fact.kind === 'start' ? [fact] : []));
  const loavesOf = (bake: string) => starts.find((fact) => fact.bake === bake)!.loaves;
  expect(loads).toEqual([...loavesOf(cherry!), ...loavesOf(olive!)].map((loaf) => [loaf]));
  // What was done is what stands, in its order; each act is that of the bake that was on show.
  const acts = standing(records).filter(
    (fact) => fact.kind === 'reading' || (fact.kind === 'press' && fact.act !== 'taskDone'),
  );
  expect(walker.done.map(({ fact }) => fact.id)).toEqual(acts.map(({ id }) => id));
  const shown = { Cherry: cherry, Olive: olive, 'Lane wheat': lane } as Record<string, string>;
  for (const { bake, fact } of walker.done) {
    const who = fact.kind === 'press' ? fact.who : fact.kind === 'reading' ? fact.bake : '';
    expect([shown[bake], 'oven', 'lane.pot'], `${bake}, ${JSON.stringify(fact)}`).toContain(who);
  }
  expect(walker.did.tookBack.toSorted()).toEqual(TAKEN_BACK.toSorted());
  expect(walker.moves.length).toBeGreaterThan(30);
  expect(walker.fetched.length).toBeGreaterThan(5);
  expectWhole(records);
  expectNoFaults(app.faults);
});
