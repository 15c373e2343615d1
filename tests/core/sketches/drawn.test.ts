import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { scenes } from '../../../assets/make/sketches/scenes.ts';

const FOLDER = new URL('../../../assets/sketches/', import.meta.url);
const drawn = Object.entries(scenes()).map(([name, draw]) => ({ name, svg: draw() }));

/** What a sketch may be painted with: this page's own ink, paper and three inks, or nothing. */
const PAINTS = [
  'none',
  'var(--line,#2b1730)',
  'var(--paper,#fbf6ef)',
  'var(--ochre,#d9952b)',
  'var(--teal,#1f6f6b)',
  'var(--clay,#c4583a)',
];

test('the files are what is drawn now, one a sketch and no other', () => {
  const files = readdirSync(FOLDER).map((file) => ({
    name: file.replace('.svg', ''),
    svg: readFileSync(new URL(file, FOLDER), 'utf8'),
  }));
  const byName = (a: { name: string }, b: { name: string }) => (a.name < b.name ? -1 : 1);
  expect(files.sort(byName)).toEqual([...drawn].sort(byName));
});

test('a sketch is on the common grid, light, and can run and fetch nothing', () => {
  for (const { name, svg } of drawn) {
    expect(svg, name).toMatch(/^<svg [^>]*viewBox="0 0 240 180"><g id="sketch" /);
    expect(svg, name).not.toMatch(
      /<(?!\/?(svg|g|path|circle|ellipse)\b)|href|url\(|style=| on\w+=/,
    );
    expect(svg, name).not.toMatch(/NaN|undefined/);
    expect(gzipSync(svg).length, name).toBeLessThanOrEqual(6 * 1024);
  }
});

test('it is painted in the page’s inks, and ochre never stands without an outline', () => {
  for (const { name, svg } of drawn) {
    for (const [, paint] of svg.matchAll(/\b(?:fill|stroke)="([^"]*)"/g))
      expect(PAINTS, name).toContain(paint);
    expect(svg, name).not.toMatch(/stroke="var\(--ochre/);
  }
});
