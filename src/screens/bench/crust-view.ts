import { atCrust } from '../../../machines/kitchen/at-crust.ts';
import { moreMinutesAt } from '../../../machines/kitchen/core-looks.ts';
import type { Kitchen, LaneSnapshot } from '../../../machines/kitchen/kitchen.ts';
import type { Metres } from '../../core/oven/boiling.ts';
import { coreSays } from '../../core/oven/core-spots.ts';
import { coreTarget } from '../../core/oven/core-target.ts';
import { judgeCrust, type CrustJudged, type CrustSigns } from '../../core/oven/judge-crust.ts';
import {
  crust,
  crustActs,
  crustMore,
  type CrustAct,
  type CrustWhy,
} from '../../core/speech/words/crust.ts';
import { said, shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { showHeat } from '../../core/speech/heats.ts';
import type { Minutes, Units } from '../../core/units.ts';
import type { Focus } from '../focus.ts';
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

/** Where the kitchen stands, and in what units its heats are told. */
export interface Here {
  readonly height: Metres;
  readonly units: Units;
}

/** How long a low core foretells, as it is shown and said; null where it foretells nothing to be told. */
function lowWords(
  judged: CrustJudged,
  more: Minutes | null,
  signs: CrustSigns,
  { height, units }: Here,
): { readonly detail: string; readonly spoken: string } | null {
  const why = whyStays(judged);
  const { core } = coreSays(signs.cores, signs);
  if (judged.verdict !== 'fiveMore' || more === null || core === null) return null;
  if (why !== 'raw' && why !== 'pale') return null;
  const facts = { crumbHeat: coreTarget(height).least, minutes: more };
  const [got = ''] = showHeat(core, units).split(' ');
  return {
    detail: fill(crust.low, { ...shown(facts, units), got }),
    spoken: fill(crust.more[why], said(facts, units)),
  };
}

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
  atCrust(kitchen, focus.who, focus.machine, focus.bake).cores.length > 0;

/**
 * All signs of a crust are in: the likeliest act is the slab, the others are tiles, and what one more
 * sign would tell is said behind why. Hands beat the model. Null where nothing bakes here.
 */
export function crustView(kitchen: Kitchen, focus: Focus, here: Here): Asked | null {
  if (!isLane(focus)) return null;
  const { who, machine } = focus;
  const signs = atCrust(kitchen, who, machine, focus.bake, here.height);
  const judged = judgeCrust(signs);
  const more = moreMinutesAt(kitchen, who, machine);
  const low = lowWords(judged, more, signs, here);
  const inPot = mayLeavePot(focus);
  const first = actOf(judged, inPot);
  const wordsOf = (act: CrustAct): { readonly label: string; readonly then: string } =>
    act === 'crustNotYet' && more !== null
      ? { ...crustMore, label: fill(crustMore.label, { count: more }) }
      : crustActs[act];
  const press = (act: CrustAct): Press => ({
    label: wordsOf(act).label,
    deed: { kind: 'press', who, act },
  });
  const others = (Object.keys(crustActs) as CrustAct[]).filter(
    (act) => act !== first && (inPot || act !== 'crustOnRack'),
  );
  const ask = judged.ask === null ? undefined : crust.asks[judged.ask.key];
  const words = (of: string): string => [of, ask].filter(Boolean).join(' ');
  const plain = because(judged, inPot);
  return {
    headline: crust.headline,
    detail: words(low?.detail ?? plain),
    spoken: words(low?.spoken ?? plain),
    slab: { ...wordsOf(first), deed: press(first).deed },
    tiles: others.map(press),
    third: 'weigh',
  };
}
