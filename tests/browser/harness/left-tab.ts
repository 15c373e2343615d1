import type { LogRecord } from '../../../src/core/records/record.ts';
import type { Instant } from '../../../src/core/units.ts';
import { putRows } from './put-rows.ts';
import { openTab, type Tab } from './tab.ts';
import { VIEWPORTS, type ViewportName } from './open-app.ts';

/** What stands on the bench, as it is read there. */
export interface Seen {
  readonly headline: string;
  /** The kind of the call on show, or null. */
  readonly call: string | null;
  /** The running time, or null. */
  readonly number: string | null;
  /** Where the bake stands, with how long it has called where no running time stands above. */
  readonly place: string | null;
  /** The other bakes: their time, and whether they are marked late. */
  readonly beside: readonly { readonly time: string; readonly late: boolean }[];
  readonly card: readonly string[];
  /** The box of every control by its words, and of the slab. */
  readonly boxes: Readonly<Record<string, string>>;
}

/** The page's clock, which `ahead` turns on without any timer running, and what it shows from its return on. */
const script = (at: Instant): string => `
  const began = Date.now();
  globalThis.ahead = 0;
  const Wall = Date;
  globalThis.Date = class extends Wall {
    constructor(...parts) { if (parts.length > 0) super(...parts); else super(Date.now()); }
    static now() { return ${at} + (Wall.now() - began) + ahead; }
  };
  const text = (el) => el ? el.innerText.replace(/\\s+/g, ' ').trim() : null;
  const all = (what) => [...document.querySelectorAll(what)];
  globalThis.seen = () => ({
    headline: text(document.querySelector('.act-headline, .words h1, .words h2')) ?? '',
    call: document.querySelector('.call')?.dataset.kind ?? null,
    number: text(document.querySelector('.times-number')),
    place: text(document.querySelector('.act-place') ?? document.querySelector('.times-name')),
    beside: all('.bake-control').map((el) => ({
      time: text(el.querySelector('.bake-time')) ?? '', late: 'late' in el.dataset })),
    card: all('.return li').map(text),
    boxes: Object.fromEntries(all('.slab, .control, .ear').filter((el) => !el.closest('.return')).map((el) => {
      const { x, y, width, height } = el.getBoundingClientRect();
      const name = el.matches('.slab') ? 'slab'
        : el.closest('.bake-control') ? 'beside ' + all('.bake-control').indexOf(el.closest('.bake-control'))
        : text(el);
      return [name, [x, y, width, height].join(' ')];
    })),
  });
  globalThis.frames = [];
  document.addEventListener('visibilitychange', () => {
    if (document.hidden) return;
    const back = performance.now();
    frames.length = 0;
    const look = () => {
      frames.push({ ms: performance.now() - back, ...seen() });
      if (performance.now() - back < 1500) requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  }, true);
`;

/** The app in a tab that can truly be hidden and stopped, with this log, its clock at `at`; `also` runs first in it. */
export async function openLeft(
  url: string,
  left: { readonly records: readonly LogRecord[]; readonly at: Instant },
  viewport: ViewportName,
  also = '',
): Promise<Tab> {
  // A file of the app's own origin: the log lies there before the app is opened.
  const tab = await openTab(`${url}/formulas/index.json`, script(left.at) + also);
  await tab.evaluate(putRows(left.records));
  await tab.tell('Emulation.setDeviceMetricsOverride', {
    ...VIEWPORTS[viewport],
    deviceScaleFactor: 1,
    mobile: false,
  });
  await tab.tell('Page.navigate', { url });
  return tab;
}

export const seen = async (tab: Tab): Promise<Seen> => (await tab.evaluate('seen()')) as Seen;

/** Everything that was drawn since the tab was shown again, with the milliseconds since then. */
export const framesSince = async (tab: Tab): Promise<readonly (Seen & { readonly ms: number })[]> =>
  (await tab.evaluate(
    `new Promise((then) => {
      const look = () => (frames.at(-1)?.ms ?? 0) > 1400 ? then(frames) : setTimeout(look, 50);
      look();
    })`,
  )) as never;
