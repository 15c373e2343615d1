import { afterEach, describe, expect, it } from 'vitest';
import { inOrder, type LookUp } from '../../../../src/core/circle/label/ingredients.ts';
import { makeLabel, type LabelAsk } from '../../../../src/core/circle/label/label.ts';
import type { Formula } from '../../../../src/core/formula/formula.ts';
import { de } from '../../../../src/core/speech/de.ts';
import { fr } from '../../../../src/core/speech/fr.ts';
import { speakIn } from '../../../../src/core/speech/tongue.ts';
import { SHIPPED, shippedFormula } from '../../formula/shipped.ts';

const OTHERS = { fr, de } as const;
const TONGUES = ['fr', 'de'] as const;
const JUST_ITSELF: LookUp = () => ({ madeOf: [] });
const read = <T extends object>(part: T) => ({ ...part, packet: 'read' as const });
const answered = (formula: Formula): Formula => ({
  ...formula,
  flours: formula.flours.map(read),
  fillings: formula.fillings.map(read),
});
const made = (formula: Formula, own: Partial<LabelAsk> = {}) =>
  makeLabel({
    ...{ formula, list: 'eu', lookUp: JUST_ITSELF, grams: null, cut: false },
    ...{ baked: '3 May 2031', days: 3, lines: [], who: null },
    ...own,
  });
const starred = (formula: Formula, own: Partial<LabelAsk> = {}): string =>
  (made(formula, own).label?.ingredients ?? [])
    .map((run) => (run.apart ? `*${run.text}*` : run.text))
    .join('');
const cherry = answered(shippedFormula('cherry-hazelnut'));
const cheese = answered(shippedFormula('cheese-seed'));
afterEach(() => speakIn('en'));

describe('a label in another tongue', () => {
  it('has its ingredients in it, their allergens set apart', () => {
    speakIn('de', de);
    expect(starred(cherry)).toBe(
      'starkes *Weizen*mehl, Wasser, getrocknete Kirschen, *Roggen*vollkornmehl, geröstete *Haselnüsse*, Salz',
    );
    // A name with a comma of its own is not read as two.
    expect(starred(cheese)).toContain('; harter, gereifter Käse (*Milch*); ');
    speakIn('fr', fr);
    expect(starred(cherry)).toBe(
      'farine de *blé* de force, eau, cerises séchées, farine de *seigle* complète, *noisettes* grillées, sel',
    );
  });

  it('brings the same allergens, and says the same of them, for every bread and list', () => {
    const found = () =>
      SHIPPED.map((id) => answered(shippedFormula(id))).flatMap((formula) =>
        (['eu', 'us', 'canada'] as const).map((list) =>
          inOrder(formula, list, JUST_ITSELF).map(({ pct, allergens, besides }) => ({
            pct,
            allergens,
            besides,
          })),
        ),
      );
    const english = found();
    for (const tongue of TONGUES) {
      speakIn(tongue, OTHERS[tongue]);
      expect(found()).toEqual(english);
    }
  });

  it('finds what a name that is kept gives away and its list has not, and asks to look again', () => {
    const bare: Formula = {
      ...cherry,
      fillings: cherry.fillings.map((one) => ({ ...one, allergens: [] })),
    };
    for (const [tongue, name, own] of [
      ['de', 'geröstete Haselnüsse', 'geröstete *Haselnüsse*'],
      ['fr', 'noisettes grillées', '*noisettes* grillées'],
    ] as const) {
      speakIn(tongue, OTHERS[tongue]);
      expect(made(bare)).toMatchObject({ look: [{ name, allergens: ['tree nuts (hazelnut)'] }] });
      expect(starred(bare)).toContain(own);
    }
  });

  it('looks an ingredient up by the name that is kept, and asks for it by the one that is shown', () => {
    const lookUp: LookUp = (name) =>
      name === 'dried cherries' ? { madeOf: ['Kirschen', 'Zucker'] } : { madeOf: [] };
    speakIn('de', de);
    expect(starred(cherry, { lookUp })).toContain('getrocknete Kirschen (Kirschen, Zucker)');
    const { wanting } = made(cherry, { lookUp: () => null });
    expect(
      wanting.map(({ of, values }) => [of!.id, values['name']!.replaceAll('\u00ad', '')]),
    ).toEqual([
      ['wheat', 'starkes Weizenmehl'],
      ['rye', 'Roggenvollkornmehl'],
      ['cherry', 'getrocknete Kirschen'],
      ['hazelnut', 'geröstete Haselnüsse'],
    ]);
  });

  it('leaves a name of its baker’s own as it is', () => {
    const own: Formula = { ...cherry, fillings: [{ ...cherry.fillings[0]!, name: 'plum jam' }] };
    speakIn('fr', fr);
    expect(starred(own)).toContain(', plum jam, ');
  });
});
