import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  chromium,
  type BrowserContext,
  type BrowserContextOptions,
  type Page,
} from 'playwright-core';
import { inject } from 'vitest';
import { serve, type Served } from '../../../src/serve/serve.ts';
import { axe, type Violation } from './axe.ts';
import { again, boundClock, bounded, boundPage } from './bounded.ts';
import { chromiumPath, FLAGS, sharedBrowser } from './chromium.ts';
import { watchFaults, type Faults } from './faults.ts';
import { LOCALES, selectorsIn, type OtherTongue } from './in-tongue.ts';
import { closeLater } from './open.ts';
import { countRows, storeRows } from './store-rows.ts';

/** The three tablets everything is measured on, in CSS pixels. */
export const VIEWPORTS = {
  wide: { width: 1280, height: 800 },
  small: { width: 1024, height: 768 },
  tall: { width: 820, height: 1180 },
} as const;
export type ViewportName = keyof typeof VIEWPORTS;

/** When every test begins unless it says otherwise: a Friday, half past five in the evening. */
export const START = Date.UTC(2026, 2, 6, 17, 30);

export interface OpenOptions {
  readonly viewport?: ViewportName;
  /** The instant at which the page's clock stands still until turned, or the real clock. */
  readonly clock?: number | 'real';
  /** Opens once with the network, so that the app is kept, and again without. */
  readonly offline?: boolean;
  /**
   * A service worker keeps the whole app, as on any tablet: so it is where `offline` or a `profile` is
   * asked for. Elsewhere the page knows of none, as over plain http: to fetch everything once more for
   * each test took the browser longer than many a test.
   */
  readonly kept?: boolean;
  /** Path, query and hash. */
  readonly url?: string;
  /** A folder that keeps the browser's storage, as a tablet does; closed and opened again at will. */
  readonly profile?: string;
  /** What the browser of a `profile` is told beside its own flags. */
  readonly flags?: readonly string[];
  /** A server of the test's own, which closes it. Else one on a free port. */
  readonly server?: Served;
  /** The zone is the page's own to change: none is set for it. */
  readonly ownZone?: boolean;
  /** A tablet of another tongue; what is pressed is named in English all the same. */
  readonly tongue?: OtherTongue | undefined;
  /** Further wishes: colour scheme, reduced motion, permissions. */
  readonly context?: BrowserContextOptions;
}

export interface App {
  /** The language that its page is told in. */
  readonly lang: string;
  /** The present page; another one after `reopen`. */
  readonly page: Page;
  readonly context: BrowserContext;
  readonly server: Served;
  readonly faults: Faults;
  /**
   * Turns a standing clock on by `ms`: at one leap, as after a sleep, to the last second, and
   * then through it, so that what follows has settled. The page's timers fire, none twice for the leap.
   */
  turn(ms: number): Promise<void>;
  /** All rows of the log, or of another store, in key order, or those from one key on. */
  storeRows(store?: string, from?: number): Promise<unknown[]>;
  /** How many rows the log has. */
  countRows(): Promise<number>;
  /** Photographs the page into tests/browser/out. */
  screenshot(name: string): Promise<void>;
  axe(): Promise<Violation[]>;
  setViewport(name: ViewportName): Promise<void>;
  /** Closes the page and opens the app in a new one with the same storage. */
  reopen(): Promise<void>;
  close(): Promise<void>;
}

/** Three frames, ms. */
const FRAMES = 50;

const out = fileURLToPath(new URL('../out/', import.meta.url));

async function newContext(options: OpenOptions): Promise<BrowserContext> {
  const settings: BrowserContextOptions = {
    viewport: VIEWPORTS[options.viewport ?? 'wide'],
    hasTouch: true,
    locale: options.tongue ? LOCALES[options.tongue] : 'en-GB',
    ...(options.ownZone ? {} : { timezoneId: 'UTC' }),
    ...options.context,
  };
  if (options.profile === undefined) return (await sharedBrowser()).newContext(settings);
  return chromium.launchPersistentContext(options.profile, {
    ...settings,
    executablePath: await chromiumPath(),
    args: [...FLAGS, ...(options.flags ?? [])],
  });
}

/** Waits until the service worker holds the whole app and answers for this page. */
export function untilKept(page: Page): Promise<void> {
  return page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) =>
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
    );
  });
}

/** Serves the built app and opens it in Chromium. Closed by itself when the test file is over. */
export async function openApp(options: OpenOptions = {}): Promise<App> {
  const server = options.server ?? (await serve({ dir: inject('site') }));
  const context = await newContext(options);
  let isOpen = true;
  const close = async () => {
    if (!isOpen) return;
    isOpen = false;
    await context.close();
    if (!options.server) await server.close();
  };
  closeLater(close);

  if (!(options.kept ?? (options.offline || options.profile)))
    await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'));
  const faults = await watchFaults(context, server.url);
  boundClock(context);
  const clock = options.clock ?? START;
  if (clock !== 'real') {
    await context.clock.install({ time: clock - 1 });
    await context.clock.pauseAt(clock);
  }
  const inTongue = options.tongue && selectorsIn(options.tongue);
  const visit = async () => {
    const page = boundPage(await again('a new page', () => context.newPage()));
    if (inTongue) {
      const find = page.locator.bind(page);
      page.locator = (selector, ...wishes) => find(inTongue(selector), ...wishes);
    }
    await page.goto(`${server.url}${options.url ?? '/'}`);
    return page;
  };
  let page = await visit();
  const reopen = async () => {
    await bounded('a page closed', page.close());
    page = await visit();
  };
  if (options.offline) {
    await untilKept(page);
    await context.setOffline(true);
    await reopen();
  }

  return {
    lang: options.tongue ?? 'en',
    get page() {
      return page;
    },
    context,
    server,
    faults,
    async turn(ms) {
      const last = Math.min(ms, 1_000);
      const first = Math.min(ms - last, FRAMES);
      // What a press put off till its frame comes before the clock leaps, as on any tablet.
      if (first > 0) await context.clock.runFor(first);
      if (ms > last + first) await context.clock.fastForward(ms - last - first);
      await context.clock.runFor(last);
    },
    storeRows: (store, from) => storeRows(page, store, from),
    countRows: () => countRows(page),
    async screenshot(name) {
      await mkdir(out, { recursive: true });
      await page.screenshot({ path: join(out, `${name}.png`) });
    },
    axe: () => bounded('axe', axe(page)),
    setViewport: (name) => page.setViewportSize(VIEWPORTS[name]),
    reopen,
    close,
  };
}
