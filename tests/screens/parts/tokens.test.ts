// @vitest-environment node
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/**
 * The look's numbers, held against their sources: contrast after WCAG 2.2 (relative luminance), cap
 * heights after ISO 9241-3 and NUREG-0700 as minutes of arc at a distance.
 */
const css = readFileSync(new URL('../../../src/parts/tokens.css', import.meta.url), 'utf8');

/** The custom properties of the first rule with this selector. */
function rule(selector: string): Record<string, string> {
  const body = css.slice(css.indexOf(`${selector} {`)).match(/\{([^}]*)\}/)?.[1] ?? '';
  return Object.fromEntries(
    [...body.matchAll(/(--[\w-]+):\s*([^;]+);/g)].map(([, name, value]) => [name!, value!]),
  );
}

const light = rule(':root');
const dark = rule(":root[data-theme='dark']");
const dim = rule(":root[data-theme='dim']");
const wanted = rule(':root:not([data-theme])');

const luminance = (hex: string): number => {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const c = parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
};
const contrast = (a: string, b: string): number => {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high! + 0.05) / (low! + 0.05);
};

describe.each([
  ['light', light],
  ['dark', dark],
  ['dim', dim],
])('the %s theme', (_, theme) => {
  it.each([
    ['--ink', '--ground'],
    ['--ink-2', '--ground'],
    ['--on-slab', '--slab'],
    ['--hot-ink', '--hot-ground'],
    ['--look', '--ground'],
    ['--act', '--ground'],
    ['--hot', '--ground'],
  ])('shows text %s on %s at 7:1 and more', (text, ground) => {
    expect(contrast(theme[text]!, theme[ground]!)).toBeGreaterThanOrEqual(7);
  });

  it('tells slab and hot panel from the ground at 3:1 and more', () => {
    expect(contrast(theme['--slab']!, theme['--ground']!)).toBeGreaterThanOrEqual(3);
    expect(contrast(theme['--hot-ground']!, theme['--ground']!)).toBeGreaterThanOrEqual(3);
  });
});

it('is as dark where the tablet asks for it as where the baker does', () => {
  expect(Object.keys(wanted).length).toBeGreaterThan(8);
  expect(wanted).toEqual(dark);
});

it('gives less than half the light of the dark theme in the night, whatever is written', () => {
  expect(Object.keys(dim)).toEqual(Object.keys(dark));
  for (const name of ['--ink', '--ink-2', '--slab'])
    expect(luminance(dim[name]!), name).toBeLessThan(luminance(dark[name]!) * 0.6);
  expect(luminance(dim['--ink']!)).toBeLessThan(luminance(dark['--ink']!) / 2);
  expect(luminance(dim['--ground']!)).toBeLessThan(luminance(dark['--ground']!));
});

describe('cap heights', () => {
  /** mm of cap height for minutes of arc at a distance in mm: 2·d·tan(arc / 2). */
  const cap = (minutes: number, distance: number): number =>
    2 * distance * Math.tan((minutes / 60 / 2) * (Math.PI / 180));
  const of = (name: string): number =>
    Number(light[name]?.match(/^calc\(var\(--cap\) \* ([\d.]+)\)$/)?.[1]);

  it.each([
    ['--far', 20, 2000],
    ['--head', 20, 1200],
    ['--plain', 16, 1200],
    ['--near', 22, 600],
    ['--small', 16, 600],
  ])('%s is at least %i′ at %i mm', (name, minutes, distance) => {
    expect(of(name)).toBeGreaterThanOrEqual(cap(minutes, distance));
  });

  it('of the headline is at most 45′ at 0.6 m', () => {
    expect(of('--head')).toBeLessThanOrEqual(cap(45, 600));
  });

  it('are millimetres on each of the three tablets', () => {
    const scales = [...css.matchAll(/--px-per-mm: ([\d.]+)/g)].map(([, n]) => 1 / Number(n));
    expect(scales.map((mm) => Number(mm.toFixed(4)))).toEqual([0.17, 0.1925, 0.1785]);
  });
});
