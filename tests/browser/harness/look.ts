import { expect } from 'vitest';
import type { App, ViewportName } from './open-app.ts';
import { settled } from './settled.ts';

export const MM: Readonly<Record<ViewportName, number>> = {
  wide: 0.17,
  small: 0.1925,
  tall: 0.1785,
};
/** Overpass draws capitals 0.70 em high; measured in the font. */
const CAP = 0.7;
/** mm: 20′ at 2 m, 20′ and 16′ at 1.2 m, 22′ and 45′ at 0.6 m; a day is planned with at 20′ there. */
const ARC = { far: 11.63, head: 6.98, plain: 5.58, near: 3.83, most: 7.86, tape: 3.49 };

interface Box {
  readonly name: string;
  /** A key of the number pad: those lie closer. */
  readonly key?: boolean;
  /** A touch on the day’s tape: no press of a bake. */
  readonly touch?: boolean;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}
export interface Measured {
  readonly boxes: readonly Box[];
  readonly slab: Box | null;
  /** Words that reach out of what may be pressed. */
  readonly out: readonly string[];
  /** Words that are read on, with a line of them seen in part. */
  readonly halved: readonly string[];
  readonly sizes: Readonly<Record<string, number>>;
  readonly least: number;
  /** The same on a day’s tape. */
  readonly leastOnTape: number;
  readonly digits: readonly number[];
  readonly covered: readonly string[];
  /** Px by which the page is larger than the window. */
  readonly over: readonly [number, number];
  /** Longer than its place, and nothing reads on. */
  readonly lost: boolean;
  /** Keys of a pad that are not whole in its place. */
  readonly keysOut: number;
  readonly slabs: number;
  /** A sheet lies over all: it needs no slab, and what is under it is not looked at. */
  readonly sheet: boolean;
  /** Each line of words in sight, and the left edge of each thing that may be pressed. */
  readonly words: readonly Box[];
  readonly edges: readonly Box[];
  readonly lang: string;
  /** What moves by itself. */
  readonly moving: number;
}

