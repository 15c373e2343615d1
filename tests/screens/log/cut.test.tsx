import { cleanup, render, screen, within } from '@solidjs/testing-library';
import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { cutOf } from '../../../src/core/log/cut-of.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { AskFace } from '../../../src/screens/log/cut/AskFace.tsx';
import CutFace from '../../../src/screens/log/cut/CutFace.tsx';
import type { House } from '../../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { fakeHouseLog } from '../../fakes/house-log.ts';
import { makeMemoryStore } from '../../fakes/memory-store.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { bakedYear } from '../../machines/support/baked-year.ts';
import { tap, turnedClock } from '../parts/touching.ts';

vi.setConfig({ testTimeout: 30_000 });

let rows: readonly LogRecord[] = [];
beforeAll(() => {
  rows = bakedYear({ bakes: 3, seed: 2, leftOpen: false });
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

interface AtCut {
  readonly house: House;
  readonly start: string;
  readonly said: string[];
  readonly backs: () => number;
  press(name: RegExp): Promise<void>;
  answer(...names: readonly RegExp[]): Promise<void>;
}

/** The page of the cut loaf of one bake: the one that nobody has cut yet, unless `kept`. */
async function atCut(which: 'fresh' | 'kept' = 'fresh'): Promise<AtCut> {
  serveFormulas();
  const at = rows.at(-1)!.fact.at + 60_000;
  const world = makeFakeWorld({ store: makeMemoryStore(rows), at });
  const { house: real } = await openBaking(world);
  const said: string[] = [];
  let backs = 0;
  const house: House = { ...real, say: (words) => void (words !== '' && said.push(words)) };
  const start = rows.find(
    ({ fact }) => fact.kind === 'start' && (cutOf(rows, fact.id) !== null) === (which === 'kept'),
  )!.fact.id;
  const clock = turnedClock();
  render(() => (
    <PressGround now={clock}>
      <CutFace
        house={house}
        log={fakeHouseLog()}
        start={start}
        onOpen={() => undefined}
        onBack={() => void (backs += 1)}
      />
    </PressGround>
  ));
  const press = async (name: RegExp): Promise<void> => {
    const button = (await screen.findAllByRole('button', { name })).at(-1)!;
    clock.at += 1_100;
    tap(button);
    await Promise.resolve();
  };
  return {
    ...{ house, start, said, press },
    backs: () => backs,
    async answer(...names) {
      for (const name of names) await press(name);
    },
  };
}
const headline = (): string => screen.getByRole('heading', { level: 1 }).textContent;
const lastCut = (at: AtCut) => cutOf(at.house.records(), at.start);

describe('a cut loaf', () => {
  it('is read by three looks at most, and kept by the slab as one fact', async () => {
    const at = await atCut();
    expect(headline()).toBe('Look at the crumb');
    await at.press(/^Tight/);
    for (let n = 0; n < 3 && !screen.queryByRole('button', { name: /^Keep it/ }); n += 1) {
      await at.press(/^(Burst at the side|Under the crust|Tight or gummy|Not very sour|Golden)/);
    }
    expect(headline()).toMatch(/^(Likely|May be): /);
    expect(screen.getByText('Next time')).toBeTruthy();
    const before = at.house.records().length;
    await at.press(/^Keep it/);
    await vi.waitFor(() => expect(at.backs()).toBe(1));
    expect(at.house.records()).toHaveLength(before + 1);
    const cut = lastCut(at)!;
    expect(cut.answers.crumb).toBe('tight');
    expect(cut.read).toMatchObject({ says: 'causes', model: 'loaf-1' });
    expect(cut.read.change).not.toBeNull();
    expect(cut.read.causes.length).toBeLessThanOrEqual(2);
  });

  it('says each question and what came of it', async () => {
    const at = await atCut();
    await vi.waitFor(() => expect(at.said).toEqual(['Look at the crumb']));
    await at.press(/^Tight/);
    const second = headline();
    expect(at.said.at(-1)).toBe(second);
    await at.press(/^Say that again/);
    expect(at.said.slice(-2)).toEqual([second, second]);
    for (let n = 0; n < 2 && !screen.queryByRole('button', { name: /^Keep it/ }); n += 1)
      await at.press(/^(Burst at the side|Under the crust|Tight or gummy|Not very sour|Golden)/);
    expect(at.said.at(-1)).toMatch(/^(Likely|May be) .*\. .*\.$/);
  });

  it('names no cause where nobody was sure, and is kept so', async () => {
    const at = await atCut();
    await at.answer(/^Not sure/, /^Not sure/, /^Not sure/);
    expect(headline()).toBe('Too little to go by');
    expect(screen.queryByText('Next time')).toBeNull();
    expect(screen.queryByRole('button', { name: /^What to do/ })).toBeNull();
    await at.press(/^Keep it/);
    await vi.waitFor(() => expect(lastCut(at)?.read).toMatchObject({ says: 'look', causes: [] }));
  });

  it('changes an answer with one press back, which shows what it was', async () => {
    const at = await atCut();
    expect(screen.queryByRole('button', { name: /^The answer before/ })).toBeNull();
    await at.press(/^Gummy/);
    expect(headline()).not.toBe('Look at the crumb');
    await at.press(/^The answer before/);
    expect(headline()).toBe('Look at the crumb');
    expect(screen.getByRole('button', { name: /^Gummy/ }).getAttribute('aria-pressed')).toBe(
      'true',
    );
    await at.answer(/^Even/);
    for (let n = 0; n < 2 && !screen.queryByRole('button', { name: /^Keep it/ }); n += 1)
      await at.press(/^(Tall|None that stand out|Like the rest|Golden|Not very sour)/);
    await at.press(/^Keep it/);
    await vi.waitFor(() => expect(lastCut(at)?.answers.crumb).toBe('even'));
  });

  it('tells what to do about what was seen, and says its caution', async () => {
    const at = await atCut();
    await at.press(/^Gummy/);
    for (let n = 0; n < 2 && !screen.queryByRole('button', { name: /^Keep it/ }); n += 1)
      await at.press(/^(Not sure)/);
    await at.press(/^What to do/);
    const sheet = within(screen.getByRole('dialog'));
    expect(sheet.getByRole('heading', { name: 'Gummy crumb' })).toBeTruthy();
    expect(sheet.getByText(/10 minutes more in the oven/)).toBeTruthy();
    expect(sheet.getByText(/^Bake to 93\s°C and golden/)).toBeTruthy();
    expect(sheet.getByText('Hot iron: dry mitts, both hands, face back.')).toBeTruthy();
    expect(at.said.at(-1)).toBe('Hot iron: dry mitts, both hands, face back.');
    await at.press(/^Back to the loaf/);
    expect(screen.queryByRole('dialog')).toBeNull();
  });

  it('shows what was kept, and is looked at again beside it', async () => {
    const at = await atCut('kept');
    const was = lastCut(at)!;
    expect(screen.getByText(/^Looked at on /)).toBeTruthy();
    expect(screen.queryByRole('button', { name: /^Keep it/ })).toBeNull();
    await at.press(/^Look again/);
    expect(headline()).toBe('Look at the crumb');
    await at.answer(/^Not sure/, /^Not sure/, /^Not sure/);
    await at.press(/^Keep it/);
    await vi.waitFor(() => expect(lastCut(at)!.id).not.toBe(was.id));
    expect(at.house.records().some(({ fact }) => fact.id === was.id)).toBe(true);
  });

  it.each([
    [true, 5],
    [false, 4],
  ])('asks for holes round a filling where there is one: %s', async (filled, tiles) => {
    serveFormulas();
    const { house } = await openBaking(makeFakeWorld());
    render(() => (
      <AskFace
        house={house}
        sign="holes"
        filled={filled}
        chosen={undefined}
        onChoose={() => undefined}
        onBefore={null}
        back="Lane wheat"
        onBack={() => undefined}
      />
    ));
    const group = within(screen.getByRole('group', { name: 'Look where holes are' }));
    expect(group.getAllByRole('button')).toHaveLength(tiles);
    expect(group.queryByRole('button', { name: /^Round the filling/ }) !== null).toBe(filled);
  });

  it('is none of a bake that is in no log', async () => {
    serveFormulas();
    const { house } = await openBaking(makeFakeWorld());
    render(() => (
      <CutFace
        house={house}
        log={fakeHouseLog()}
        start="f1"
        onOpen={() => undefined}
        onBack={() => undefined}
      />
    ));
    expect(headline()).toBe('This bake is not in the log any more.');
  });
});
