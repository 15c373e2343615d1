import type { BrowserContext, Page } from 'playwright-core';

/** Nothing that a test asks of a page takes as long as this, ms, on a machine under load. */
const LONGEST = 60_000;

/** The same promise, or after `ms` a failure that says what was waited for. */
export async function bounded<T>(what: string, promise: Promise<T>, ms = LONGEST): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`No answer in ${ms / 1_000} s: ${what}`)), ms);
  });
  // Said by whoever waits; a test that is over waits no more.
  promise.catch(() => undefined);
  return Promise.race([promise, late]).finally(() => clearTimeout(timer));
}

/** What may be asked again without harm, when the browser once gives no answer. */
export async function again<T>(what: string, ask: () => Promise<T>): Promise<T> {
  const first = bounded(what, ask(), LONGEST / 3);
  return first.catch(() => bounded(`${what}, asked again`, ask()));
}

/** A page whose answers are waited for no longer than that: the library waits for ever for some. */
export function boundPage(page: Page): Page {
  const evaluate = page.evaluate.bind(page) as (...args: unknown[]) => Promise<unknown>;
  page.evaluate = ((...args: unknown[]) =>
    bounded(
      `evaluate ${String(args[0]).slice(0, 200)}`,
      evaluate(...args),
    )) as typeof page.evaluate;
  const resize = page.setViewportSize.bind(page);
  page.setViewportSize = (size) => again(`a window of ${size.width}`, () => resize(size));
  const tap = page.touchscreen.tap.bind(page.touchscreen);
  page.touchscreen.tap = (x, y) => bounded(`a tap at ${x}, ${y}`, tap(x, y));
  return page;
}

/** The same for a context's clock. */
export function boundClock({ clock }: BrowserContext): void {
  const [runFor, fastForward] = [clock.runFor.bind(clock), clock.fastForward.bind(clock)];
  clock.runFor = (ms) => bounded(`the clock turned by ${ms} ms`, runFor(ms));
  clock.fastForward = (ms) => bounded(`the clock turned by ${ms} ms at once`, fastForward(ms));
}
