import { Baker } from './baker.ts';
import { expectNoFaults } from './faults.ts';
import { lookAt, type LookedWay } from './look-at.ts';
import { openApp } from './open-app.ts';
import type { OtherTongue } from './in-tongue.ts';
import type { PageStep } from './page-step.ts';
import { checkSmallPage } from './small-page.ts';

/**
 * Opens these pages in their order, from an instant on, and looks at each in its ways; at a zoom of 200 % at
 * every one, or at every so many.
 */
export async function lookPages(
  pages: readonly PageStep[],
  waysOf: (n: number, name: string) => readonly LookedWay[],
  {
    clock,
    zoomed = 1,
    tongue,
  }: {
    readonly clock?: number | undefined;
    readonly zoomed?: number;
    readonly tongue?: OtherTongue;
  } = {},
): Promise<void> {
  const app = await openApp({ tongue, ...(clock === undefined ? {} : { clock }) });
  const baker = new Baker(app);
  for (const [n, { name, go }] of pages.entries()) {
    await go(baker).catch(async (e: unknown) => {
      await app.screenshot('look-failed');
      throw e;
    });
    await app.turn(1_000);
    await lookAt(app, name, waysOf(n, name));
    if (n % zoomed === 0) await checkSmallPage(app, `${name}, at 200 %`);
  }
  expectNoFaults(app.faults);
  await app.close();
}
