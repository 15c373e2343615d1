import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { answerAll, LABEL_PAGES } from './harness/label-pages.ts';
import { openApp, VIEWPORTS } from './harness/open-app.ts';
import { press, turned } from './harness/page-step.ts';

const MM = 96 / 25.4;
const POINTS = 72 / 25.4;

/** What a sheet holds inside its margins, CSS pixels. */
const INSIDE: Readonly<Record<string, { width: number; height: number }>> = {
  a4: { width: 703, height: 1031 },
  letter: { width: 724, height: 964 },
};

const toLabels = async (baker: Baker, bread: string): Promise<void> => {
  await baker.page.evaluate(() => (window.print = () => undefined));
  for (const { go } of LABEL_PAGES.slice(0, 3)) await go(baker);
  await press(baker, [bread]);
};

/** Prints what is ready; its pages in millimetres as the PDF has them, and what was found on each. */
async function printed(baker: Baker, name: string) {
  const { page, app } = baker;
  await page.emulateMedia({ media: 'screen' });
  await page.setViewportSize(VIEWPORTS.wide);
  await baker.tap('.slab:has-text("Print it")');
  await page.locator('.label-sheet').first().waitFor({ state: 'attached' });
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => document.fonts.ready);
  const sheets = await page.locator('.label-sheet').evaluateAll((all) =>
    all.map((sheet) => ({
      on: (sheet as HTMLElement).dataset['page'],
      labels: [...sheet.querySelectorAll('.label-place')].map((place) => {
        const card = place.querySelector('.label-card')!;
        const box = place.getBoundingClientRect();
        const words = [...card.querySelectorAll('h2, p, b')];
        return {
          width: box.width,
          height: box.height,
          over: Math.max(...words.map((el) => el.getBoundingClientRect().bottom)) - box.bottom,
          right: Math.max(...words.map((el) => el.getBoundingClientRect().right)) - box.right,
          least: Math.min(...words.map((el) => parseFloat(getComputedStyle(el).fontSize))),
          apart: [...card.querySelectorAll('b')].map((b) => ({
            text: b.textContent,
            weight: getComputedStyle(b).fontWeight,
            line: getComputedStyle(b).textDecorationLine,
          })),
          text: card.textContent,
        };
      }),
    })),
  );
  if (process.env['SHOTS']) {
    await page.setViewportSize(INSIDE[sheets[0]?.on ?? ''] ?? { width: 212, height: 360 });
    await app.screenshot(`labels-${name}`);
  }
  // Once it has printed the page is taken away.
  const file = await page.pdf({ preferCSSPageSize: true });
  const pages = [...file.toString('latin1').matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/g)];
  await page.emulateMedia({ media: 'screen' });
  return {
    sheets,
    pages: pages.map(([, width, height]) => [Number(width) / POINTS, Number(height) / POINTS]),
  };
}

type Printed = Awaited<ReturnType<typeof printed>>;

/** Nothing over an edge, and no letter whose small x is under 1.2 mm. */
const expectWhole = ({ sheets, pages }: Printed): void => {
  expect(pages).toHaveLength(sheets.length);
  for (const { labels } of sheets)
    for (const { over, right, least } of labels) {
      expect(over).toBeLessThanOrEqual(0.5);
      expect(right).toBeLessThanOrEqual(0.5);
      expect((least / MM) * 0.51).toBeGreaterThanOrEqual(1.2);
    }
};

const nearly = (pages: Printed['pages'], width: number, height: number): void => {
  for (const [w, h] of pages) {
    expect(Math.abs(w! - width)).toBeLessThan(1);
    expect(Math.abs(h! - height)).toBeLessThan(1);
  }
};

it('prints labels on A4, Letter and a roll, nothing cut, allergens set apart', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await toLabels(baker, 'Cherry and hazelnut');
  await press(baker, ['Cherry and hazelnut']);
  await answerAll(baker);
  for (let n = 0; n < 9; n++) await baker.tap('[aria-label^="One label more"]');
  await turned(baker, '.slab:visible');
  await baker.page.locator('.slab:has-text("10 labels, 2 sheets")').waitFor();

  const a4 = await printed(baker, 'a4');
  expectWhole(a4);
  nearly(a4.pages, 210, 297);
  expect(a4.sheets.map(({ on, labels }) => [on, labels.length])).toEqual([
    ['a4', 8],
    ['a4', 2],
  ]);
  const [label] = a4.sheets[0]!.labels;
  expect(label!.apart.map(({ text }) => text)).toEqual(['wheat', 'rye', 'hazelnuts']);
  for (const { weight, line } of label!.apart) {
    expect(Number(weight)).toBeGreaterThanOrEqual(800);
    expect(line).toBe('underline');
  }
  expect(label!.text).toContain('Not gluten-free: wheat, rye');

  await press(baker, ['List and paper', 'United States', 'Letter']);
  await turned(baker, '.slab:visible');
  const letter = await printed(baker, 'letter');
  expectWhole(letter);
  nearly(letter.pages, 215.9, 279.4);
  expect(letter.sheets[0]!.labels[0]!.text).toContain('Contains: tree nuts (hazelnut), wheat');
  expect(letter.sheets[0]!.labels[0]!.apart).toEqual([]);

  await press(baker, ['List and paper', 'Canada', 'Roll']);
  await turned(baker, '.slab:visible');
  const roll = await printed(baker, 'roll');
  expectWhole(roll);
  expect(roll.sheets).toHaveLength(10);
  nearly(roll.pages, 62, roll.pages[0]![1]!);
  expect(roll.pages[0]![1]).toBeLessThanOrEqual(100.5);
  expectNoFaults(app.faults);
});

it('prints a long list whole: smaller letters first, then fewer on a sheet, longer on a roll', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await toLabels(baker, 'Cherry and hazelnut');
  await press(baker, ['Cherry and hazelnut', 'made of what?']);
  const long = Array.from({ length: 60 }, (_, n) => `invented ingredient number ${n + 1}`);
  await baker.write(long.join(', '));
  await turned(baker, '.slab:visible');
  await answerAll(baker);
  await turned(baker, '.slab:visible');
  for (const [paper, most] of [
    ['A4', 7],
    ['Letter', 7],
    ['Roll', 1],
  ] as const) {
    await press(baker, ['List and paper', paper === 'A4' ? 'Canada' : paper]);
    await turned(baker, '.slab:visible');
    const found = await printed(baker, `long-${paper}`);
    expectWhole(found);
    const [place] = found.sheets[0]!.labels;
    expect(place!.text).toContain('invented ingredient number 60');
    if (paper !== 'Roll') {
      const all = paper === 'A4' ? 186 * 272 : 191.9 * 254.4;
      expect(all / ((place!.width / MM) * (place!.height / MM))).toBeLessThan(most + 0.5);
    } else expect(found.pages[0]![1]).toBeGreaterThan(100);
  }
  expectNoFaults(app.faults);
});