export async function measure(app: App): Promise<Measured> {
  await settled(app.page);
  return app.page.evaluate(() => {
    const sheet = [...document.querySelectorAll('.sheet')].at(-1);
    const all = (css: string) =>
      [...(sheet ?? document).querySelectorAll<HTMLElement>(css)].filter((el) =>
        el.checkVisibility(),
      );
    const boxOf = (el: Element) => {
      const { left, top, right, bottom } = el.getBoundingClientRect();
      return {
        name: el.textContent ?? '',
        key: el.matches('.key'),
        touch: el.matches('.tape-touch'),
        left,
        top,
        right,
        bottom,
      };
    };
    // What is drawn is as large as its drawing is shown.
    const px = (el: Element) =>
      parseFloat(getComputedStyle(el).fontSize) *
      (el instanceof SVGTextElement ? (el.getScreenCTM()?.a ?? 0) : 1);
    const pressable = all('.pressable');
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
    for (const css of [
      '.times-number',
      '.call',
      '.act-headline',
      '.act-detail',
      '.sheet-title',
      '.reading-detail',
    ])
      for (const el of all(css).filter((one) => !one.closest('.sound-calls'))) sizes[css] = px(el);
    const text = all(sheet ? '*' : '.bench *').filter((el) =>
      [...el.childNodes].some((node) => node.nodeType === 3 && node.nodeValue?.trim()),
    );
    const readable = text.filter((el) => !el.closest('.unseen, .caption'));
    const least = Math.min(...readable.filter((el) => !el.closest('.tape')).map(px));
    const leastOnTape = Math.min(...readable.filter((el) => el.closest('.tape')).map(px));
    const probe = document.createElement('span');
    probe.className = 'times-number';
    document.body.append(probe);
    const digits = [...'0123456789'].map((digit) => {
      probe.textContent = digit.repeat(8);
      return probe.getBoundingClientRect().width / 8;
    });
    probe.remove();
    /** What a box shows of the longer one inside it: to its border, or to the last whole line. */
    const shownOf = (inner: Element, outer: Element) => {
      const clip = /^inset\((\S+)px \S+ (\S+)px\)$/.exec(getComputedStyle(inner).clipPath);
      const [box, all] = [outer.getBoundingClientRect(), inner.getBoundingClientRect()];
      return clip
        ? { top: all.top + Number(clip[1]), bottom: all.bottom - Number(clip[2]) }
        : { top: box.top, bottom: box.bottom };
    };
    const seen = (el: Element) => {
      const inner = el.closest('.bench-inner, .sheet-inner');
      if (!inner) return true;
      if (el.closest('[data-cut]')) return false;
      const words = shownOf(inner, inner.closest('.bench-words, .sheet')!);
      const box = el.getBoundingClientRect();
      return box.bottom <= words.bottom + 1 && box.top >= words.top - 1;
    };
    const shown = pressable.filter(seen);
    // A caption lies over free places and lets presses through; nothing else may lie over a press.
    const covered = shown.flatMap((el) => {
      const { left, top, width, height } = el.getBoundingClientRect();
      const hit = document.elementFromPoint(left + width / 2, top + height / 2);
      return hit && el.contains(hit) ? [] : [`${el.textContent}: ${hit?.className}`];
    });
    const card = document.querySelector('.return');
    const lines = text.filter(seen).flatMap((el) => {
      // The card lies over words that it stands for.
      if (card && el.closest('.bench-words')) return [];
      if (
        el.closest('.unseen, [data-headless] > thead') ||
        getComputedStyle(el).clipPath === 'inset(50%)'
      )
        return [];
      if (el.closest('.ear-lit') && getComputedStyle(el).position === 'absolute') return [];
      // Its own words: a space that stands by itself between two others' has nothing to be seen of.
      const own = [...el.childNodes].filter(
        (node) => node.nodeType === 3 && node.nodeValue?.trim(),
      );
      const rects = own.flatMap((node) => {
        const range = document.createRange();
        range.selectNodeContents(node);
        return [...range.getClientRects()];
      });
      return rects
        .filter((r) => r.width > 4 && r.height > 4 && r.top >= 0 && r.bottom <= innerHeight)
        .map(({ left, top, right, bottom }) => ({
          name: el.textContent ?? '',
          left,
          top,
          right,
          bottom,
        }));
    });
    const edges = shown.map((el) => {
      const { left, top, bottom } = el.getBoundingClientRect();
      const middle = (top + bottom) / 2;
      return {
        name: el.textContent ?? '',
        left: left - 5,
        top: middle - 12,
        right: left + 5,
        bottom: middle + 12,
      };
    });
    // Of words that are read on no line stands in part.
    const inner = (sheet ?? document).querySelector(
      sheet ? ':scope[data-long] > .sheet-inner' : '.bench-words[data-long] > .bench-inner',
    );
    const halved = text.flatMap((el) => {
      if (inner === null || !inner.contains(el) || el.closest('[data-cut]')) return [];
      // For ears alone.
      if (el.offsetWidth === 1) return [];
      const { top: from, bottom: to } = shownOf(inner, inner.parentElement!);
      const range = document.createRange();
      range.selectNodeContents(el);
      // The letters of Overpass stand in so much of the box of their line.
      const lines = [...range.getClientRects()].map(({ top, bottom, height }) => ({
        top: top + 0.1 * height,
        bottom: bottom - 0.14 * height,
      }));
      const isCut = lines.some((r) =>
        [from, to].some((edge) => r.top < edge - 3 && r.bottom > edge + 3),
      );
      // Nothing was read yet, and what comes first is out of sight.
      const isLost =
        inner.parentElement!.scrollTop === 0 && lines.some(({ bottom }) => bottom <= from + 3);
      return isCut || isLost ? [el.textContent ?? ''] : [];
    });
    return {
      halved,
      boxes: shown.filter((el) => !el.matches('.slab')).map(boxOf),
      slab: all('.slab').map(boxOf)[0] ?? null,
      out,
      sizes,
      least,
      leastOnTape,
      digits,
      covered,
      over: [
        Math.max(document.documentElement.scrollWidth, sheet?.scrollWidth ?? 0) - innerWidth,
        document.documentElement.scrollHeight - innerHeight,
      ],
      lost: all('.bench-words')
        .concat((sheet as HTMLElement | undefined) ?? [])
        .some((el) => el.scrollHeight - el.clientHeight > 4 && !('long' in el.dataset)),
      keysOut: all('.pad .key').filter((el) => !seen(el)).length,
      slabs: all('.slab').length,
      sheet: sheet !== undefined,
      words: lines,
      edges,
      lang: document.documentElement.lang,
      moving: document.getAnimations().length,
    };
  });
}

