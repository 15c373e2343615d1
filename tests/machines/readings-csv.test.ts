import { describe, expect, it } from 'vitest';
import { readingsCsv } from '../../src/core/log/readings-csv.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import { Hand } from './support/hand.ts';
import { RECIPE } from './support/recipe.ts';

const AS = { zone: 'Europe/Berlin', units: { heat: 'C', weight: 'g' } } as const;
const SATURDAY = Date.UTC(2031, 4, 3, 6, 5);
const HEADS =
  'Bread,Version,Bake begun,Taken,Hours since,Reading,Number,Unit,Seen,By,Odd,Said before';
const rowsOf = (hand: Hand, as: Parameters<typeof readingsCsv>[1] = AS): string[] =>
  readingsCsv(hand.records, as).replace('\uFEFF', '').trimEnd().split('\r\n');
const named = (name: string): Recipe => ({ ...RECIPE, formula: { ...RECIPE.formula, name } });

describe('readings as a sheet', () => {
  it('are its heads alone where nothing was read', () => {
    const hand = new Hand();
    hand.start('a');
    expect(rowsOf(hand)).toEqual([HEADS]);
  });

  it('are a row each, by the wall, with what was odd, corrected and seen', () => {
    const hand = new Hand({ now: SATURDAY });
    hand.start('a', 'bulk.proving');
    hand.turn(90);
    hand.dough('a', 52);
    const target = hand.records.at(-1)!.fact.id;
    hand.do({ kind: 'correct', target, reading: { what: 'doughTemperature', celsius: 25.1 } });
    hand.measure('a', { what: 'edge', edge: 'domed', bubbles: 'many' });
    hand.measure('a', { what: 'rise', percent: 250, of: 'dough', odd: true }, 'probe');
    hand.measure('a', { what: 'rise', percent: 10, of: 'dough' });
    hand.takeBack();
    const begin = 'Cherry and hazelnut,1,2031-05-03 08:05,2031-05-03 09:35,1.5';
    expect(rowsOf(hand).slice(1)).toEqual([
      `${begin},Dough temperature,25.1,°C,,Hand,,52 °C`,
      `${begin},Edge and bubbles,,,Domed · Many,Hand,,`,
      `${begin},Dough rise,250,%,,Probe,Yes,`,
    ]);
  });

  it('are in the units of the baker', () => {
    const hand = new Hand();
    hand.start('a', 'bulk.proving');
    hand.dough('a', 25);
    hand.measure('a', { what: 'weight', grams: 900, of: 'dough' });
    const rows = rowsOf(hand, { ...AS, units: { heat: 'F', weight: 'oz' } });
    expect(rows[1]).toContain(',77,°F,');
    expect(rows[2]).toContain(',31.747,oz,');
  });

  it('are of the bakes that are wanted, each under the bread it was', () => {
    const hand = new Hand();
    hand.start('a', 'bulk.proving');
    hand.start('b', 'bulk.proving', ['b1'], named('Lane wheat'));
    hand.dough('a', 24);
    hand.dough('b', 25);
    const firsts = (rows: string[]) => rows.slice(1).map((row) => row.split(',')[0]);
    expect(firsts(rowsOf(hand))).toEqual(['Cherry and hazelnut', 'Lane wheat']);
    expect(firsts(rowsOf(hand, { ...AS, bakes: new Set(['b']) }))).toEqual(['Lane wheat']);
  });

  it.each(['=1+1', '+1', '-1', '@sum', '\tx'])('are nothing that is reckoned: %j', (name) => {
    const hand = new Hand();
    hand.start('a', 'bulk.proving', ['a1'], named(name));
    hand.dough('a', 24);
    // Quoted where it holds what may part cells, as a tab does.
    expect(rowsOf(hand)[1]!.replaceAll('"', '').startsWith(`'${name},`)).toBe(true);
  });

  it('quote what has commas, quotes or lines of its own', () => {
    const hand = new Hand();
    hand.start('a', 'bulk.proving', ['a1'], named('Rye, "dark"'));
    hand.dough('a', 24);
    expect(rowsOf(hand)[1]!.startsWith('"Rye, ""dark""",1,')).toBe(true);
  });
});
