import { afterEach, describe, expect, it } from 'vitest';
import { fillingOf } from '../../../src/core/formula/filling-facts.ts';
import type { Filling, Formula } from '../../../src/core/formula/formula.ts';
import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';
import { kindOf } from '../../../src/screens/book/filling-kind.ts';
import { fillingLike, knownFilling } from '../../../src/screens/book/known-fillings.ts';
import { swapOffers, type SwapOffer } from '../../../src/screens/book/swap-offers.ts';
import { shippedFormula } from '../../core/formula/shipped.ts';

const METRIC = { heat: 'C', weight: 'g' } as const;
const OUNCES = { heat: 'F', weight: 'oz' } as const;
const today = shippedFormula('lane-today');
const filled = (...fillings: readonly Filling[]): Formula => ({ ...today, fillings });
const thyme = fillingOf('freshHerbs', { id: 'thyme', name: 'fresh thyme', pct: 4 });
const of = (formula: Formula, id: string, units: typeof METRIC | typeof OUNCES = METRIC) =>
  swapOffers(formula, id, 3000, units);
const one = (offers: readonly SwapOffer[]): SwapOffer => {
  expect(offers).toHaveLength(1);
  return offers[0]!;
};

afterEach(() => speakIn('en'));

describe('the swaps of a filling', () => {
  it('of herbs: half the weight dried, said with its rule, its water and how it keeps', () => {
    const offer = one(of(filled(thyme), 'thyme'));
    expect(offer.label).toBe('Dried instead of fresh');
    const [is, was] = /^(\d+) g instead of (\d+) g$/.exec(offer.value)!.slice(1).map(Number);
    // A weighed dough of the same weight: half of 4 % of a little more flour.
    expect(is! / was!).toBeCloseTo(0.5, 1);
    expect(offer.rule).toContain('common practice, no source');
    expect(offer.changes.join(' ')).toMatch(/Water in it: .* g instead of .* g\./);
    expect(offer.changes).toContain('It keeps on the shelf.');
    expect(offer.formula.fillings).toMatchObject([
      { name: 'dried thyme', pct: 2, keeps: 'shelf', brings: { salt: 0, water: 8 } },
    ]);
  });

  it('of herbs, back again: fresh ones spoil, which is said, and the share is as it was', () => {
    const dried = one(of(filled(thyme), 'thyme')).formula;
    const offer = one(of(dried, dried.fillings[0]!.id));
    expect(offer.label).toBe('Fresh instead of dried');
    expect(offer.changes.join(' ')).toContain('It spoils: cold until the final shape');
    expect(offer.formula.fillings).toMatchObject([
      { name: 'fresh thyme', pct: 4, keeps: 'perishable' },
    ]);
    // In a bread that stands overnight it is said that there would be no such bread.
    const cold = { ...shippedFormula('lane-wheat'), fillings: dried.fillings };
    expect(one(of(cold, dried.fillings[0]!.id)).changes.join(' ')).toContain(
      'spoils in a long rise',
    );
  });

  it.each([
    ['frischer Thymian', 'getrockneter Thymian'],
    ['Frische Petersilie', 'Getrocknete Petersilie'],
    ['frisches Basilikum', 'getrocknetes Basilikum'],
    ['Salbei, frisch', 'Salbei, getrocknet'],
    ['sauge fraîche', 'sauge séchée'],
    ['thym frais', 'thym séché'],
    ['herbes fraîches', 'herbes séchées'],
    ['Fresh dill', 'Dried dill'],
  ])('of %s have it in their own tongue that they are dried, whichever stands', (fresh, dried) => {
    for (const tongue of ['en', 'de', 'fr'] as const) {
      speakIn(tongue, { en: {}, de, fr }[tongue]);
      const herb = fillingOf('freshHerbs', { id: 'herb', name: fresh, pct: 4 });
      const swapped = one(of(filled(herb), 'herb')).formula;
      expect(swapped.fillings[0]).toMatchObject({ name: dried, pct: 2, keeps: 'shelf' });
      const back = one(of(swapped, swapped.fillings[0]!.id)).formula;
      expect(back.fillings[0]).toMatchObject({ name: fresh, pct: 4, keeps: 'perishable' });
    }
  });

  it('of herbs that do not say which they were are told in the tongue that stands', () => {
    const names = (['en', 'de', 'fr'] as const).map((tongue) => {
      speakIn(tongue, { en: {}, de, fr }[tongue]);
      const herb = fillingOf('freshHerbs', { id: 'herb', name: 'Bohnenkraut', pct: 4 });
      return one(of(filled(herb), 'herb')).formula.fillings[0]!.name;
    });
    expect(names).toEqual(['dried Bohnenkraut', 'Bohnenkraut, getrocknet', 'Bohnenkraut, séché']);
  });

  it('of nuts, seeds and dried fruit keep the share, and name the allergen that comes and goes', () => {
    const cherry = shippedFormula('cherry-hazelnut');
    const nut = one(of(cherry, 'hazelnut'));
    expect(nut.label).toBe('walnuts instead');
    expect(nut.value).toMatch(/^\d+ g, as before$/);
    expect(nut.changes).toContain('The label has to name: tree nuts (walnut).');
    expect(nut.changes).toContain('No longer in it: tree nuts (hazelnut).');
    expect(nut.formula.fillings.map(({ id, pct }) => [id, pct])).toEqual([
      ['cherry', 16],
      ['walnut', 12],
    ]);
    expect(of(cherry, 'cherry').map(({ label }) => label)).toEqual([
      'raisins instead',
      'dried apricots instead',
    ]);
    // Pumpkin and sesame are in it already.
    const seeds = of(shippedFormula('seed-oat'), 'sesame');
    expect(seeds.map(({ label }) => label)).toEqual(['sunflower seeds instead']);
    expect(seeds[0]!.changes).toContain('No longer in it: sesame.');
  });

  it.each([
    ['pumpkin', ['toasted pumpkin seeds', 'Kürbiskerne', 'graines de courge grillées']],
    [
      'sunflower',
      ['sunflower seeds', 'Sonnenblumenkerne', 'Sonnenblumen\u00adkerne', 'graines de tournesol'],
    ],
  ] as const)('offer no %s beside the baker’s own, in whichever tongue', (seed, names) => {
    const others = { pumpkin: 'sunflower', sunflower: 'pumpkin' } as const;
    for (const tongue of ['en', 'de', 'fr'] as const)
      for (const name of names) {
        speakIn(tongue, { en: {}, de, fr }[tongue]);
        const own = fillingOf('seeds', { id: 'own', name, pct: 5 });
        const offers = of(filled({ ...knownFilling('sesame'), pct: 5 }, own), 'sesame');
        expect(
          offers.map(({ formula }) => formula.fillings[0]!.id),
          name,
        ).toEqual([others[seed]]);
      }
  });

  it.each([
    ['walnut', 'hazelnut', ['Walnüsse', 'Walnuss', 'noix', 'chopped walnuts']],
    ['hazelnut', 'walnut', ['gehackte Haselnüsse', 'noisettes', 'hazelnut']],
  ] as const)('know %s by its names', (nut, other, names) => {
    for (const name of names) {
      const own = fillingOf('nuts', { id: 'own', name, pct: 5 });
      const almonds = fillingOf('nuts', { id: 'almond', name: 'almonds', pct: 5 });
      const offers = of(filled(almonds, own), 'almond');
      expect(
        offers.map(({ formula }) => formula.fillings[0]!.id),
        `${nut}: ${name}`,
      ).toEqual([other]);
    }
  });

  it('of olives tell how much salt comes with them, and that those in brine spoil', () => {
    const offer = one(of(filled({ ...knownFilling('olive'), pct: 15 }), 'olive'));
    expect(offer.label).toBe('olives in brine instead');
    expect(offer.changes.join(' ')).toMatch(
      /^Salt in it: .* instead of .*\. Water in it: .* It spoils/,
    );
    const back = one(of(offer.formula, offer.formula.fillings[0]!.id));
    expect(back.formula.fillings).toMatchObject([{ id: 'olive', pct: 15, keeps: 'shelf' }]);
  });

  it('are none where nobody can tell what it is, where its water goes in with it, or it is not there', () => {
    const own = { id: 'x', name: 'my mix', pct: 10, keeps: 'shelf', allergens: [] } as const;
    expect(of(filled(own), 'x')).toEqual([]);
    const soaked = { ...knownFilling('sunflower'), pct: 10, soak: { water: 100 } };
    expect(of(filled(soaked), 'sunflower')).toEqual([]);
    expect(of(filled(fillingOf('inOil', { id: 'o', name: 'thyme in oil', pct: 5 })), 'o')).toEqual(
      [],
    );
    expect(of(filled(), 'gone')).toEqual([]);
  });

  it('read as weights of the kitchen', () => {
    expect(one(of(filled(thyme), 'thyme', OUNCES)).value).toMatch(/oz instead of .*oz$/);
  });
});