const apart = (a: Box, b: Box): number =>
  Math.max(a.left - b.right, b.left - a.right, a.top - b.bottom, b.top - a.bottom);

export function check(at: string, mm: number, text: number, found: Measured, lang = 'en'): void {
  const cap = (px: number) => px * CAP * mm;
  expect.soft(found.over, `${at}: larger than the window`).toEqual([0, 0]);
  expect.soft(found.lost, `${at}: longer than its place, and nothing reads on`).toBe(false);
  expect.soft(found.keysOut, `${at}: keys out of sight`).toBe(0);
  if (found.sheet) expect.soft(found.slabs, `${at}: slabs`).toBeLessThanOrEqual(1);
  else expect.soft(found.slabs, `${at}: slabs`).toBe(1);
  expect.soft(found.lang, `${at}: lang`).toBe(lang);
  expect.soft(found.moving, `${at}: moves by itself`).toBe(0);
  expect.soft(found.out, `${at}: words out of their place`).toEqual([]);
  expect.soft(found.halved, `${at}: half a line`).toEqual([]);
  expect.soft(found.covered, `${at}: something lies over`).toEqual([]);
  const { slab } = found;
  if (slab) {
    expect.soft((slab.right - slab.left) * mm, `${at}: slab width`).toBeGreaterThanOrEqual(60);
    expect.soft((slab.bottom - slab.top) * mm, `${at}: slab`).toBeGreaterThanOrEqual(40);
  }
  found.boxes.forEach((box, i) => {
    const what = `${at}: ${box.name}`;
    const [wide, high] = [box.right - box.left, box.bottom - box.top];
    // A page for planning alone: px.
    if (box.touch) expect.soft(Math.min(wide, high), what).toBeGreaterThanOrEqual(44);
    else expect.soft(Math.min(wide, high) * mm, what).toBeGreaterThanOrEqual(22);
    if (slab && !box.touch)
      expect.soft(apart(box, slab) * mm, `${what}, to the slab`).toBeGreaterThanOrEqual(13);
    for (const other of found.boxes.slice(i + 1)) {
      const least =
        box.touch && other.touch ? 0 : box.key && other.key ? 3 : box.key || other.key ? 5.9 : 6;
      expect.soft(apart(box, other) * mm, `${what} to ${other.name}`).toBeGreaterThanOrEqual(least);
    }
  });
  for (const [css, least] of [
    ['.times-number', ARC.far],
    ['.call', ARC.far],
    // Over a keypad in bigger words the question is small, so that its keys keep their place.
    ['.act-headline', (found.boxes.some((b) => b.key) ? ARC.near : ARC.head) * text],
    ['.act-detail', ARC.plain * text],
    ['.sheet-title', ARC.head * text],
    ['.reading-detail', ARC.plain * text],
  ] as const)
    if (found.sizes[css] !== undefined)
      expect.soft(cap(found.sizes[css]), `${at}: ${css}`).toBeGreaterThanOrEqual(least);
  const headline = found.sizes['.act-headline'];
  if (text === 1 && headline !== undefined)
    expect.soft(cap(headline), `${at}: headline`).toBeLessThanOrEqual(ARC.most);
  expect
    .soft(cap(found.least), `${at}: the smallest words`)
    .toBeGreaterThanOrEqual(ARC.near * text);
  expect
    .soft(cap(found.leastOnTape), `${at}: the smallest words of the tape`)
    .toBeGreaterThanOrEqual(ARC.tape * text);
  expect.soft(Math.max(...found.digits) - Math.min(...found.digits)).toBeLessThanOrEqual(0.5);
}
