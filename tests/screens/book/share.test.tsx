import { cleanup, render, screen } from '@solidjs/testing-library';
import { createRoot, type JSX } from 'solid-js';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { SharedFile } from '../../../machines/ports.ts';
import { makeSheets } from '../../../src/adapters/sheets/make-sheets.ts';
import { writeLink } from '../../../src/adapters/sheets/link.ts';
import { readCsv } from '../../../src/adapters/sheets/read-csv.ts';
import { openHouse } from '../../../src/app/open-house.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { readFormula } from '../../../src/core/formula/read-formula.ts';
import type { Fact } from '../../../src/core/records/fact.ts';
import { readFormulas } from '../../../src/core/sheets/formula-file.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { KeepFace } from '../../../src/screens/book/share/KeepFace.tsx';
import LinkIn from '../../../src/screens/book/share/LinkIn.tsx';
import Share from '../../../src/screens/book/share/Share.tsx';
import { benchView } from '../../../src/screens/book/share/sheet-view.ts';
import { SheetFace } from '../../../src/screens/book/share/SheetFace.tsx';
import type { House } from '../../../src/screens/house.ts';
import { serveFormulas } from '../../fakes/baking.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';

const FILES = import.meta.glob<unknown>('../../../assets/formulas/*.json', {
  eager: true,
  import: 'default',
});
const SHIPPED = Object.keys(FILES).map((path) => /([a-z-]+)\.json$/.exec(path)![1]!);
const shippedFormula = (name: string): Formula =>
  readFormula(FILES[`../../../assets/formulas/${name}.json`]).formula!;

// Libraries and the judge come when they are first wanted, which takes its time on a busy machine.
vi.setConfig({ testTimeout: 30_000 });
const until = (holds: () => void) => vi.waitFor(holds, { timeout: 20_000 });

beforeEach(() => serveFormulas());
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

async function opened(page: (house: House) => JSX.Element) {
  const clock = turnedClock();
  const house: House = await createRoot(() => openHouse(makeFakeWorld({})));
  house.sheets = () => Promise.resolve(makeSheets('https://bread.lane.example/'));
  await until(() => expect(house.book().length).toBe(SHIPPED.length));
  render(() => (
    <PressGround now={clock} firstTouch={() => house.hush()}>
      {page(house)}
    </PressGround>
  ));
  const press = async (name: RegExp): Promise<void> => {
    const found = await screen.findByRole('button', { name }, { timeout: 20_000 });
    clock.at += 1_100;
    tap(found);
  };
  const kept = (): Fact[] => house.records().map(({ fact }) => fact);
  const text = (): string => document.body.textContent.replaceAll('\u00a0', ' ');
  return { house, press, text, kept };
}

it('what is handed on as a file is read by the one reader, and told', async () => {
  const formula = shippedFormula('cherry-hazelnut');
  const { house, press, text } = await opened((one) => (
    <Share house={one} formula={formula} back="back" onBack={() => undefined} />
  ));
  const handed: SharedFile[] = [];
  house.handOn = (file) => Promise.resolve(void handed.push(file)).then(() => 'saved');
  await press(/^File/);
  await until(() => expect(text()).toContain('It is saved.'));
  await press(/^Plain table/);
  await until(() => expect(handed).toHaveLength(2));
  expect(handed.map(({ name }) => name)).toEqual(['cherry-hazelnut.json', 'cherry-hazelnut.csv']);
  expect(readFormulas(handed[0]!.text as string)).toEqual({ formulas: [formula] });
  expect(readCsv(handed[1]!.text as string).tables).toHaveLength(1);
});

it('a link shows its formula and keeps nothing before the press; then beside what is there', async () => {
  const link = writeLink({ ...shippedFormula('lane-wheat'), salt: 2.1 })!;
  const { house, press, text, kept } = await opened((one) => (
    <LinkIn house={one} link={link} back="back" onBack={() => undefined} />
  ));
  await until(() => expect(text()).toContain('Keep this formula?'));
  expect(text()).toContain('salt 2.1 %');
  expect(kept()).toEqual([]);
  await press(/^Keep it/);
  await until(() => expect(text()).toContain('It is in the Book.'));
  expect(kept()).toMatchObject([
    { kind: 'formula', formula: { id: 'lane-wheat-2', version: 1, salt: 2.1 } },
  ]);
  expect(house.book().find(({ id }) => id === 'lane-wheat')!.latest.salt).not.toBe(2.1);
});

