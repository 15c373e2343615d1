import { expect, it, vi } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { LANE } from './harness/lane-circle.ts';
import { openApp, VIEWPORTS } from './harness/open-app.ts';
import { press, turned } from './harness/page-step.ts';
import { putCircle } from './harness/put-circle.ts';

/** Somebody new orders one of a bread; back on the day's page. */
async function ordered(baker: Baker, name: string, bread: string): Promise<void> {
  await turned(baker, '.slab:has-text("Add an order")');
  await press(baker, ['Somebody new']);
  await baker.write(name);
  await turned(baker, '.slab:visible');
  await press(baker, [bread]);
  await baker.page.locator('.orders-lines').waitFor();
  await turned(baker, '.slab:visible');
  await baker.page.locator('.slab:has-text("Add an order")').waitFor();
}

it('ticks off two neighbours’ bread; a reload finds the ticks, and one is taken back', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const toDay = async (): Promise<void> => {
    await baker.page.locator('.start-grid').waitFor();
    await press(baker, ['Bread circle']);
  };
  const ticks = (): Promise<(string | null)[]> =>
    baker.page
      .locator('.hand-row button')
      .evaluateAll((all) => all.map((one) => one.getAttribute('aria-pressed')));
  await toDay();
  await turned(baker, '.slab:has-text("New order")');
  await press(baker, ['Sun']);
  await ordered(baker, 'K', 'Lane wheat');
  await ordered(baker, 'M', 'Cherry and hazelnut');
  await press(baker, ['More of this day', 'Hand over']);
  expect(await ticks()).toEqual(['false', 'false', 'false', 'false']);
  expect(await baker.headline()).toBe('Hand over: 2 to come');
  await baker.tap('.hand-tick:has-text("Lane wheat")');
  await vi.waitFor(async () => expect(await ticks()).toEqual(['true', 'false', 'false', 'false']));
  await baker.tap('[aria-label="Paid: M"]');
  await vi.waitFor(async () => expect(await ticks()).toEqual(['true', 'false', 'false', 'true']));

  await app.reopen();
  await toDay();
  await press(baker, ['Sun 8 Mar', 'More of this day', 'Hand over']);
  expect(await ticks()).toEqual(['true', 'false', 'false', 'true']);
  expect(await baker.page.locator('.hand-tick').first().innerText()).toContain('Gone 17:30');
  await baker.tap('.hand-tick:has-text("Lane wheat")');
  await vi.waitFor(async () => expect(await ticks()).toEqual(['false', 'false', 'false', 'true']));
  await app.reopen();
  await toDay();
  await press(baker, ['Sun 8 Mar', 'More of this day', 'Hand over']);
  expect(await ticks()).toEqual(['false', 'false', 'false', 'true']);
  expectNoFaults(app.faults);
});

/** What a page holds inside its margins, CSS pixels: 186 × 273 mm and 192 × 255 mm. */
const PAPER = [
  ['A4', { width: 703, height: 1031 }],
  ['Letter', { width: 724, height: 964 }],
] as const;

const toHandOver = async (baker: Baker): Promise<void> => {
  await baker.page.locator('.start-grid').waitFor();
  await baker.page.evaluate(putCircle(LANE));
  await press(baker, ['Bread circle', 'Fri 6 Mar', 'Hand over']);
};

it('prints the list on A4 and Letter: each name with its boxes, nothing cut', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await baker.page.evaluate(() => (window.print = () => undefined));
  await toHandOver(baker);
  await press(baker, ['All loaves', 'Print the list']);
  expect(await baker.page.locator('.act').innerText()).toContain('Names are on it.');
  await baker.tap('.slab:has-text("Print it")');
  const sheet = baker.page.locator('.pick-sheet');
  await sheet.waitFor({ state: 'attached' });
  await baker.page.emulateMedia({ media: 'print' });
  for (const [format, size] of PAPER) {
    await baker.page.setViewportSize(size);
    await baker.page.evaluate(() => document.fonts.ready);
    const found = await sheet.evaluate((page) => ({
      height: page.getBoundingClientRect().height,
      right: Math.max(
        ...[...page.querySelectorAll('*')].map((el) => el.getBoundingClientRect().right),
      ),
      over: [...page.querySelectorAll('td, th, p')]
        .filter((el) => el.scrollWidth > el.clientWidth + 1)
        .map((el) => el.textContent),
      boxes: [...page.querySelectorAll('.pick-box')].map((box) => box.textContent),
      names: [...page.querySelectorAll('table:first-of-type tbody th')].map((el) => el.textContent),
    }));
    expect(found.height, format).toBeLessThanOrEqual(size.height);
    expect(found.right, format).toBeLessThanOrEqual(size.width + 0.5);
    expect(found.over, format).toEqual([]);
    expect(found.names).toEqual(['K', 'Q', LANE.neighbours![2]!.name, 'The mill']);
    expect(found.boxes).toEqual(['✓', '✓', '', '', '', '', '', '✓']);
    if (process.env['SHOTS']) await app.screenshot(`pick-up-${format}`);
    // Once it has printed the page is taken away.
    if (format === 'A4') continue;
    const pdf = (await baker.page.pdf({ format })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
  }
  await baker.page.emulateMedia({ media: 'screen' });
  await baker.page.setViewportSize(VIEWPORTS.wide);
  expectNoFaults(app.faults);
});

it('copies a message by one press, and marks its text where the browser refuses', async () => {
  const app = await openApp({
    context: { permissions: ['clipboard-read', 'clipboard-write'] },
  });
  const baker = new Baker(app);
  await toHandOver(baker);
  await press(baker, ['Tell them', 'Q']);
  await baker.tap('.slab:has-text("Copy it")');
  await baker.page.locator('.act-detail:has-text("It is copied.")').waitFor();
  const copied = await baker.page.evaluate(() => navigator.clipboard.readText());
  expect(copied.split('\n')).toEqual([
    'Your bread on Fri 6 Mar 2026, at 17:30:',
    '1 × Cherry and hazelnut',
    expect.stringMatching(/^1 × Lane wheat, 500\sg$/),
    'If the loaf is warm, leave its bag open until it is cool.',
  ]);
  await baker.page.evaluate(() => {
    navigator.clipboard.writeText = () => Promise.reject(new Error('no'));
  });
  await baker.tap('.slab:has-text("Copy it")');
  await baker.page.locator('.act-detail:has-text("Mark the text by hand.")').waitFor();
  expect(await baker.page.evaluate(() => getSelection()?.toString())).toContain('Lane wheat');
  expectNoFaults(app.faults);
});
