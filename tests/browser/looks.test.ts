import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, VIEWPORTS, type ViewportName } from './harness/open-app.ts';
import { WHOLE_BAKE } from './harness/whole-bake.ts';

const MM: Readonly<Record<ViewportName, number>> = { wide: 0.17, small: 0.1925, tall: 0.1785 };

/** One state of each kind: a wait, a card, a question, a look, a gate, a call, a verdict. */
const LOOKED_AT = [
  'read-plan',
  'read-list-4',
  'levain-feed-1',
  'levain-ripening',
  'levain-look-1',
  'levain-verdict',
  'mix-temperature',
  'bulk-between-1',
  'bulk-look-1',
  'shape-divide',
  'proof-retard',
  'oven-on',
  'load1-before-1',
  'load1-load',
  'load1-lidded',
  'load1-lift',
  'load1-judge-1',
  'note',
];

it('fits the screen, measures up and passes axe in every kind of state', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const measured: string[] = [];
  const measure = async (name: string) => {
    for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
      await app.setViewport(view);
      const at = `${name} at ${view}`;
      const found = await app.page.evaluate(() => {
        const box = (el: Element) => {
          const { left, top, right, bottom } = el.getBoundingClientRect();
          return { left, top, right, bottom };
        };
        return {
          over: document.documentElement.scrollHeight - innerHeight,
          wide: document.documentElement.scrollWidth - innerWidth,
          slabs: [...document.querySelectorAll('.slab')].map(box),
          others: [...document.querySelectorAll('.control, .tile')].map(box),
          caption: [...document.querySelectorAll('.caption[data-seen]:not(:empty)')].map(box)[0],
          under: [
            ...document.querySelectorAll(
              '.slab-label, .slab-then, .control, .tile, .act-headline, .act-detail, .act-care, .lines, .window',
            ),
          ].map((el) => ({ what: el.className, ...box(el) })),
        };
      });
      expect(found.over, `${at} is taller than the screen`).toBeLessThanOrEqual(0);
      expect(found.wide, `${at} is wider than the screen`).toBeLessThanOrEqual(0);
      expect(found.slabs, at).toHaveLength(1);
      const { caption } = found;
      const covered = found.under.filter(
        (el) =>
          caption &&
          Math.min(caption.right, el.right) - Math.max(caption.left, el.left) > 0 &&
          Math.min(caption.bottom, el.bottom) - Math.max(caption.top, el.top) > 0,
      );
      expect(covered, `${at}: under the caption`).toEqual([]);
      const [slab] = found.slabs;
      const mm = (px: number) => px * MM[view];
      expect(mm(slab!.right - slab!.left), `${at}: slab width`).toBeGreaterThanOrEqual(60);
      expect(mm(slab!.bottom - slab!.top), `${at}: slab height`).toBeGreaterThanOrEqual(40);
      for (const other of found.others) {
        expect(mm(other.right - other.left), `${at}: width`).toBeGreaterThanOrEqual(22);
        expect(mm(other.bottom - other.top), `${at}: height`).toBeGreaterThanOrEqual(22);
        const apart = Math.max(
          slab!.left - other.right,
          other.left - slab!.right,
          slab!.top - other.bottom,
          other.top - slab!.bottom,
        );
        expect(mm(apart), `${at}: gap to the slab`).toBeGreaterThanOrEqual(6);
      }
    }
    await app.setViewport('wide');
    for (const theme of ['dark', 'light']) {
      await app.page.evaluate((t) => (document.documentElement.dataset['theme'] = t), theme);
      expect(await app.axe(), `axe: ${name}, ${theme}`).toEqual([]);
    }
    measured.push(name);
  };
  await app.page.locator('.start-grid').waitFor();
  await measure('start');
  await baker.begin();
  for (const { name, go } of WHOLE_BAKE) {
    if (LOOKED_AT.includes(name)) await measure(name);
    if (name === 'oven-on') {
      await baker.openGate();
      await measure(`${name}, open`);
    }
    const rings = ['levain-ripening', 'load1-lidded'].includes(name);
    await go(baker, rings ? () => measure(`${name}, ringing`) : undefined);
    if (name === 'note') break;
  }
  expect(measured).toHaveLength(LOOKED_AT.length + 4);
  expectNoFaults(app.faults);
}, 400_000);
