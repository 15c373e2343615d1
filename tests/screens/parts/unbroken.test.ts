// @vitest-environment node
import { describe, expect, it } from 'vitest';
import { unbroken } from '../../../src/parts/unbroken.ts';

const show = (text: string): string =>
  unbroken(text).replaceAll('\u00a0', '_').replaceAll('\u2011', '=');

describe('what eyes read', () => {
  it.each([
    ['Stand 1 m back', 'Stand 1_m back'],
    ['620 g water at 27 °C', '620_g water at 27_°C'],
    ['2.5 kg, 30 min', '2.5_kg, 30_min'],
    ['about 1 h 05 longer', 'about 1_h_05 longer'],
    ['A grown-up does this', 'A grown=up does this'],
  ])('%s', (text, want) => expect(show(text)).toBe(want));

  it.each(['3 mitts', '2 loaves', '4 good folds', 'Fold 2 - then rest', '10:30'])(
    '%s stays as it is',
    (text) => expect(unbroken(text)).toBe(text),
  );

  it('has the same words, and as many signs', () => {
    const text = 'Hold it 1 m away for 1 h 30: a grown-up at 250 °C.';
    expect(unbroken(text)).toHaveLength(text.length);
    expect(unbroken(text).replace(/\s/g, ' ').replaceAll('\u2011', '-')).toBe(text);
  });
});
