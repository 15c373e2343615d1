import { describe, expect, it } from 'vitest';
import { askInput } from '../../../../src/core/day/laid/ask-input.ts';
import type { Span } from '../../../../src/core/day/plan/types.ts';
import { EQUIPMENT } from '../../../../src/core/kitchen/equipment.ts';
import { HOUR, MINUTE } from '../../../../src/core/units.ts';
import { RECIPE, TIN } from '../../../machines/support/recipe.ts';
import {
  askedBake,
  askWorld,
  dayAsk,
  fitting,
  inputOf,
  SATURDAY_NOON,
  THURSDAY,
} from '../../../fakes/laid-day.ts';

const at = (ask = dayAsk(), world = askWorld()): Record<string, number> =>
  Object.fromEntries(fitting(ask, world).touches.map((touch) => [touch.name, touch.at]));

describe('a day that is asked, as the planner’s question', () => {
  it('lays a Saturday’s bread from Thursday evening, asleep at night, ready at noon', () => {
    const { touches, ready } = fitting(dayAsk(), askWorld());
    expect(touches.map(({ name }) => name).slice(0, 3)).toEqual([
      'feed levain',
      'mix',
      'salt and water',
    ]);
    expect(ready).toEqual([{ batch: 'Cherry and hazelnut', at: SATURDAY_NOON }]);
    const berlin = touches.map((touch) => new Date(touch.at + 2 * HOUR));
    const minute = berlin.map((wall) => wall.getUTCHours() * 60 + wall.getUTCMinutes());
    expect(minute.every((m) => m >= 6 * 60 + 30 && m < 22 * 60 + 30)).toBe(true);
  });

  it('blocks the nights by the wall’s calendar, and what was said besides', () => {
    const away: Span = { name: 'at school', from: THURSDAY + HOUR, to: THURSDAY + 2 * HOUR };
    const { blocked } = inputOf(dayAsk({ away: [away] }), askWorld());
    expect(blocked[0]).toEqual(away);
    expect(blocked[1]).toEqual({
      name: 'asleep',
      from: Date.UTC(2031, 4, 1, 20, 30),
      to: Date.UTC(2031, 4, 2, 4, 30),
      canBend: true,
    });
  });

  it('keeps to the wall where kitchen time runs an hour ahead of it: the clock was set back', () => {
    const ahead = HOUR;
    const now = THURSDAY + ahead;
    const ask = dayAsk({ bakes: [askedBake({ due: SATURDAY_NOON + ahead })] });
    const set = at(ask, askWorld({ now, ahead }));
    const plain = at();
    expect(set).toEqual(
      Object.fromEntries(Object.entries(plain).map(([name, t]) => [name, t + ahead])),
    );
  });

  it('takes what the kitchen holds, and enough of what nobody counted', () => {
    const { kitchen, batches } = inputOf(dayAsk(), askWorld());
    expect(kitchen).toMatchObject({ fridgePlaces: 2, bowls: 1, pots: 1, temperatureC: 22 });
    expect(kitchen.ovenTimer).toBeUndefined();
    expect(batches[0]!.steps.filter(({ name }) => name.startsWith('load '))).toHaveLength(2);
    const equipment = {
      ...EQUIPMENT,
      pots: [EQUIPMENT.pots[0]!, EQUIPMENT.pots[0]!],
      oven: { ...EQUIPMENT.oven, timer: true },
      fridge: { celsius: 4, holds: 6 },
      bowls: { count: 3, kilos: 1, litres: null },
    };
    const said = inputOf(dayAsk(), askWorld({ equipment }));
    expect(said.kitchen).toMatchObject({ fridgePlaces: 6, bowls: 3, pots: 2, ovenTimer: true });
    expect(said.batches[0]!.steps.filter(({ name }) => name.startsWith('load '))).toHaveLength(1);
    expect(said.batches[0]!.steps.find(({ name }) => name === 'mix')!.uses).toEqual({ bowls: 2 });
  });

  it('takes each bake’s own vessel for its loads', () => {
    const tin = { ...TIN, loaves: 4 };
    const ask = dayAsk({ bakes: [askedBake(), askedBake({ name: 'barley', recipe: tin })] });
    const [, barley] = inputOf(ask, askWorld()).batches;
    expect(barley!.steps.filter(({ name }) => name.startsWith('load '))).toHaveLength(2);
  });

  it('holds a touch where it was pinned, on a slot, and forgets a pin of none', () => {
    const mix = at()['mix']! + 20 * MINUTE;
    const ask = dayAsk({ bakes: [askedBake({ pins: { mix: mix + 1234, 'load 9': mix } })] });
    expect(at(ask)['mix']).toBe(mix);
    expect(inputOf(ask, askWorld()).batches[0]!.fixed).toEqual({ mix });
  });

  it('begins no sooner than now, and ends as soon as is good where nothing is due', () => {
    const bake = askedBake({ due: null, startAt: THURSDAY - HOUR });
    expect(at(dayAsk({ bakes: [bake] }))['feed levain']).toBe(THURSDAY + 2 * MINUTE);
  });

  it('takes a change that was agreed to', () => {
    const ask = dayAsk({
      taken: [
        { change: 'dropTouch', batch: 'Cherry and hazelnut', touch: 'fold 2' },
        { change: 'dropTouch', batch: 'Cherry and hazelnut', touch: 'oven on' },
      ],
    });
    expect(Object.keys(at(ask))).not.toContain('fold 2');
    const oven = fitting(ask, askWorld()).touches.find(({ name }) => name === 'oven on');
    expect(oven?.hands).toBe(0);
  });
});

