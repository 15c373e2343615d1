import { afterEach, expect, it } from 'vitest';
import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';
import { writeSheet } from '../../../src/core/sheets/write-sheet.ts';
import { shippedFormula } from '../formula/shipped.ts';

afterEach(() => speakIn('en'));

const texts = (): readonly string[] =>
  writeSheet(shippedFormula('seed-oat'), 1000).rows.flatMap((row) =>
    row.flatMap((cell) => (cell !== null && 'text' in cell ? [cell.text] : [])),
  );

it('names the water that a filling soaks in as each tongue puts it', () => {
  const { name } = shippedFormula('seed-oat').fillings.find(({ soak }) => soak)!;
  expect(texts()).toContain(`Water to soak ${name}`);
  speakIn('de', de);
  expect(texts()).toContain(`Wasser zum Einweichen: ${name}`);
  speakIn('fr', fr);
  expect(texts()).toContain(`Eau de trempage\u202f: ${name}`);
});
