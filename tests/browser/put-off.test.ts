import { expect, it } from 'vitest';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { DUE, oneRests } from './harness/left-kitchen.ts';
import { MM } from './harness/look.ts';
import { openApp, START, VIEWPORTS, type App, type ViewportName } from './harness/open-app.ts';
import { settled } from './harness/settled.ts';
import { putRows, putSetting } from './harness/put-rows.ts';

const MINUTE = 60_000;

/** A browser that lets nothing sound, and a kitchen that goes by sight. */
const neverHeard = async (app: App): Promise<void> => {
  await app.context.addInitScript(() => {
    Object.defineProperty(AudioContext.prototype, 'state', { get: () => 'suspended' });
    AudioContext.prototype.resume = () => new Promise(() => {});
  });
  const sound = { at: 0, heard: 'sightOnly' };
  await app.page.evaluate(putSetting('equipment', { ...EQUIPMENT, sound }));
};

it.each([
  ['big enough, whole, nothing moves, and it calls again', true],
  ['and says that it will not be heard, where it will not', false],
])(
  'puts a call off where the ear stands: %s',
  async (_, sounds) => {
    const left = oneRests(START - 30 * MINUTE);
    const app = await openApp({ clock: left.at });
    await app.page.evaluate(putRows(left.records));
    if (!sounds) await neverHeard(app);
    await app.reopen();
    const baker = new Baker(app);
    const boxes = (): Promise<Record<string, string>> =>
      app.page.evaluate(() =>
        Object.fromEntries(
          [...document.querySelectorAll('.slab, .bench-controls .control, .bench-ear > *')].map(
            (el, i) => {
              const { x, y, width, height } = el.getBoundingClientRect();
              return [`${i}`, [x, y, width, height].join(' ')];
            },
          ),
        ),
      );
    const name = sounds ? /^In 2 minutes/ : /^In 2 minutes.*Sound off$/;
    const putOff = app.page.getByRole('button', { name });
    await app.page.locator('.act-headline', { hasText: 'Let the dough rest' }).waitFor();
    await app.turn(DUE.salt * MINUTE);
    await app.page.locator('.call[data-kind=act]').waitFor();
    const ringing = await boxes();
    expect(await putOff.count()).toBe(0);
    await baker.hush();
    await putOff.waitFor();
    expect.soft(await boxes()).toEqual(ringing);
    for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
      await app.setViewport(view);
      for (const [text, theme] of [
        ['plain', 'light'],
        ['bigger', 'dark'],
      ] as const) {
        await app.page.evaluate(
          ([t, c]) => Object.assign(document.documentElement.dataset, { text: t, theme: c }),
          [text, theme] as const,
        );
        await settled(app.page);
        await app.screenshot(`put-off-${sounds ? '' : 'mute-'}${view}-${text}`);
        const found = await putOff.evaluate((el) => {
          const { width, height } = el.getBoundingClientRect();
          const clipped = [...el.querySelectorAll('span:not(.unseen), b')].some(
            (part) => part.scrollWidth > el.clientWidth || part.scrollHeight > el.clientHeight,
          );
          return { least: Math.min(width, height), clipped };
        });
        const at = `${view}, ${text}`;
        expect.soft(found.clipped, at).toBe(false);
        expect.soft(found.least * MM[view], at).toBeGreaterThanOrEqual(22);
        // Slab, three controls, the ear and More.
        expect
          .soft(await app.page.locator('.bench .pressable:visible').count(), at)
          .toBeLessThan(8);
        expect.soft(await app.axe(), at).toEqual([]);
      }
    }
    if (!sounds) return;
    await app.setViewport('wide');
    await app.page.evaluate(() =>
      Object.assign(document.documentElement.dataset, { text: 'plain' }),
    );
    await baker.noted(() => baker.tap('.ear:has-text("In 2 minutes")'));
    await app.page.locator('.ear', { hasText: 'Calls at' }).waitFor();
    await app.page.locator('.caption', { hasText: 'I call again in 2 minutes.' }).waitFor();
    await app.screenshot('put-off-taken');
    expect((await boxes())['0']).toBe(ringing['0']);
    // A reload in between forgets nothing.
    await app.turn(MINUTE);
    await app.reopen();
    // Its sound waits for a tap again, which is told first.
    await app.page.locator('.ear', { hasText: 'Tap to arm sound' }).waitFor();
    expect(await app.page.locator('.call').count()).toBe(0);
    await app.turn(MINUTE);
    await app.page.locator('.call[data-kind=act]').waitFor();
    await baker.hush();
    await app.page.locator('.ear', { hasText: '1 left' }).waitFor();
    expect((await baker.facts()).slice(-3).map(({ kind }) => kind)).toEqual([
      'heard',
      'snoozed',
      'heard',
    ]);
    expectNoFaults(app.faults);
  },
  90_000,
);