it('a formula that came in has what is unusual of it told in words before it is kept', async () => {
  const wheat = shippedFormula('lane-wheat');
  const strange = {
    ...wheat,
    salt: 2.8,
    hydration: 97,
    process: { ...wheat.process, benchRest: 50, fridge: 8 },
  };
  const { text, kept } = await opened((one) => (
    <LinkIn house={one} link={writeLink(strange)!} back="back" onBack={() => undefined} />
  ));
  await until(() => expect(text()).toContain('Keep this formula?'));
  expect(text()).toContain('no filling; overnight, pot.');
  for (const told of [
    'Water is 97 % of flour; 55 to 95 is usual.',
    'Salt is 2.8 %, over the usual 2.5.',
    'Bench rest: 50 min; 10 to 30 is usual.',
    'Fridge at 8 °C; 3 °C to 5 °C is wanted.',
  ]) {
    expect(text()).toContain(told);
  }
  expect(kept()).toEqual([]);
});

it('one that cannot be weighed says why, and what is unusual of it besides', async () => {
  const cheese = { id: 'c', name: 'fresh cheese', pct: 20, keeps: 'perishable' } as const;
  const wheat = shippedFormula('lane-wheat');
  const strange = { ...wheat, salt: 2.8, fillings: [{ ...cheese, allergens: ['milk'] }] };
  const { text } = await opened((one) => (
    <LinkIn house={one} link={writeLink(strange)!} back="back" onBack={() => undefined} />
  ));
  await until(() => expect(text()).toContain('fresh cheese spoils in a long rise.'));
  expect(text()).toContain('Salt is 2.8 %');
});

it('of many formulas each one that is unusual is told, however far down it stands', async () => {
  const wheat = shippedFormula('lane-wheat');
  const many = Array.from({ length: 15 }, (_, i) => ({
    ...wheat,
    name: `Loaf ${String.fromCharCode(65 + i)}`,
    salt: i === 14 ? 2.8 : wheat.salt,
  }));
  const { text } = await opened((one) => (
    <KeepFace house={one} formulas={many} back="back" onBack={() => undefined} />
  ));
  await until(() => expect(text()).toContain('Keep 15 formulas?'));
  expect(text()).toContain('Loaf L:');
  expect(text()).not.toContain('Loaf M:');
  expect(text()).toMatch(/Loaf O:.*Salt is 2\.8 %, over the usual 2\.5\./);
});

it('a link that was cut is refused with where, what and what came', async () => {
  const link = writeLink(shippedFormula('lane-wheat'))!.slice(0, -30);
  const { text, kept } = await opened((one) => (
    <LinkIn house={one} link={link} back="back" onBack={() => undefined} />
  ));
  await until(() => expect(text()).toContain('This cannot be read'));
  expect(text()).toContain('the link: a whole one was expected, one that was cut or changed came.');
  expect(kept()).toEqual([]);
});

it('a sheet is mended by presses, asks what it leaves open, and is kept in % of all flour', async () => {
  const csv =
    'Ingredient;Gramm\nMehl;1000\nWasser;750\nSauerteig;200\nSalz;20\nOliven;150\nPreis;-3\n';
  const { rows } = readCsv(csv).tables![0]!;
  const { press, text, kept } = await opened((one) => (
    <SheetFace
      house={one}
      table={rows}
      own={null}
      name="olive loaf"
      back="back"
      onBack={() => undefined}
    />
  ));
  await until(() => expect(text()).toContain('What is in each column?'));
  await press(/^It’s right/);
  await until(() => expect(text()).toContain('What is what?'));
  await press(/^It’s right/);
  await until(() => expect(text()).toContain('row 7: a weight of 0 or more was expected'));
  await press(/^Preis/);
  await until(() => expect(text()).toContain('Which flour makes 100 %?'));
  await press(/^The bowl’s flour/);
  await press(/^100/);
  await press(/^In the fridge/);
  await until(() => expect(text()).toContain('Keep this formula?'));
  expect(text()).toContain('water 77.3 %, levain flour 9.1 %, salt 1.8 %');
  expect(text()).toContain('A sheet names no allergens.');
  expect(kept()).toEqual([]);
  await press(/^Keep it/);
  await until(() => expect(kept()).toHaveLength(1));
  expect(kept()[0]).toMatchObject({
    formula: { id: 'olive-loaf', version: 1, fillings: [{ name: 'Oliven', keeps: 'perishable' }] },
  });
});

