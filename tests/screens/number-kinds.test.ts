import { describe, expect, it } from 'vitest';
import { besideKeys, numberKinds } from '../../src/screens/bench/readings/number-kinds.ts';

const METRIC = { heat: 'C', weight: 'g' } as const;
const offered = (text: string, stage: string, units: typeof METRIC | { heat: 'F'; weight: 'oz' }) =>
  numberKinds(text, stage, units).map(({ slot, typed }) => [slot, typed]);

/** Every kind of number with the longest that a home kitchen measures of it. */
const LONGEST = [
  ['doughTemperature', '245'],
  ['kitchenTemperature', '215'],
  ['coreTemperature', '965'],
  ['rise.dough', '120'],
  ['rise.levain', '220'],
  ['weight.dough', '1840'],
  ['weight.piece', '1205'],
  ['weight.loaf', '1150'],
] as const;

/** The press that opens the page, and the one that says what it was. */
const AROUND = 2;

describe('what a number that was keyed first may be', () => {
  it.each(['levain.ripening', 'bulk.proving', 'bulk.between', 'proof.retard', 'cool.cooling'])(
    'is at %s every kind there is, within six presses',
    (stage) => {
      for (const [slot, text] of LONGEST) {
        expect(numberKinds(text, stage, METRIC).map((kind) => kind.slot)).toContain(slot);
        expect(text.length + AROUND).toBeLessThanOrEqual(6);
      }
    },
  );

  it('sets the point as the keypad of that kind does, and never makes a temperature of a weight', () => {
    expect(offered('245', 'bulk.proving', METRIC).slice(0, 2)).toEqual([
      ['doughTemperature', 24.5],
      ['kitchenTemperature', 24.5],
    ]);
    expect(offered('1840', 'mix.first', METRIC)).toEqual([
      ['weight.dough', 1840],
      ['weight.piece', 1840],
      ['weight.loaf', 1840],
    ]);
    expect(offered('765', 'bulk.proving', { heat: 'F', weight: 'oz' })).toContainEqual([
      'doughTemperature',
      76.5,
    ]);
  });

  it('is kilograms with a point, and ounces with one where whole ones would be odd', () => {
    expect(offered('12.3', 'mix.first', METRIC)).toContainEqual(['weight.dough', 12_300]);
    expect(offered('1.84', 'mix.first', METRIC)).toContainEqual(['weight.dough', 1840]);
    expect(offered('911.5', 'shape.divide', METRIC)).toContainEqual(['weight.piece', 911.5]);
    expect(offered('425', 'shape.divide', { heat: 'F', weight: 'oz' })).toContainEqual([
      'weight.piece',
      42.5,
    ]);
    expect(offered('42', 'shape.divide', { heat: 'F', weight: 'oz' })).toContainEqual([
      'weight.piece',
      42,
    ]);
  });

  it('stands beside the keys whole, or as the likeliest and a press on to the rest', () => {
    const all = numberKinds('215', 'read.list', METRIC);
    expect(all.length).toBeGreaterThan(8);
    const [first, rest] = [besideKeys(all, false), besideKeys(all, true)];
    expect(first).toMatchObject({ further: true, shown: { length: 7 } });
    expect(first.shown[0]?.slot).toBe('kitchenTemperature');
    expect(rest).toMatchObject({ further: false });
    expect(rest.shown.length).toBeLessThanOrEqual(8);
    expect([...first.shown, ...rest.shown]).toEqual(all);
    const few = numberKinds('1840', 'bulk.proving', METRIC);
    expect(besideKeys(few, false)).toEqual({ shown: few, further: false });
  });

  it('asks what is odd again only where it makes sense, after what is usual', () => {
    const slots = offered('41', 'bulk.proving', METRIC).map(([slot]) => slot);
    expect(slots).toEqual([
      'rise.dough',
      'coreTemperature',
      'rise.levain',
      'doughTemperature',
      'kitchenTemperature',
      'fillingTemperature',
    ]);
    expect(offered('41', 'cool.cooling', METRIC).map(([slot]) => slot)).not.toContain(
      'doughTemperature',
    );
  });

  it('is nothing where no reading has such a number', () => {
    expect(offered('', 'bulk.proving', METRIC)).toEqual([]);
    expect(offered('.', 'bulk.proving', METRIC)).toEqual([]);
  });
});
