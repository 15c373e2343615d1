import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, inject, it } from 'vitest';
import { openParts, type Parts } from './harness/open-parts.ts';
import { luminance, paintedContrast, readPng } from './harness/pixels.ts';

let parts: Parts;
beforeAll(async () => {
  parts = await openParts();
});

const shoot = async (css: string) => readPng(await parts.page.locator(css).first().screenshot());

/** Light or dark against the middle, so that only shapes are left of a picture and no colour. */
async function shape(css: string, size = 40): Promise<boolean[]> {
  const picture = await shoot(css);
  const light = (i: number) =>
    luminance(
      picture.at(
        Math.floor(((i % size) + 0.5) * (picture.width / size)),
        Math.floor((Math.floor(i / size) + 0.5) * (picture.height / size)),
      ),
    );
  const lights = Array.from({ length: size * size }, (_, i) => light(i));
  const middle = (Math.max(...lights) + Math.min(...lights)) / 2;
  return lights.map((l) => l > middle);
}
const apart = (a: readonly boolean[], b: readonly boolean[]): number =>
  a.filter((is, i) => is !== b[i]).length / a.length;

describe.each(['light', 'dark'])('without colour, %s', (theme) => {
  it('each call is told by its shape and its word', async () => {
    await parts.show('states', 'wide', `theme=${theme}`);
    const names = ['call-look', 'call-act', 'call-hot'];
    const shapes: boolean[][] = [];
    const words = new Set<string>();
    for (const name of names) {
      shapes.push(await shape(`[data-state-of="${name}"] svg`));
      words.add(await parts.page.locator(`[data-state-of="${name}"]`).innerText());
    }
    expect(words.size).toBe(3);
    for (const [i, one] of shapes.entries())
      for (const other of shapes.slice(i + 1)) expect(apart(one, other)).toBeGreaterThan(0.1);
  });

  it('each state of a control and of the slab looks different', async () => {
    await parts.show('states', 'wide', `theme=${theme}`);
    const { page } = parts;
    const states: Record<string, boolean[]> = {};
    for (const name of ['control', 'control-chosen', 'control-disabled'])
      states[name] = await shape(`[data-state-of="${name}"] button`, 120);
    await page.keyboard.press('Tab');
    await page.locator('[data-state-of="control"] button').focus();
    states['control-focused'] = await shape('[data-state-of="control"] button', 120);
    for (const name of ['slab', 'slab-disabled', 'slab-gate'])
      states[name] = await shape(`[data-state-of="${name}"] button`, 120);
    await page.locator('[data-state-of="slab"] button').focus();
    states['slab-focused'] = await shape('[data-state-of="slab"] button', 120);
    const told = Object.entries(states);
    for (const [i, [name, one]] of told.entries())
      for (const [other, another] of told.slice(i + 1))
        if (name.split('-')[0] === other.split('-')[0])
          expect(apart(one, another), `${name} and ${other}`).toBeGreaterThan(0.01);
  });
});

it('words too pale are found by what is painted', async () => {
  await parts.show('states', 'wide', 'theme=light');
  const css = '[data-state-of="lines"]';
  const picture = await shoot(css);
  const whole = { left: 0, top: 0, right: picture.width, bottom: picture.height };
  expect(paintedContrast(picture, whole)).toBeGreaterThan(7);
  await parts.page.evaluate(() => {
    const root = document.documentElement;
    for (const name of ['--ink', '--ink-2']) root.style.setProperty(name, '#8a8a8a');
  });
  expect(paintedContrast(await shoot(css), whole)).toBeLessThan(7);
});

it('the page of parts is in no build', () => {
  const site = inject('site');
  const files = readdirSync(site, { recursive: true, encoding: 'utf8' });
  expect(files).toContain('index.html');
  expect(files.filter((name) => /parts\.html|gallery|scenes/.test(name))).toEqual([]);
  for (const name of files.filter((file) => /\.(js|html)$/.test(file)))
    expect(readFileSync(join(site, name), 'utf8'), name).not.toMatch(/parts\.html|data-state-of/);
});

it('shows every scene in both themes and for both hands to who opens it bare', async () => {
  const { page } = parts;
  await parts.show('act', 'wide');
  await page.goto(page.url().replace(/\?.*/, ''), { waitUntil: 'domcontentloaded' });
  await page.locator('.tablet').first().waitFor();
  const asked = await page
    .locator('iframe')
    .evaluateAll((all) => all.map((el) => el.getAttribute('title') ?? ''));
  for (const way of ['theme=light', 'theme=dark', 'hands=left', 'text=bigger'])
    expect(asked.filter((title) => title.includes(way)).length).toBeGreaterThan(8);
});
