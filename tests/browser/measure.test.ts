import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { openApp, VIEWPORTS, type App, type ViewportName } from './harness/open-app.ts';
import { WHOLE_BAKE } from './harness/whole-bake.ts';

/** What the look asks in millimetres and minutes of arc, measured on the screen itself. */
const MM: Readonly<Record<ViewportName, number>> = { wide: 0.17, small: 0.1925, tall: 0.1785 };
/** Overpass draws capitals 0.70 em high; measured in the font. */
const CAP = 0.7;
/** mm: 20′ at 2 m, 20′ and 16′ at 1.2 m, 22′ and 45′ at 0.6 m. */
const ARC = { far: 11.63, head: 6.98, plain: 5.58, near: 3.83, most: 7.86 };

interface Box {
  readonly name: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}
interface Measured {
  readonly boxes: readonly Box[];
  readonly slab: Box;
  /** Words that reach out of what may be pressed. */
  readonly out: readonly string[];
  readonly sizes: Readonly<Record<string, number>>;
  readonly least: number;
  readonly digits: readonly number[];
  readonly covered: readonly string[];
}

const measure = (app: App): Promise<Measured> =>
  app.page.evaluate(async () => {
    await document.fonts.ready;
    // Two real frames, whatever the page's clock says: after them nothing is laid out anew.
    for (let n = 0; n < 2; n++)
      await new Promise((drawn) => new ResizeObserver(drawn).observe(document.body));
    const all = <T extends Element = HTMLElement>(css: string) => [
      ...document.querySelectorAll<T>(css),
    ];
    const boxOf = (el: Element) => {
      const { left, top, right, bottom } = el.getBoundingClientRect();
      return { name: el.textContent ?? '', left, top, right, bottom };
    };
    const px = (el: Element) => parseFloat(getComputedStyle(el).fontSize);
    const pressable = all('.control, .tile, .key, .slab, button.ear');
    const out = pressable.flatMap((el) => {
      const range = document.createRange();
      range.selectNodeContents(el);
      const words = range.getBoundingClientRect();
      const box = el.getBoundingClientRect();
      const inside =
        words.left >= box.left - 0.5 &&
        words.right <= box.right + 0.5 &&
        words.top >= box.top - 0.5 &&
        words.bottom <= box.bottom + 0.5;
      return inside ? [] : [el.textContent ?? ''];
    });
    const sizes: Record<string, number> = {};
    for (const css of ['.times-number', '.call', '.act-headline', '.act-detail'])
      for (const el of all(css)) sizes[css] = px(el);
    const text = all('.bench *').filter((el) =>
      [...el.childNodes].some((node) => node.nodeType === 3 && node.nodeValue?.trim()),
    );
    const least = Math.min(...text.filter((el) => !el.closest('.unseen, .caption')).map(px));
    const probe = document.createElement('span');
    probe.className = 'times-number';
    document.body.append(probe);
    const digits = [...'0123456789'].map((digit) => {
      probe.textContent = digit.repeat(8);
      return probe.getBoundingClientRect().width / 8;
    });
    probe.remove();
    const seen = (el: Element) => {
      const words = el.closest('.bench-words')?.getBoundingClientRect();
      const box = el.getBoundingClientRect();
      return !words || (box.bottom <= words.bottom + 1 && box.top >= words.top - 1);
    };
    const shown = pressable.filter(seen);
    // A caption lies over free places and lets presses through; nothing else may lie over a press.
    const covered = shown.flatMap((el) => {
      const { left, top, width, height } = el.getBoundingClientRect();
      const hit = document.elementFromPoint(left + width / 2, top + height / 2);
      return hit && el.contains(hit) ? [] : [`${el.textContent}: ${hit?.className}`];
    });
    return {
      boxes: shown.filter((el) => !el.matches('.slab')).map(boxOf),
      slab: boxOf(document.querySelector('.slab')!),
      out,
      sizes,
      least,
      digits,
      covered,
    };
  });

const apart = (a: Box, b: Box): number =>
  Math.max(a.left - b.right, b.left - a.right, a.top - b.bottom, b.top - a.bottom);

function check(at: string, mm: number, text: number, found: Measured): void {
  const cap = (px: number) => px * CAP * mm;
  expect(found.out, `${at}: words out of their place`).toEqual([]);
  expect(found.covered, `${at}: something lies over`).toEqual([]);
  expect((found.slab.right - found.slab.left) * mm, `${at}: slab width`).toBeGreaterThanOrEqual(60);
  expect((found.slab.bottom - found.slab.top) * mm, `${at}: slab`).toBeGreaterThanOrEqual(40);
  found.boxes.forEach((box, i) => {
    const what = `${at}: ${box.name}`;
    expect((box.right - box.left) * mm, `${what}, width`).toBeGreaterThanOrEqual(22);
    expect((box.bottom - box.top) * mm, `${what}, height`).toBeGreaterThanOrEqual(22);
    expect(apart(box, found.slab) * mm, `${what}, to the slab`).toBeGreaterThanOrEqual(13);
    for (const other of found.boxes.slice(i + 1))
      expect(apart(box, other) * mm, `${what} to ${other.name}`).toBeGreaterThanOrEqual(6);
  });
  for (const [css, least] of [
    ['.times-number', ARC.far],
    ['.call', ARC.far],
    ['.act-headline', ARC.head * text],
    ['.act-detail', ARC.plain * text],
  ] as const)
    if (found.sizes[css] !== undefined)
      expect(cap(found.sizes[css]), `${at}: ${css}`).toBeGreaterThanOrEqual(least);
  if (text === 1) expect(cap(found.sizes['.act-headline']!), at).toBeLessThanOrEqual(ARC.most);
  expect(cap(found.least), `${at}: the smallest words`).toBeGreaterThanOrEqual(ARC.near * text);
  expect(Math.max(...found.digits) - Math.min(...found.digits)).toBeLessThanOrEqual(0.5);
}

it('holds sizes, gaps, cap heights and digits in every arrangement, normal and bigger', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const checked: string[] = [];
  const everywhere = async (name: string) => {
    for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
      await app.setViewport(view);
      for (const hands of ['right', 'left']) {
        for (const [way, text] of [
          ['normal', 1],
          ['bigger', 1.4],
        ] as const) {
          await app.page.evaluate(
            ([h, t]) => Object.assign(document.documentElement.dataset, { hands: h, text: t }),
            [hands, way] as const,
          );
          await app.turn(50);
          check(`${name}, ${view}, ${hands}, ${way}`, MM[view], text, await measure(app));
        }
      }
    }
    await app.page.evaluate(() => delete document.documentElement.dataset['text']);
    await app.setViewport('wide');
    checked.push(name);
  };
  await app.page.locator('.start-grid').waitFor();
  await baker.begin();
  for (const { name, go } of WHOLE_BAKE) {
    if (['read-list-4', 'levain-feed-1', 'levain-ripening', 'levain-verdict'].includes(name))
      await everywhere(name);
    await go(baker, name === 'levain-ripening' ? () => everywhere(`${name}, ringing`) : undefined);
    if (name === 'levain-verdict') break;
  }
  expect(checked).toHaveLength(5);
}, 240_000);