it('a sheet’s columns are known by their headings, and come back from its lines; without names they are asked again', async () => {
  const { rows } = readCsv('Was;Gramm;%\nMehl;1000;100\nWasser;750;75\nSalz;20;2\n').tables![0]!;
  const { press, text } = await opened((one) => (
    <SheetFace
      house={one}
      table={rows}
      own={null}
      name="plain loaf"
      back="back"
      onBack={() => undefined}
    />
  ));
  await until(() => expect(text()).toContain('A: Wasingredient'));
  expect(text()).toContain('B: Grammweight');
  await press(/^It’s\sright/);
  await until(() => expect(text()).toContain('Mehlflour'));
  await press(/^The\scolumns/);
  // From ingredient on to %: column C is nothing then.
  await press(/^A:\sWas/);
  await until(() => expect(text()).toContain('C: %not used'));
  await press(/^It’s\sright/);
  await press(/^It’s\sright/);
  await until(() => expect(text()).toContain('Nothing was taken in.'));
  expect(text()).toContain('What is in each column?');
});

it.each(SHIPPED)('the sheet for the bench has all of %s in the order of use', (name) => {
  const formula = shippedFormula(name);
  const { recipe } = makeRecipe(formula, { loaves: 2, piece: formula.piece });
  const view = benchView(recipe!, { heat: 'C', weight: 'g' }, 'today');
  const lines = view.lists.flatMap((list) => list.lines);
  expect(lines).toHaveLength(Object.values(recipe!.lines).flat().length);
  expect(view.lists[0]!.title).toBe('Feed the levain');
  for (const { what, much } of lines) expect([what, much].every((text) => text !== '')).toBe(true);
  const steps = view.steps.map(({ what }) => what);
  expect(steps[0]).toBe('Rest');
  expect(steps.at(-1)).toBe('Cool before you cut');
  expect(steps.includes('Spoon into the tin')).toBe(formula.process.shaping === 'scoop');
  expect(steps.some((what) => what.startsWith('In the fridge'))).toBe(formula.process.retard > 0);
  expect(view.notes.some((note) => note.includes('Raw dough'))).toBe(true);
  const allergens = view.notes.find((note) => note.startsWith('Allergens in it: gluten ('))!;
  expect(allergens).toContain('Read the packet: labels change.');
  for (const { name: filling, allergens: own } of formula.fillings) {
    if (own.length === 0) expect(allergens).toMatch(new RegExp(`Not answered yet:.*${filling}`));
  }
});

it('the sheet for the bench has a large dough bowl by bowl, and how far apart they are', () => {
  const sheetOf = (loaves: number) => {
    const formula = shippedFormula('cherry-hazelnut');
    const { recipe } = makeRecipe(formula, { loaves, piece: formula.piece });
    return benchView(recipe!, { heat: 'C', weight: 'g' }, 'today');
  };
  const { bowls, lists } = sheetOf(6);
  expect(bowls).toMatch(/^2 bowls, (about )?274\d g each\. Bowl 2: 6\u00a0min later\.$/);
  const [feed, ...dough] = lists;
  for (const { much } of feed!.lines) expect(much).toMatch(/^[\d.]+ g$/);
  for (const { what, much } of dough.flatMap(({ lines }) => lines))
    expect(much, what).toMatch(/^2 × [\d.]+ g$|^[\d.]+ g \+ [\d.]+ g$/);
  const plain = sheetOf(2);
  expect(plain.bowls).toBeNull();
  expect(
    plain.lists
      .flatMap(({ lines }) => lines)
      .map(({ much }) => much)
      .join(' '),
  ).not.toContain('×');
});
