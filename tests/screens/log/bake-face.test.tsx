import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { NOTHING_SAID } from '../../../src/core/log/about.ts';
import { layClips } from '../../../src/core/speech/clips.ts';
import { DAY, HOUR } from '../../../src/core/units.ts';
import { fakeHouseLog } from '../../fakes/house-log.ts';
import { clipIndex } from '../../core/speech/support/as-spoken.ts';
import { bakedYear } from '../../machines/support/baked-year.ts';
import { Hand } from '../../machines/support/hand.ts';
import { at, walkTo, walkToEnd } from '../../machines/support/onward.ts';
import { ARMED, tap } from '../parts/touching.ts';
import { showBake } from './show-bake.tsx';

afterEach(cleanup);

const FROM = Date.UTC(2031, 4, 2, 6);
const YEAR = bakedYear({ bakes: 14, seed: 3, until: FROM });
const STARTS = YEAR.flatMap(({ fact }) => (fact.kind === 'start' ? [fact] : []));

const firstId = (hand: Hand): string => hand.records[0]!.fact.id;
const press = (clock: { at: number }, label: string): void => {
  clock.at += ARMED + 700;
  tap(screen.getByRole('button', { name: label }));
};
const rows = (): string[][] =>
  [...document.querySelectorAll('.bake-table tbody tr')].map((row) =>
    [...row.children].map((cell) => cell.textContent!.replaceAll('\u00a0', ' ')),
  );
const row = (what: string): string[] | undefined => rows().find(([first]) => first === what);
/** On to the last of its pages. */
const toLast = (clock: { at: number }): void => {
  for (const label of ['Readings', 'Calls', 'Weights', 'Loads'])
    if (screen.queryByRole('button', { name: label })) press(clock, label);
};
const headline = (): string => document.querySelector('h1')!.textContent!;
const detail = (): string =>
  document.querySelector('.act-detail')!.textContent!.replaceAll('\u00a0', ' ');
/** Plain waits in local time of the test's zone are told by hour and day. */
const hourOf = (instant: number): string =>
  new Date(instant).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });

describe('the first page of a bake', () => {
  it('tells bread, loaves, how it ended, its note, its tags and its cut loaf', async () => {
    const hand = new Hand({ now: FROM });
    hand.start('a', 'mix.first');
    walkTo(hand, 'a', 'cool.note');
    hand.press('a', 'noted', { text: 'The ear is fine.' });
    hand.do({
      kind: 'cut',
      target: 'f1',
      answers: { holes: 'underCrust', spread: 'spread', sour: 'sour' },
      read: {
        says: 'causes',
        causes: [{ cause: 'over', sure: 'likely' }],
        change: 'shorterBulk',
        because: [],
        model: 'test',
      },
    });
    const log = fakeHouseLog({
      abouts: { f1: { ...NOTHING_SAID, tags: ['best', 'harbour'], note: 'Sold out.', at: 0 } },
    });
    await showBake('bake', hand.records, 'f1', log);
    expect(headline()).toBe('Cherry and hazelnut');
    expect(detail()).toContain('Handed over ');
    expect(row('Loaves')![1]).toBe('2 begun, 2 baked');
    expect(row('Note')![1]).toBe('The ear is fine.; Sold out.');
    expect(row('Tags')![1]).toBe('Best so far, harbour');
    expect(row('Cut loaf')![1]).toBe('Likely: too much rise. End the bulk a little sooner.');
  });

  it('is a sentence where the bake is in no log any more', async () => {
    const hand = at(new Hand({ now: FROM }), 'mix.rest');
    await showBake('bake', hand.records, 'gone');
    expect(detail()).toBe('This bake is not in the log any more.');
  });

  it('leads to what hangs on it, and back', async () => {
    const hand = at(new Hand({ now: FROM }), 'bulk.look');
    const { clock, opened, backs } = await showBake('bake', hand.records, firstId(hand));
    for (const label of ['Cut loaf', 'Album', 'Side by side', 'Share it']) press(clock, label);
    expect(opened).toEqual(
      (['cut', 'keepsakes', 'compare', 'share'] as const).map((face) => ({
        at: face,
        start: 'f1',
      })),
    );
    expect(screen.getAllByRole('button').length).toBeLessThanOrEqual(7);
    clock.at += 1_100;
    tap(document.querySelector('.slab')!);
    expect(backs()).toBe(1);
  });
});

