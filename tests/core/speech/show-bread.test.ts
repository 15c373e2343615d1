import { afterEach, describe, expect, it } from 'vitest';
import { makeBakeList } from '../../../src/core/log/bake-list.ts';
import { findBakes } from '../../../src/core/log/find-bakes.ts';
import { bookOf } from '../../../src/core/records/book.ts';
import { writeFormulas } from '../../../src/core/sheets/formula-file.ts';
import { writeCsv } from '../../../src/core/sheets/write-csv.ts';
import { writeSheet } from '../../../src/core/sheets/write-sheet.ts';
import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { showBread, showShort } from '../../../src/core/speech/show-bread.ts';
import { tellMove, tellMoved, tellOthers } from '../../../src/core/speech/tell-moved.ts';
import { tellBecause, tellChange } from '../../../src/core/speech/tell-plan.ts';
import { inEnglish, speakIn } from '../../../src/core/speech/tongue.ts';
import { englishOf } from '../../../src/core/speech/twins.ts';
import { breadNames } from '../../../src/core/speech/words/breads.ts';
import { SHIPPED, shippedFormula } from '../formula/shipped.ts';
import { begun, rowsOf } from '../log/support/log-rows.ts';

const OTHERS = { fr, de } as const;
const TONGUES = ['fr', 'de'] as const;
afterEach(() => speakIn('en'));

describe('a bread as it is shown', () => {
  it.each([
    ['Cherry and hazelnut', 'Kirsche und Haselnuss', 'Cerise et noisette'],
    ['Lane wheat 2', 'Gassenbrot 2', 'Miche de la ruelle 2'],
    ['Lane wheat, same day 13', 'Gassenbrot, selber Tag 13', 'Miche de la ruelle, jour même 13'],
    // A baker's own, and one that begins like ours.
    ['Quince and walnut', 'Quince and walnut', 'Quince and walnut'],
    ['Lane wheat of B', 'Lane wheat of B', 'Lane wheat of B'],
    ['lane-wheat', 'lane-wheat', 'lane-wheat'],
    ['', '', ''],
  ])('%s', (name, german, french) => {
    expect(showBread(name)).toBe(name);
    speakIn('de', de);
    expect(showBread(name)).toBe(german);
    speakIn('fr', fr);
    expect(showBread(name)).toBe(french);
  });

  it('is every one that comes with the program, and none is called like another', () => {
    const kept = SHIPPED.map(shippedFormula).map(({ id, name }) => [id, name]);
    expect(Object.entries(inEnglish(() => ({ ...breadNames }))).toSorted()).toEqual(
      kept.toSorted(),
    );
    for (const tongue of TONGUES) {
      speakIn(tongue, OTHERS[tongue]);
      const shown = kept.map(([, name]) => showBread(name!));
      expect(new Set(shown).size).toBe(SHIPPED.length);
      expect(shown.filter((name) => kept.some(([, other]) => other === name))).toEqual([]);
    }
  });

  it('has a short name that ends on a word that says something', () => {
    const shorts = () =>
      (['lane-wheat', 'olive-seed', 'harbour-rye', 'barley-tin', 'wholemeal'] as const).map((id) =>
        showShort(shippedFormula(id).name),
      );
    expect(shorts()).toEqual(['Lane wheat', 'Olive', 'Harbour', 'Barley tin', 'Whole']);
    speakIn('de', de);
    expect(shorts()).toEqual(['Gassenbrot', 'Olive', 'Hafenroggen', 'Gerste', 'Weizen']);
    speakIn('fr', fr);
    expect(shorts()).toEqual(['Miche', 'Olive', 'Seigle', 'Orge', 'Blé']);
  });

  it('is known in English to whoever says it, for that is what is recorded', () => {
    speakIn('de', de);
    expect(englishOf(showBread('Harbour rye'))).toBe('Harbour rye');
    expect(englishOf(showShort('Cherry and hazelnut'))).toBe('Cherry');
  });
});

it('is told by it where a day is told', () => {
  const time = (at: number): string => String(at);
  const fewer = { change: 'fewerLoads', batch: 'Lane wheat 2', loads: 1 } as const;
  const move = { batch: 'Lane wheat', name: 'mix', from: null, to: 5 };
  const told = () =>
    [
      ...tellBecause(['Lane wheat']),
      ...tellChange(fewer, time, []),
      ...tellOthers(['Lane wheat', 'Quince']),
      tellMoved([move], [], time, true),
      tellMove(move, time, true).name,
    ].join('\n');
  expect(told().match(/Lane wheat/g)).toHaveLength(5);
  speakIn('de', de);
  expect(told().match(/Gassenbrot/g)).toHaveLength(5);
  expect(told()).toContain('Quince');
  expect(told()).not.toContain('Lane');
});

it('is found in the Log by what is shown and by what is kept', () => {
  const bakes = () =>
    makeBakeList()(rowsOf([begun('a', 'Lane wheat'), begun('b', 'Quince')])).bakes;
  const find = (text: string) =>
    findBakes(bakes(), { text }, { abouts: {}, tagName: (tag) => tag, monthOf: () => '' }).map(
      ({ bake }) => bake,
    );
  expect(find('gassen')).toEqual([]);
  speakIn('de', de);
  expect(find('gassen')).toEqual(['a']);
  expect(find('lane')).toEqual(['a']);
  expect(find('quince')).toEqual(['b']);
});

it('is kept as it was in every tongue', () => {
  const kept = (): unknown => {
    const formulas = SHIPPED.map(shippedFormula);
    return [
      writeFormulas(formulas),
      formulas.map((formula) => writeCsv(writeSheet(formula, 1000)).split('\n')[0]),
      bookOf([], formulas),
    ];
  };
  const english = kept();
  for (const tongue of TONGUES) {
    speakIn(tongue, OTHERS[tongue]);
    expect(kept()).toEqual(english);
  }
});
