import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { CLAY, LINE, OCHRE, PAPER, TEAL } from '../../../assets/make/sketches/kit/ink.ts';
import { scenes } from '../../../assets/make/sketches/scenes.ts';
import { SKETCHES } from '../../../src/core/sketches/sketches.ts';

const folder = fileURLToPath(new URL('../../../assets/sketches/', import.meta.url));
const drawn = Object.entries(scenes());

const valuesOf = (svg: string, attribute: string): readonly string[] =>
  [...svg.matchAll(new RegExp(` ${attribute}="([^"]*)"`, 'g'))].map(([, value]) => value ?? '');

test('every sketch that has a name is drawn, and no other', () => {
  const files = readdirSync(folder).map((file) => file.replace('.svg', ''));
  expect(files.toSorted()).toEqual(SKETCHES.toSorted());
  expect(Object.keys(scenes()).toSorted()).toEqual(SKETCHES.toSorted());
});

/** The name of a paint of the kit, and what it is where no page gives it another. */
const named = (paint: string): readonly string[] => /var\((--\w+),(#\w+)\)/.exec(paint) ?? [];

/** Relative luminance, WCAG 2.2. */
const light = (hex: string): number => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const part = parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

test.each([LINE, PAPER, OCHRE, TEAL, CLAY])('the page gives %s as the kit has it', (paint) => {
  const [, name, value] = named(paint);
  const css = readFileSync(new URL('../../../src/parts/Sketch.css', import.meta.url), 'utf8');
  expect(css).toContain(`  ${name}: ${value};`);
  expect(css).toContain('  background: var(--paper);');
});

test.each([LINE, TEAL, CLAY])(
  '%s can be made out on its paper with no outline: 3 to 1',
  (paint) => {
    const [ink, paper] = [paint, PAPER].map((one) => light(named(one)[2] ?? '#ffffff'));
    expect(((paper ?? 0) + 0.05) / ((ink ?? 1) + 0.05)).toBeGreaterThanOrEqual(3);
  },
);

describe.each(drawn)('the sketch %s', (name, draw) => {
  const svg = readFileSync(`${folder}${name}.svg`, 'utf8');

  test('is as its scene draws it (npx tsx assets/make/sketches/make.ts)', () => {
    expect(svg).toBe(draw());
  });

  test('is small enough to be fetched over a slow air', () => {
    expect(gzipSync(svg).length).toBeLessThanOrEqual(6 * 1024);
  });

  test('has the one frame, and a root that can be pointed at', () => {
    expect(svg).toMatch(
      /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="0 0 240 180"><g id="sketch" /,
    );
    expect(svg.match(/ id=/g)).toHaveLength(1);
  });

  test('holds shapes only: no words, no scripts, nothing from elsewhere', () => {
    const tags = [...svg.matchAll(/<(\w+)/g)].map(([, tag]) => tag);
    expect(tags.filter((tag) => !['svg', 'g', 'path', 'circle'].includes(tag ?? ''))).toEqual([]);
    expect(svg).not.toMatch(/href|url\(|style|\son\w+=|<!|NaN|undefined/);
  });

  test('is cut from the three inks, paper and line', () => {
    const cuts = [LINE, PAPER, OCHRE, TEAL, CLAY, 'none'];
    const paints = [...valuesOf(svg, 'fill'), ...valuesOf(svg, 'stroke')];
    expect(paints.filter((paint) => !cuts.includes(paint))).toEqual([]);
  });

  test('shows ochre inside an outline only', () => {
    expect(valuesOf(svg, 'stroke')).not.toContain(OCHRE);
    const bare = (svg.match(/<[^>]*>/g) ?? []).filter(
      (tag) => tag.includes(`fill="${OCHRE}"`) && tag.includes('stroke="none"'),
    );
    expect(bare).toEqual([]);
  });
});