describe('the times of a bake', () => {
  it('stand planned against real, with the minutes apart', async () => {
    const hand = at(new Hand({ now: FROM }), 'mix.rest');
    const end = hand.deadline('a')!;
    hand.turnTo(end + 12 * 60_000);
    walkTo(hand, 'a', 'mix.work');
    const { clock } = await showBake('bake', hand.records, firstId(hand));
    press(clock, 'Times');
    expect(row('Salt')).toEqual(['Salt', hourOf(end), hourOf(end), 'on time']);
    expect(document.querySelector('.bake-more')!.textContent).toMatch(/^Planned as each wait/);
  });

  it('say how much later a hand was', async () => {
    const hand = at(new Hand({ now: FROM }), 'bulk.look');
    const likely = hand.now;
    hand.turn(25);
    hand.press('a', 'bulkReady');
    const { clock } = await showBake('bake', hand.records, firstId(hand));
    press(clock, 'Times');
    expect(row('Divide')![2]).toBe(hourOf(likely + 25 * 60_000));
    expect(row('Divide')![3]).toMatch(/^(–|.* late|.* early|on time)$/);
    expect(row('First mix')![3]).toBe('–');
  });

  it('name the day where there are several, and the date where a weekday comes twice', async () => {
    const hand = new Hand({ now: FROM });
    hand.start('a', 'proof.retard');
    hand.turn(20 * 60);
    hand.heard('a');
    const { clock } = await showBake('bake', hand.records, 'f1');
    expect(row('Begun')![1]).toMatch(/2031, \d\d:\d\d$/);
    press(clock, 'Times');
    expect(row('In the fridge')![2]).toMatch(/^[A-Z][a-z]{2} \d\d:\d\d$/);
    cleanup();
    hand.turnTo(hand.now + 31 * DAY);
    hand.press('a', 'ended');
    const later = await showBake('bake', hand.records, 'f1');
    expect(detail()).toMatch(/^Ended early .*2031/);
    expect(row('Begun')![1]).toMatch(/, took 32 days$/);
    press(later.clock, 'Times');
    expect(row('In the fridge')![2]).toMatch(/2031, \d\d:\d\d$/);
  });
});

describe('a bake that went otherwise', () => {
  it('left open, without a reading: says so, and draws what is believed', async () => {
    const hand = new Hand({ now: FROM });
    hand.start('a', 'proof.retard');
    hand.turnTo(hand.now + 31 * DAY);
    const { clock } = await showBake('bake', hand.records, 'f1');
    expect(detail()).toMatch(/^It runs still, begun /);
    expect(row('Begun')![1]).not.toContain('took');
    press(clock, 'Times');
    expect(rows()[0]![0]).toBe('In the fridge');
    expect(screen.queryByRole('button', { name: 'Readings' })).toBeNull();
  });

  it('with corrections, odd values and probes: each is marked', async () => {
    const hand = at(new Hand({ now: FROM }), 'mix.temperature');
    hand.dough('a', 52);
    const target = hand.records.at(-1)!.fact.id;
    hand.do({ kind: 'correct', target, reading: { what: 'doughTemperature', celsius: 25 } });
    hand.turn(10);
    hand.measure('a', { what: 'doughTemperature', celsius: 41, odd: true }, 'probe');
    const { clock } = await showBake('bake', hand.records, firstId(hand));
    press(clock, 'Times');
    press(clock, 'Readings');
    const doughs = rows().filter(([, what]) => what === 'Dough temperature');
    expect(doughs.map(([, , ...rest]) => rest)).toEqual([
      ['25 °C', 'was 52 °C'],
      ['41 °C', 'odd, by probe'],
    ]);
  });

  it('ended early: says at what', async () => {
    const hand = at(new Hand({ now: FROM }), 'proof.counter');
    hand.press('a', 'ended');
    await showBake('bake', hand.records, firstId(hand));
    expect(detail()).toMatch(/^Ended early .*, at: On the counter\.$/);
  });

  it('whole, early, unread, flat or open: every page has rows, under its own name', async () => {
    for (const { id } of [1, 4, 7, 9, 12].map((n) => STARTS[n]!)) {
      const { clock } = await showBake('bake', YEAR, id);
      expect(rows().length).toBeGreaterThan(3);
      press(clock, 'Times');
      for (;;) {
        expect(rows().length).toBeGreaterThan(0);
        const next = ['Readings', 'Calls', 'Weights', 'Loads'].find((label) =>
          screen.queryByRole('button', { name: label }),
        );
        if (!next) break;
        press(clock, next);
        expect(headline()).toBe(next);
      }
      cleanup();
    }
  }, 60_000);
});