describe('an ask that no hour would mend', () => {
  const troubles = (ask = dayAsk(), world = askWorld()) => askInput(ask, world).troubles;

  it('has none to begin with', () => {
    expect(troubles()).toEqual([]);
  });

  it('needs one to three bakes, each with a name and an hour of its own', () => {
    expect(troubles(dayAsk({ bakes: [] }))).toEqual([{ key: 'noBakes' }]);
    const four = ['a', 'b', 'c', 'd'].map((name) => askedBake({ name }));
    expect(troubles(dayAsk({ bakes: four }))).toEqual([{ key: 'tooManyBakes', most: 3 }]);
    const twice = [askedBake({ name: 'a' }), askedBake({ name: 'a' })];
    expect(troubles(dayAsk({ bakes: twice }))).toEqual([{ key: 'sameName', bake: 'a' }]);
    const none = [askedBake({ name: 'a', due: null })];
    expect(troubles(dayAsk({ bakes: none }))).toEqual([{ key: 'noHour', bake: 'a' }]);
  });

  it('tells an absence that ends before it begins', () => {
    const away = [{ name: 'at work', from: THURSDAY + HOUR, to: THURSDAY }];
    expect(troubles(dayAsk({ away }))).toEqual([{ key: 'reversed', ...away[0] }]);
  });

  it('tells a week in which no hand is ever free', () => {
    const all = { weekdays: [0, 1, 2, 3, 4, 5, 6], canBend: true };
    const week = [
      { name: 'asleep', from: 1320, to: 480, ...all },
      { name: 'at work', from: 470, to: 1330, ...all },
    ];
    expect(troubles(dayAsk(), askWorld({ week }))).toEqual([{ key: 'neverFree' }]);
    const whole = [{ name: 'away', from: 0, to: 0, ...all }];
    expect(troubles(dayAsk(), askWorld({ week: whole }))).toEqual([{ key: 'neverFree' }]);
    expect(troubles(dayAsk(), askWorld({ week: [week[0]!] }))).toEqual([]);
  });

  it('tells a fridge and bowls that are too small, and how many loaves they take', () => {
    const recipe = { ...RECIPE, loaves: 40, dough: 36_700 };
    const ask = dayAsk({ bakes: [askedBake({ recipe })] });
    const equipment = {
      ...EQUIPMENT,
      fridge: { celsius: null, holds: 6 },
      bowls: { count: 2, kilos: 3, litres: null },
    };
    expect(troubles(ask, askWorld({ equipment }))).toEqual([
      { key: 'fridgeShort', bake: 'Cherry and hazelnut', needs: 40, has: 6 },
      { key: 'bowlsShort', bake: 'Cherry and hazelnut', needs: 13, has: 2, loaves: 6 },
    ]);
  });

  it('hands back what forbids a perishable filling, and throws nothing', () => {
    const cheese = { id: 'curd', name: 'Curd cheese', pct: 15, keeps: 'perishable' as const };
    const formula = { ...RECIPE.formula, fillings: [{ ...cheese, allergens: ['milk'] }] };
    const ask = dayAsk({ bakes: [askedBake({ recipe: { ...RECIPE, formula } })] });
    expect(troubles(ask)).toMatchObject([
      {
        key: 'filling',
        bake: 'Cherry and hazelnut',
        filling: { key: 'perishableRetarded', wouldDo: ['leaveOut', 'sameDay'] },
      },
    ]);
  });
});