it('a filling is what its name says, else what its facts alone say', () => {
  expect(kindOf(fillingLike('freshHerbs', 'rosemary'))).toBe('freshHerbs');
  expect(kindOf(fillingLike('driedHerbs', 'from the garden'))).toBe('driedHerbs');
  expect(kindOf(fillingLike('nuts', 'pecans'))).toBe('nuts');
  for (const name of ['geröstete Haselnüsse', 'Mandeln', 'noix hachées', 'amandes'])
    expect(kindOf(fillingLike('nuts', name)), name).toBe('nuts');
  for (const name of ['Kürbiskerne', 'graines de tournesol'])
    expect(kindOf(fillingLike('seeds', name)), name).toBe('seeds');
  for (const name of ['getrocknete Kirschen', 'Rosinen', 'abricots secs'])
    expect(kindOf(fillingLike('driedFruit', name)), name).toBe('driedFruit');
  // In oil, and a nut by its name alone.
  for (const name of ['thym à l’huile', 'Salbei in Öl', 'noix de muscade'])
    expect(
      kindOf({ ...fillingLike('nuts', name), brings: { salt: 7, water: 7 } }),
      name,
    ).toBeNull();
  // Fresh fruit has the facts of fresh herbs: its name says neither.
  expect(kindOf(fillingLike('freshFruit', 'blueberries'))).toBeNull();
});
