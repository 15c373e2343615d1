import type { Page } from 'playwright-core';

export const START_PAGE = '.start-grid';

/** On a loaded machine a press may fall into the dead time of the one before: press till it took. */
const pressTill = async (page: Page, selector: string, done: string): Promise<void> => {
  for (let tries = 0; tries < 12; tries += 1) {
    if ((await page.locator(done).count()) > 0) return;
    await page.waitForTimeout(750);
    if ((await page.locator(selector).count()) > 0) await page.locator(selector).first().click();
    await page.waitForTimeout(250);
  }
  throw new Error(`${selector} never led to ${done}.`);
};

/** From the start page to the bench of two loaves that join where `join` says. */
async function beginAt(page: Page, join: string): Promise<void> {
  const pad = '.pad-typed';
  await pressTill(page, '.control:has-text("How warm is the kitchen?")', pad);
  await pressTill(page, '.key:text-is("2")', `${pad}:text-is("2")`);
  await pressTill(page, '.key:text-is("1")', `${pad}:text-is("21")`);
  await pressTill(page, '.slab', START_PAGE);
  await pressTill(page, '.control:has-text("Where is your dough?")', `.tile:has-text("${join}")`);
  await pressTill(page, `.tile:has-text("${join}")`, START_PAGE);
  const sight = '.bench:has(.sound-calls) .control:has-text("Sight only")';
  await pressTill(page, '.slab', sight);
  await pressTill(page, sight, '.slab:has-text("Start baking"):not([aria-disabled])');
  await pressTill(page, '.slab', '.bench[aria-label="Bench"] .act-headline');
}

export const toBulk = (page: Page): Promise<void> => beginAt(page, 'My dough is in the bowl');
export const toOven = (page: Page): Promise<void> => beginAt(page, 'My loaves are ready to bake');
