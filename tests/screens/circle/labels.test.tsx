import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { CIRCLE, type Circle, type Order } from '../../../src/core/circle/circle.ts';
import { ingredientKey } from '../../../src/core/circle/ingredient-key.ts';
import { packetState } from '../../../src/core/formula/allergens.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import Labels from '../../../src/screens/circle/labels/Labels.tsx';
import type { House } from '../../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { fakeCircle } from '../../fakes/circle.ts';
import { loadedLater } from '../../fakes/loaded-later.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';

const clock = turnedClock();
const DAY = '2031-05-04';

beforeEach(() => {
  serveFormulas();
  vi.stubGlobal('print', vi.fn());
});
afterEach(() => {
  cleanup();
  document.querySelector('.printed-page')?.remove();
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

const order = (who: string, bread: string, count: number, own = {}): Order => ({
  ...{ id: `${who}-${bread}`, who, day: DAY, at: null, paid: false, handed: null, made: 0 },
  ...{ standing: null, lines: [{ bread, count, grams: null, cut: false, ...own }] },
});
const justItself = (name: string) => ({
  ...{ id: ingredientKey(name), name, pack: null, counted: null, madeOf: [] },
});

const open = async (first: Partial<Circle>, day: string | null = DAY) => {
  const { house } = await openBaking(makeFakeWorld());
  await vi.waitFor(() => expect(house.formulas().length).toBeGreaterThan(5), { timeout: 20_000 });
  const circle = fakeCircle({
    neighbours: [
      { id: 'n1', name: 'K', watch: [] },
      { id: 'n2', name: 'M', watch: [] },
    ],
    ...first,
  });
  let left = 0;
  render(() => (
    <PressGround now={clock}>
      <Labels house={house} circle={circle} day={day} onBack={() => (left += 1)} />
    </PressGround>
  ));
  return { house, circle, left: () => left };
};
const press = (name: RegExp): void => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
};
const has = (name: RegExp): boolean => screen.queryByRole('button', { name }) !== null;
const headline = () =>
  screen.getByRole('heading', { level: 1 }).textContent.replaceAll('\u00a0', ' ');
const text = () => document.body.textContent.replaceAll(/[\u00a0]/g, ' ').replaceAll('\u2011', '-');
const formulaOf = (house: House, id: string) =>
  house.formulas().find(({ formula }) => formula?.id === id)!.formula!;
const reads = (words: string) =>
  vi.waitFor(() => expect(headline()).toBe(words), { timeout: 10_000 });

const NAMES = ['strong wheat flour', 'wholemeal wheat flour'];
/** Lane wheat, all of it answered. */
const answered = async (house: House): Promise<void> => {
  const formula = formulaOf(house, 'lane-wheat');
  const flours = formula.flours.map((flour) => ({
    ...flour,
    allergens: [],
    packet: 'read' as const,
  }));
  await house.keepFormula({ ...formula, flours });
};
const printed = () => document.querySelector('.printed-page');

describe('labels', { timeout: 30_000 }, () => {
  it('keep a press that a finger is on when another answer comes from the disk', async () => {
    const { circle } = await open({ orders: [order('n1', 'lane-wheat', 1)] });
    press(/^Lane wheat/);
    const asked = () =>
      screen
        .getAllByRole('button', { name: /made of what/ })
        .find(({ textContent }) => textContent.includes('wholemeal'))!;
    const before = asked();
    const thing = justItself('strong wheat flour');
    await circle.write({ puts: [{ list: 'ingredients', id: thing.id, thing }] });
    expect(screen.getAllByRole('button', { name: /made of what/ })).toHaveLength(1);
    expect(asked()).toBe(before);
  });

  it('are asked for by bake day or by bread', async () => {
    const { left } = await open({ orders: [order('n1', 'lane-wheat', 2)] }, null);
    expect(headline()).toBe('Labels for which bake?');
    expect(has(/^Sun 4 May\s*2 loaves/)).toBe(true);
    press(/^One bread/);
    press(/^Harbour rye/);
    expect(headline()).toBe('Print the labels');
    expect(has(/^Harbour rye\s*\d to answer/)).toBe(true);
    press(/^Labels/);
    press(/^That’s it/);
    expect(left()).toBe(1);
  });

  it('are refused while anything is not answered, and each question is one press away', async () => {
    const { house, circle } = await open({ orders: [order('n1', 'lane-wheat', 2)] });
    expect(screen.getByRole('button', { name: /^Print it/ }).getAttribute('aria-disabled')).toBe(
      'true',
    );
    expect(text()).toContain('Not answered, so left out: Lane wheat.');
    press(/^Lane wheat\s*4 to answer/);
    expect(headline()).toBe('Answer these first');

    // Its packet: what it names is kept in every bread that has the same flour.
    press(/^strong wheat flour\s*packet not read/);
    expect(headline()).toBe('Allergens of strong wheat flour');
    press(/^None of them/);
    press(/^That’s it/);
    await reads('Answer these first');
    expect(has(/^strong wheat flour\s*packet not read/)).toBe(false);
    const ofWheat = (id: string) =>
      packetState(formulaOf(house, id).flours.find(({ name }) => name === NAMES[0])!);
    expect(ofWheat('lane-wheat')).toBe('none');
    await vi.waitFor(() => expect(ofWheat('cherry-hazelnut')).toBe('none'), { timeout: 10_000 });

    // What it is made of: just itself, or as its packet has it.
    press(/^strong wheat flour\s*made of what/);
    press(/^Just itself/);
    await reads('Answer these first');
    press(/^wholemeal wheat flour\s*made of what/);
    // Two answers are one press away: no keys lie over them.
    expect(screen.queryByRole('dialog')).toBeNull();
    press(/^Big keys/);
    press(/^W$/);
    press(/^Done/);
    expect(screen.getByRole<HTMLTextAreaElement>('textbox').value).toBe('W');
    fireEvent.input(screen.getByRole('textbox'), { target: { value: ' , ' } });
    press(/^That’s it/);
    expect(headline()).not.toBe('Answer these first');
    fireEvent.input(screen.getByRole('textbox'), {
      target: { value: 'wholemeal wheat, malted barley flour' },
    });
    press(/^That’s it/);
    await reads('Answer these first');
    expect(circle.circle().ingredients.map(({ id, madeOf }) => [id, madeOf])).toEqual([
      ['strong wheat flour', []],
      ['wholemeal wheat flour', ['wholemeal wheat', 'malted barley flour']],
    ]);
    press(/^wholemeal wheat flour\s*packet not read/);
    press(/^None of them/);
    press(/^That’s it/);

    // The label: what its own words say is named and told.
    await reads('Lane wheat');
    expect(text()).toContain(
      'wholemeal wheat flour says gluten (barley), its packet does not. It is named.',
    );
    const apart = [...document.querySelectorAll('.label-card b')].map((b) => b.textContent);
    expect(apart).toEqual(['wheat', 'wheat', 'wheat', 'barley']);
    expect(text()).toContain('Not gluten-free: wheat, barley');
    expect(text()).toContain('Labels follow local rules: ask yours.');
  });

  it('are one a loaf, with the names only on the print they are ticked for', async () => {
    const { house } = await open({
      orders: [order('n1', 'lane-wheat', 2), order('n2', 'lane-wheat', 1, { cut: true })],
      ingredients: NAMES.map(justItself),
    });
    await answered(house);
    await vi.waitFor(() => expect(has(/^Lane wheat\s*2 labels/)).toBe(true));
    expect(has(/^Lane wheat · Sliced\s*1 label/)).toBe(true);
    press(/^Print it\s*3 labels, 1 sheet/);
    expect(window.print).toHaveBeenCalledTimes(1);
    expect(printed()?.querySelectorAll('.label-card')).toHaveLength(3);
    expect(printed()?.textContent).not.toMatch(/\b[KM]\b/);
    expect(printed()?.textContent).toContain('Baked 4 May 2031');

    press(/^Names\s*none/);
    press(/^Baked\s*that day/);
    press(/^Print it/);
    expect([...printed()!.querySelectorAll('.label-who')].map((p) => p.textContent)).toEqual([
      'K',
      'K',
      'M',
    ]);
    expect(printed()?.textContent).toContain('Baked 3 May 2031');
    expect(has(/^Names\s*none/)).toBe(true);
    press(/^Print it/);
    expect(printed()?.querySelector('.label-who')).toBeNull();
  });

  it('change in number, list, paper and the maker’s lines', async () => {
    const { house, circle } = await open({
      orders: [order('n1', 'lane-wheat', 2)],
      ingredients: NAMES.map(justItself),
    });
    await answered(house);
    await vi.waitFor(() => expect(has(/^Lane wheat\s*2 labels/)).toBe(true));
    press(/^Lane wheat/);
    press(/^One label more/);
    press(/^That’s it/);
    expect(has(/^Print it\s*3 labels, 1 sheet/)).toBe(true);
    press(/^List and paper\s*A4/);
    press(/^United States/);
    press(/^Roll/);
    press(/^Your lines\s*none/);
    fireEvent.input(screen.getByRole('textbox'), { target: { value: 'The lane\n\n <b>1</b> ' } });
    press(/^That’s it/);
    await reads('Whose list, which paper?');
    expect(circle.circle().ways).toMatchObject({
      list: 'us',
      paper: 'roll',
      lines: ['The lane', '<b>1</b>'],
    });
    press(/^That’s it/);
    press(/^Print it\s*3 labels, one by one/);
    expect(printed()?.querySelectorAll('[data-page^=roll]')).toHaveLength(3);
    expect(printed()?.textContent).toContain('Contains: wheat');
    expect(printed()?.textContent).toContain('<b>1</b>');
  });

  it('ask how long a loaf with cheese may be kept, choosing nothing beforehand', async () => {
    const { house } = await open({
      orders: [order('n1', 'cheese-seed', 1)],
      ingredients: [
        'strong wheat flour',
        'whole rye flour',
        'hard, aged cheese',
        'toasted pumpkin seeds',
      ].map(justItself),
    });
    const formula = formulaOf(house, 'cheese-seed');
    await house.keepFormula({
      ...formula,
      flours: formula.flours.map((flour) => ({ ...flour, allergens: [], packet: 'read' })),
      fillings: formula.fillings.map((filling) => ({ ...filling, packet: 'read' })),
    });
    await vi.waitFor(() => expect(has(/^Cheese and seed\s*1 to answer/)).toBe(true));
    press(/^Cheese and seed/);
    press(/^Eat within how many days/);
    expect(document.querySelector('.tile[aria-pressed=true]')).toBeNull();
    press(/^2 days/);
    await reads('Cheese and seed');
    expect(text()).toContain('Keep refrigerated');
    expect(text()).toContain('Eat within 2 days of baking.');
    expect(text()).toContain('chill it within 2 hours of cooling');
  });

  it('ask which fish it is where the list names it by its kind', async () => {
    const { house } = await open({
      orders: [order('n1', 'lane-wheat', 1)],
      ingredients: NAMES.map(justItself),
      ways: { ...CIRCLE.ways, list: 'us' },
    });
    const formula = formulaOf(house, 'lane-wheat');
    const flours = formula.flours.map((flour, n) => ({
      ...flour,
      ...{ allergens: n === 0 ? ['fish'] : [], packet: 'read' as const },
    }));
    await house.keepFormula({ ...formula, flours });
    await vi.waitFor(() => expect(has(/^Lane wheat\s*1 to answer/)).toBe(true));
    press(/^Lane wheat/);
    press(/^strong wheat flour\s*which fish/);
    expect(headline()).toBe('Which fish is it?');
    fireEvent.input(screen.getByRole('textbox'), { target: { value: 'anchovy' } });
    press(/^That’s it/);
    await reads('Lane wheat');
    expect(text()).toContain('Contains: fish (anchovy), wheat');
  });

  it('leave nothing of a change that was not written', async () => {
    const { house } = await openBaking(makeFakeWorld());
    const circle = fakeCircle({}, () => 'full');
    render(() => (
      <PressGround now={clock}>
        <Labels house={house} circle={circle} day={DAY} onBack={() => undefined} />
      </PressGround>
    ));
    press(/^List and paper/);
    press(/^Canada/);
    await vi.waitFor(() => expect(house.told().length).toBeGreaterThan(0));
    expect(circle.circle().ways.list).toBe('eu');
  });
});