describe('what is said of a bake', () => {
  it('has a clip for every word but what somebody wrote', async () => {
    const has = (id: string): boolean => clipIndex.has(id);
    for (const { id, recipe } of [0, 1, 2, 9].map((n) => STARTS[n]!)) {
      const { clock, said } = await showBake('bake', YEAR, id);
      for (const label of ['Times', 'Readings', 'Calls', 'Weights', 'Loads']) {
        if (!screen.queryByRole('button', { name: label })) continue;
        press(clock, label);
        press(clock, 'Say this page');
      }
      for (const words of said) {
        const { missing } = layClips(words.replace(recipe.formula.name, ''), has);
        expect(missing, words).toEqual([]);
      }
      expect(said.filter(Boolean).length).toBeGreaterThan(2);
      cleanup();
    }
  }, 60_000);

  it('is hushed by turning on', async () => {
    const { clock, said } = await showBake('bake', YEAR, STARTS[0]!.id);
    press(clock, 'Times');
    press(clock, 'Say this page');
    expect(said.at(-1)).toMatch(/Read through at /);
    press(clock, 'Readings');
    expect(said.at(-1)).toBe('');
  });
});

describe('the chart of a bake', () => {
  it('stands as a table of the same values, and is said', async () => {
    const hand = at(new Hand({ now: FROM }), 'mix.temperature');
    hand.dough('a', 25);
    hand.turn(30);
    hand.dough('a', 24);
    const { clock, said } = await showBake('bake', hand.records, firstId(hand));
    press(clock, 'Chart');
    press(clock, 'As a table');
    const doughs = rows().filter(([, what]) => what === 'Dough temperature');
    expect(doughs.map(([, , value]) => value)).toEqual(['25 °C', '24 °C']);
    press(clock, 'Say this chart');
    expect(said.at(-1)).toContain('Dough temperature: twenty-four degrees to twenty-five degrees.');
    press(clock, 'As a chart');
    const figure = document.querySelector('figure')!;
    expect(figure.getAttribute('aria-label')).toBe(said.at(-1));
  });

  it('turns to what else can be drawn', async () => {
    const { clock } = await showBake('bake', YEAR, STARTS[0]!.id);
    press(clock, 'Chart');
    press(clock, 'As a table');
    const heads = (): string =>
      rows()
        .map(([, what]) => what)
        .join();
    expect(heads()).toContain('Dough temperature');
    press(clock, 'Next chart');
    expect(heads()).not.toContain('Dough temperature');
    expect(heads()).toContain('Dough rise');
  });
});

describe('a bake on the list', () => {
  it('is taken off it, and put back', async () => {
    const hand = walkToEnd(at(new Hand({ now: FROM - HOUR }), 'bulk.look'));
    const log = fakeHouseLog();
    const { clock } = await showBake('bake', hand.records, 'f1', log);
    press(clock, 'Times');
    toLast(clock);
    press(clock, 'Take off the list');
    await expect.poll(() => log.abouts()['f1']?.hidden).toBe(true);
    press(clock, 'Back on the list');
    await expect.poll(() => log.abouts()['f1']?.hidden).toBe(false);
  });

  it('stays there where that is not written, and says so', async () => {
    const hand = at(new Hand({ now: FROM }), 'bulk.look');
    const log = fakeHouseLog({}, () => 'full');
    const { clock } = await showBake('bake', hand.records, 'f1', log);
    press(clock, 'Times');
    toLast(clock);
    press(clock, 'Take off the list');
    await expect.poll(detail).toBe('That was not written. Try again.');
    expect(screen.getByRole('button', { name: 'Take off the list' })).toBeTruthy();
  });
});
