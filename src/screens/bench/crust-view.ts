import { atCrust } from '../../../machines/kitchen/at-crust.ts';
import type { Kitchen, LaneSnapshot } from '../../../machines/kitchen/kitchen.ts';
import type { Metres } from '../../core/oven/boiling.ts';
import { judgeCrust, type CrustJudged } from '../../core/oven/judge-crust.ts';
import { crust, crustActs, type CrustAct, type CrustWhy } from '../../core/speech/en/crust.ts';
import { bakeIn, type Focus } from '../focus.ts';
import type { Asked, Press } from './view.ts';

type AtLane = Focus & { readonly machine: LaneSnapshot };

/** Whether the focus is a lane: what is judged is in it. */
const isLane = (focus: Focus): focus is AtLane =>
  'loaves' in focus.machine.context && !('recipe' in focus.machine.context);

/** Only out of a pot, and once. */
const mayLeavePot = ({ machine }: AtLane): boolean =>
  machine.context.vessel === 'pot' && machine.context.onRack !== true;

const whyStays = ({ reasons }: CrustJudged): CrustWhy => {
  if (reasons.includes('pale')) return 'pale';
  if (reasons.includes('tent')) return 'tent';
  if (reasons.includes('baseDull') || reasons.includes('coreLow')) return 'raw';
  return reasons.includes('early') ? 'early' : 'unsure';
};

const because = (judged: CrustJudged, inPot: boolean): string => {
  const { verdict, reasons } = judged;
  if (verdict === 'fiveMore') return crust.stays[whyStays(judged)];
  if (verdict === 'out' && reasons.includes('dark')) return crust.because.dark;
  return crust.because[verdict === 'outOfPotOnRack' && !inPot ? 'onRack' : verdict];
};

const actOf = ({ verdict, reasons }: CrustJudged, inPot: boolean): CrustAct => {
  if (verdict === 'fiveMore') return 'crustNotYet';
  if (verdict === 'outOfPotOnRack') return inPot ? 'crustOnRack' : 'crustNotYet';
  return reasons.includes('dark') ? 'crustOver' : 'crustReady';
};

/** Whether a core was measured for this look: then it is not asked for again. */
export const coreIsRead = (kitchen: Kitchen, focus: Focus): boolean =>
  isLane(focus) &&
  focus.machine.context.answers['core'] === undefined &&
  atCrust(kitchen, focus.who, focus.machine, bakeIn(kitchen, focus)).cores.length > 0;

/**
 * All signs of a crust are in: the likeliest act is the slab, the others are tiles, and what one more
 * sign would tell is said behind why. Hands beat the model. Null where nothing bakes here.
 */
export function crustView(kitchen: Kitchen, focus: Focus, height: Metres): Asked | null {
  if (!isLane(focus)) return null;
  const { who, machine } = focus;
  const judged = judgeCrust(atCrust(kitchen, who, machine, bakeIn(kitchen, focus), height));
  const inPot = mayLeavePot(focus);
  const first = actOf(judged, inPot);
  const press = (act: CrustAct): Press => ({
    label: crustActs[act].label,
    deed: { kind: 'press', who, act },
  });
  const others = (Object.keys(crustActs) as CrustAct[]).filter(
    (act) => act !== first && (inPot || act !== 'crustOnRack'),
  );
  const ask = judged.ask === null ? undefined : crust.asks[judged.ask.key];
  const words = [because(judged, inPot), ask].filter(Boolean).join(' ');
  return {
    headline: crust.headline,
    detail: words,
    spoken: words,
    slab: { ...crustActs[first], deed: press(first).deed },
    tiles: others.map(press),
    third: 'weigh',
  };
}
