import { cleanup, render, screen } from '@solidjs/testing-library';
import type { JSX } from 'solid-js';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { NOTHING_SAID } from '../../../src/core/log/about.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { logPlots as words } from '../../../src/core/speech/words/log-plots.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import type { House } from '../../../src/screens/house.ts';
import CompareFace from '../../../src/screens/log/plots/CompareFace.tsx';
import PlotsFace from '../../../src/screens/log/plots/PlotsFace.tsx';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { fakeHouseLog } from '../../fakes/house-log.ts';
import { loadedLater } from '../../fakes/loaded-later.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { bakedYear } from '../../machines/support/baked-year.ts';
import { tap, turnedClock } from '../parts/touching.ts';

const clock = turnedClock();
let year: readonly LogRecord[];
let house: House;
beforeAll(() => {
  year = bakedYear({ bakes: 12, seed: 5, leftOpen: false });
}, 60_000);
beforeEach(async () => {
  serveFormulas();
  ({ house } = await openBaking(makeFakeWorld()));
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

const startsOf = (records: readonly LogRecord[]) =>
  records.flatMap(({ fact }) => (fact.kind === 'start' ? [fact] : []));
const show = (page: () => JSX.Element): void =>
  void render(() => <PressGround now={clock}>{page()}</PressGround>);
const faceProps = (records: readonly LogRecord[], hidden: readonly string[] = []) => {
  const said = vi.fn<(text: string) => void>();
  const onBack = vi.fn<() => void>();
  return {
    said,
    onBack,
    props: {
      house: { ...house, records: () => records, say: said },
      log: fakeHouseLog({
        abouts: Object.fromEntries(
          hidden.map((start) => [start, { ...NOTHING_SAID, hidden: true, at: 0 }]),
        ),
      }),
      onOpen: () => undefined,
      onBack,
    },
  };
};
const openPlots = (records: readonly LogRecord[], hidden?: readonly string[]) => {
  const { props, ...spies } = faceProps(records, hidden);
  show(() => <PlotsFace {...props} />);
  return spies;
};
const read = (): Promise<void> =>
  vi.waitFor(() => expect(shown()).toMatch(/first forecast|Too few|No first forecast/), {
    timeout: 20_000,
  });
const press = (name: RegExp): void => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
};
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
const shown = (): string => document.body.textContent?.replace(/\s/g, ' ') ?? '';
const chart = () => document.querySelector('figure.drawn');
const rows = (): number => screen.getAllByRole('row').length - 1;

describe('plots of my bakes', { timeout: 60_000 }, () => {
  it('stand at once, and say what forecasts were worth once the log is read', async () => {
    openPlots(year);
    expect(headline()).toBe('Plots of my bakes');
    expect(shown()).toContain('0 of 12 bakes are read.');
    await read();
    expect(shown()).toMatch(/In the last 10 bakes the first forecast missed by .+ on average\./);
  });

  it('are each a chart that ears hear, a table of the same, and one press that says it', async () => {
    const { said } = openPlots(year);
    await read();
    for (const name of ['ended', 'vigour', 'forecast'] as const) {
      press(new RegExp(`^${words[name].title}`));
      const alt = chart()!.getAttribute('aria-label')!;
      press(/^Say this chart/);
      expect(said.mock.calls.at(-1)).toEqual([alt]);
      press(/^As a table/);
      expect(rows()).toBe(4);
      press(/^Next rows/);
      expect(headline()).toMatch(/, 2 of [23]$/);
      press(/^As a chart/);
      expect(chart()).not.toBeNull();
      press(/^That’s it/);
    }
  });

  it('are of one bread at one press', async () => {
    openPlots(year);
    await read();
    press(/^Bread\s*All breads/);
    press(/^Lane wheat/);
    press(/^Starter and seasons/);
    expect(headline()).toBe('Lane wheat');
    press(/^As a table/);
    const bakes = startsOf(year).filter(({ recipe }) => recipe.formula.name === 'Lane wheat');
    expect(rows()).toBe(Math.min(4, bakes.length));
    expect(shown()).not.toContain('Barley tin');
    press(/^That’s it/);
    press(/^Bread\s*Lane wheat/);
    press(/^All breads/);
    expect(screen.getByRole('button', { name: /^Bread\s*All breads/ })).toBeTruthy();
  });

  it('leave out what was hidden', async () => {
    openPlots(
      year,
      startsOf(year)
        .slice(0, 9)
        .map(({ id }) => id),
    );
    await read();
    expect(shown()).toContain('Too few bakes to tell');
  });

  it('are kind where nothing was baked, or one bake with nothing told', async () => {
    const { onBack } = openPlots([]);
    expect([headline(), shown()]).toEqual([words.none, expect.stringContaining(words.noneDetail)]);
    expect(screen.queryByRole('button', { name: /Bread/ })).toBeNull();
    press(/^That’s it/);
    expect(onBack).toHaveBeenCalledOnce();
    cleanup();
    openPlots(year.slice(0, 2));
    await read();
    press(/^Rise and cold/);
    expect(shown()).toContain(words.ended.none);
    expect(screen.queryByRole('button', { name: /table/ })).toBeNull();
  });
});

describe('bakes of one bread side by side', { timeout: 60_000 }, () => {
  const chosen = () => startsOf(year).find(({ recipe }) => recipe.formula.name === 'Lane wheat')!;

  it('are of its formula alone, with their table, and said', async () => {
    const { props, said, onBack } = faceProps(year);
    show(() => <CompareFace {...props} start={chosen().id} />);
    await vi.waitFor(() => expect(chart()).not.toBeNull(), { timeout: 20_000 });
    expect(headline()).toBe('Lane wheat');
    press(/^Say this chart/);
    expect(said.mock.calls[0]![0]).toContain('The chosen one had risen');
    press(/^As a table/);
    const same = startsOf(year).filter(
      ({ recipe }) => recipe.formula.id === chosen().recipe.formula.id,
    );
    expect(rows()).toBe(same.length);
    press(/^That’s it/);
    expect(onBack).toHaveBeenCalledOnce();
  });

  it('tell that a bake is gone', () => {
    const { props } = faceProps(year);
    show(() => <CompareFace {...props} start="nobody" />);
    expect(shown()).toContain('This bake is not in the log any more.');
  });
});
