import { describe, expect, it } from 'vitest';
import type { LookUp } from '../../../../src/core/circle/label/ingredients.ts';
import { makeLabel, type Label, type LabelAsk } from '../../../../src/core/circle/label/label.ts';
import type { Filling, Formula } from '../../../../src/core/formula/formula.ts';
import { shippedFormula } from '../../formula/shipped.ts';

const JUST_ITSELF: LookUp = () => ({ madeOf: [] });

/** Every packet of it read, as its lists stand. */
const answered = (formula: Formula): Formula => ({
  ...formula,
  flours: formula.flours.map((flour) => ({ ...flour, packet: 'read' })),
  fillings: formula.fillings.map((filling) => ({ ...filling, packet: 'read' })),
});
const withFilling = (own: Partial<Filling>): Formula => {
  const formula = answered(shippedFormula('cherry-hazelnut'));
  return { ...formula, fillings: [{ ...formula.fillings[0]!, ...own }] };
};

const asked = (own: Partial<LabelAsk> = {}): LabelAsk => ({
  formula: answered(shippedFormula('cherry-hazelnut')),
  list: 'eu',
  lookUp: JUST_ITSELF,
  grams: null,
  cut: false,
  baked: '3 May 2031',
  days: null,
  lines: [],
  who: null,
  ...own,
});
const labelOf = (own: Partial<LabelAsk> = {}): Label => {
  const { label, wanting } = makeLabel(asked(own));
  if (label === null) throw new Error(JSON.stringify(wanting));
  return label;
};
const starred = ({ ingredients }: Label): string =>
  ingredients.map((run) => (run.apart ? `*${run.text}*` : run.text)).join('');
const wanted = (own: Partial<LabelAsk>): readonly string[] =>
  makeLabel(asked(own)).wanting.map(({ key, values }) => `${key} ${values['name'] ?? ''}`.trim());

describe('a label', () => {
  it('has the ingredients by weight, the levain opened, its allergens set apart', () => {
    expect(starred(labelOf())).toBe(
      'strong *wheat* flour, water, dried cherries, whole *rye* flour, toasted *hazelnuts*, salt',
    );
  });

  it('counts water as it goes in, but for the EU as it stays in', () => {
    const formula = {
      ...answered(shippedFormula('lane-wheat')),
      flours: [
        { id: 'a', name: 'flour A', grain: 'wheat', pct: 60, packet: 'read' },
        { id: 'b', name: 'flour B', grain: 'wheat', pct: 40, packet: 'read' },
      ],
    } as const;
    // Water is 76 % of flour; the oven takes 13 % of 177.9.
    expect(starred(labelOf({ formula }))).toMatch(/^flour A \(\*wheat\*\), water, flour B/);
    expect(starred(labelOf({ formula, list: 'us' }))).toMatch(/^water, flour A/);
  });

  it('opens a compound in its own order, and puts a soaker’s water to the water', () => {
    const lookUp: LookUp = (name) => ({
      madeOf: name === 'dried cherries' ? ['cherries', 'sugar', 'rice flour'] : [],
    });
    expect(starred(labelOf({ lookUp }))).toContain(
      'dried cherries (cherries, sugar, rice flour), ',
    );
    const oats = answered(shippedFormula('seed-oat'));
    const wet = { ...oats, fillings: oats.fillings.map((f) => ({ ...f, soak: { water: 300 } })) };
    expect(starred(labelOf({ formula: wet }))).toMatch(/^water, strong \*wheat\* flour/);
  });

  it('parts names that hold a comma by semicolons', () => {
    const formula = answered(shippedFormula('cheese-seed'));
    expect(starred(labelOf({ formula, days: 2 }))).toContain(
      'water; hard, aged cheese (*milk*); whole *rye* flour; ',
    );
  });

  it('closes with what it contains in the US and Canada, each by its list', () => {
    const us = labelOf({ list: 'us' });
    expect(us.allergens).toBe('Contains: tree nuts (hazelnut), wheat');
    expect(us.ingredients.some(({ apart }) => apart)).toBe(false);
    expect(labelOf({ list: 'canada' }).allergens).toBe(
      'Contains: tree nuts (hazelnut), wheat, rye',
    );
    expect(labelOf().allergens).toBe('Allergens: bold and underlined');
    for (const list of ['eu', 'us', 'canada'] as const)
      expect(labelOf({ list }).notFree).toBe('Not gluten-free: wheat, rye');
  });

  it('says of a bread with nothing of a list nothing, and that it is not gluten-free', () => {
    const rye = answered(shippedFormula('harbour-rye'));
    const formula = { ...rye, flours: [{ ...rye.flours[0]!, pct: 100 }] };
    expect(labelOf({ formula, list: 'us' })).toMatchObject({
      allergens: null,
      notFree: 'Not gluten-free: rye',
    });
    expect(labelOf({ formula, list: 'canada' }).allergens).toBe('Contains: rye');
  });

  it('weighs the cool loaf: as ordered, else less what the oven takes, and never more', () => {
    expect(labelOf().weight).toBe('Net weight 780 g');
    expect(labelOf({ grams: 500 }).weight).toBe('Net weight 500 g');
    expect(labelOf({ grams: 500, list: 'us' }).weight).toBe(
      'Net weight 500 g (1\u00a0lb\u00a01.6\u00a0oz)',
    );
    expect(labelOf().baked).toBe('Baked 3 May 2031');
  });

  it('keeps cold what spoils and what holds cheese, for as long as its baker says', () => {
    expect(labelOf().keep).toEqual(['Keep in a paper bag, at room temperature.']);
    for (const keeps of ['perishable', 'hardCheese'] as const) {
      const formula = withFilling({ keeps });
      expect(wanted({ formula })).toEqual(['eatWithin']);
      expect(labelOf({ formula, days: 2 }).keep).toEqual([
        'Keep refrigerated',
        'Eat within 2 days of baking.',
      ]);
      expect(labelOf({ formula, days: 1 }).keep).toContain('Eat within a day of baking.');
    }
  });

  it('prints a name only where it is to be printed, and texts as texts', () => {
    expect(labelOf().who).toBeNull();
    const label = labelOf({
      who: ' A\u202e ',
      lines: ['<script>', ' \n ', 'Lane 1'],
      formula: { ...asked().formula, name: 'Cherry\n& <i>hazelnut</i>' },
    });
    expect(label.who).toBe('A');
    expect(label.lines).toEqual(['<script>', 'Lane 1']);
    expect(label.name).toBe('Cherry & <i>hazelnut</i>');
  });
});

