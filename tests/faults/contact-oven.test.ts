import { expect, it } from 'vitest';
import { Baker } from '../browser/harness/baker.ts';
import { expectNoFaults } from '../browser/harness/faults.ts';
import { hotOven, openAt } from '../browser/harness/hot-oven.ts';
import { press } from '../browser/harness/page-step.ts';
import { readScreen } from '../browser/harness/screen.ts';
import { Walker } from '../browser/harness/walker.ts';
import { contact } from './support/contact.ts';
import { SLICES } from './support/slices.ts';

/** Five loaves through two pots: every state of the oven and its lanes, and the page of the pots. */
it.each(SLICES)('photographs two pots at once: %s', async (_, slice) => {
  const app = await openAt(hotOven(['left', 'right'], 5), { viewport: slice.view });
  const baker = new Baker(app);
  const { shoot, lay } = contact(app, 'oven', slice);
  const walker = new Walker(baker, { takeBack: [], reload: [] });
  const seen = new Set<string>();
  const shootOnce = async (): Promise<void> => {
    const { headline, place, call, gate } = await readScreen(app.page);
    const [beside] = (await app.page.locator('.act-care, .act-more').allInnerTexts()).join(' ');
    const state = `${headline} ${call ?? ''} ${gate} ${beside}`;
    if (seen.has(state)) return;
    seen.add(state);
    await shoot(`${place || 'gate'}: ${headline}${call ? ', rings' : ''}`);
  };
  const pots = async (): Promise<void> => {
    await press(baker, ['More']);
    await shoot('more');
    await press(baker, ['Show the pots']);
    await app.page.locator('.lanes-chart').waitFor();
    await shoot('pots');
    await press(baker, ['As a table']);
    await shoot('pots as a table');
    await press(baker, ['Loaves that wait']);
    await shoot('loaves that wait');
    await press(baker, ['Loaf 5']);
    await shoot('a loaf’s turn');
    await press(baker, ['Leave it as it is', 'Back to the pots', 'Stop using a pot']);
    await shoot('a pot is out');
    await press(baker, ['Right pot is out']);
    await shoot('is it out?');
    await press(baker, ['No', 'Back to the pots', 'Back to the bench']);
  };
  for (let steps = 0, isShown = false; steps < 150; steps += 1) {
    await shootOnce();
    const at = await walker.clear();
    await shootOnce();
    if (!isShown && at.left !== null && seen.size > 12) {
      isShown = true;
      await pots();
    }
    if (at.left !== null) await app.turn(at.left);
    else await walker.act(at);
    if (at.headline === 'Let the loaves cool') break;
  }
  await lay();
  expect(seen.size).toBeGreaterThan(20);
  expectNoFaults(app.faults);
  await app.close();
});
