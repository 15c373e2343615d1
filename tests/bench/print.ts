import { builtSite } from '../browser/harness/built-site.ts';
import { firstLoad } from '../browser/harness/first-load.ts';
import { asBuilt } from './as-built.ts';
import { earRows } from './ear/ear-rows.ts';
import { earShare } from './ear/open-share.ts';
import { pressToPaint } from './first-screens.ts';
import { interactionToPaint } from './inp.ts';
import { manyBakes } from './many-bakes.ts';
import { manyOrders } from './many-orders.ts';
import { pressToMoved } from './moved.ts';
import { refold } from './refold.ts';
import { showSpread } from './spread.ts';

/** `npm run bench`: figures of this machine, as it is just now. */
const SPREAD = 'p50 / p95 / worst';
const WIDE = 92;
const site = await builtSite();
/** Told as soon as it is known: the whole table takes its minutes. */
const tell = (name: string, figure: string): void => console.log(`${name.padEnd(WIDE)}  ${figure}`);
tell('first load, script and style, gz', `${(firstLoad(site).bytes / 1000).toFixed(1)} kB`);
const fold = refold(3000);
tell(`refold of ${fold.facts} facts`, `${fold.ms.toFixed(0)} ms`);
const { beliefUpdate } = await asBuilt<typeof import('./belief.ts')>('./belief.ts');
const update = beliefUpdate();
tell(
  `belief and window over 48 h, ${update.signs} signs, p50 / p95`,
  `${update.p50.toFixed(2)} / ${update.p95.toFixed(2)} ms`,
);
const { againstSolver, planTimes } = await asBuilt<typeof import('./planner.ts')>('./planner.ts');
for (const { what, times } of planTimes()) {
  const [p50, p95, worst] = [times.p50, times.p95, times.worst].map((ms) => ms.toFixed(2));
  tell(`${what}, ${times.presses} questions, ${SPREAD}`, `${p50} / ${p95} / ${worst} ms`);
  // A kitchen tablet's script runs at about an eighth of this machine's: a judgement, none was measured.
  tell('  on a tablet, eight times as long', `about ${(8 * times.p50).toFixed(0)} ms`);
}
for (const { batches, median, of } of await againstSolver())
  tell(
    `plans of ${batches} at once, ${of} questions: faster than the solver HiGHS by`,
    `${median.toFixed(0)}×`,
  );
for (const throttle of [1, 6]) {
  const times = await pressToPaint(site, throttle);
  tell(`press → paint at ${throttle}×, ${times.presses} presses, ${SPREAD}`, showSpread(times));
}
const moved = await pressToMoved(site, 6);
tell(
  `reading taken → moved hour painted at 6×, ${moved.presses} readings, ${SPREAD}`,
  showSpread(moved),
);
for (const [page, ms] of await manyOrders(site, 4))
  tell(`circle of 2,000 orders at 4×, ${page}`, `${ms.toFixed(0)} ms`);
const bakes = await manyBakes(site, 5_000, 4);
const [unslowed, slowed] = bakes.opens.map((ms) => (ms / 1000).toFixed(1));
tell(
  'app with 5,000 bakes of five rows, load → start page, at 1× and 4×',
  `${unslowed} / ${slowed} s`,
);
for (const [what, ms] of bakes.presses)
  tell(`log of 5,000 bakes at 4×, ${what}`, `${ms.toFixed(0)} ms`);
tell(
  `log of 5,000 bakes at 4×, scrolled, ${bakes.frames.presses} frames, ${SPREAD}`,
  showSpread(bakes.frames),
);
for (const [kind, times] of await interactionToPaint(site, 6)) {
  tell(`INP at 6×, ${kind}, ${times.presses} presses, ${SPREAD}`, showSpread(times));
}
const ear = await earShare(site);
const [before, open, shut] = [ear.before, ear.open, ear.shut].map((its) => (100 * its).toFixed(1));
tell(
  'ear, share of a core: before it was opened / open in a kitchen / shut again',
  `${before} / ${open} / ${shut} %`,
);
// A thread cannot be slowed by itself.
tell(
  '  on a tablet, four times as much',
  `about ${(400 * ear.open).toFixed(0)} % while it is open`,
);
console.log(await earRows(tell));