describe('no label', () => {
  it('while a flour’s or a filling’s packet is not answered for: an empty list is no answer', () => {
    const formula = shippedFormula('cherry-hazelnut');
    expect(makeLabel(asked({ formula })).label).toBeNull();
    expect(wanted({ formula })).toEqual([
      'packet strong wheat flour',
      'packet whole rye flour',
      'packet dried cherries',
    ]);
  });

  it('while something is still to be looked up', () => {
    for (const text of ['sulphites, if the packet says so', 'tree nuts (name the nut)'])
      expect(wanted({ formula: withFilling({ allergens: [text] }) })).toEqual([
        'lookUp dried cherries',
      ]);
  });

  it('while a list wants a kind that nobody has named', () => {
    const formula = withFilling({ allergens: ['fish'] });
    expect(wanted({ formula, list: 'us' })).toEqual(['kind dried cherries']);
    expect(wanted({ formula, list: 'eu' })).toEqual([]);
  });

  it('while nobody has said what something is made of', () => {
    expect(
      wanted({ lookUp: (name) => (name === 'toasted hazelnuts' ? null : { madeOf: [] }) }),
    ).toEqual(['madeOf toasted hazelnuts']);
    expect(wanted({ lookUp: () => ({ madeOf: null }) })).toHaveLength(4);
  });
});

describe('what an ingredient’s own words say beside its list', () => {
  const lookUp: LookUp = (name) => ({
    madeOf: name === 'dried cherries' ? ['chocolate', 'soy lecithin', 'whey'] : [],
  });

  it('is named on the label all the same, and is to be looked at again', () => {
    const made = makeLabel(asked({ lookUp }));
    expect(made.label === null ? null : made.look).toEqual([
      { name: 'dried cherries', allergens: ['milk', 'soya'] },
    ]);
    const label = labelOf({ lookUp });
    expect(starred(label)).toContain('dried cherries (chocolate, *soy* lecithin, whey) (*milk*), ');
    expect(labelOf({ lookUp, list: 'us' }).allergens).toBe(
      'Contains: milk, tree nuts (hazelnut), wheat, soybeans',
    );
  });

  it('is nothing where the list names it', () => {
    const made = makeLabel(asked());
    expect(made.label === null ? null : made.look).toEqual([]);
  });
});
