import { atDoor } from '../../../machines/kitchen/at-door.ts';
import { mayBakeFlat } from '../../../machines/kitchen/press-oven.ts';
import { othersAreFresh } from '../../../machines/oven/oven-setup.ts';
import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import type { OvenAct } from '../../core/records/fact.ts';
import { doorPoke, type DoorJudged, type DoorVerdict } from '../../core/oven/door-poke.ts';
import { doorBecause, doorWords } from '../../core/speech/words/door.ts';
import { verdicts } from '../../core/speech/words/verdicts.ts';
import type { Focus } from '../focus.ts';
import type { Asked } from './view.ts';

type DoorAct = Extract<OvenAct, 'pokeReady' | 'pokeNotYet' | 'pokeOver' | 'pokeFlat'>;

const ACT: Readonly<Record<DoorVerdict, DoorAct>> = {
  bakeNow: 'pokeReady',
  warm: 'pokeNotYet',
  bakeFirst: 'pokeOver',
  switchGoal: 'pokeFlat',
};
const LABELS = {
  pokeReady: verdicts.poke.acts.ready,
  pokeNotYet: verdicts.poke.acts.notYet,
  pokeOver: verdicts.poke.acts.over,
  pokeFlat: doorWords.flat,
} as const;

const because = ({ verdict, reasons }: DoorJudged, alone: boolean, goesLast: boolean): string => {
  if (verdict === 'warm') return goesLast ? doorBecause.goesLast : verdicts.poke.because.notYet;
  if (verdict === 'switchGoal') return doorBecause.switchGoal;
  if (verdict === 'bakeFirst') return alone ? doorBecause.bakeSoon : doorBecause.bakeFirst;
  if (reasons.includes('coldDentWeak')) return doorBecause.coldDent;
  if (reasons.includes('disagree')) return doorBecause.disagree;
  if (reasons.includes('signsReady')) return doorBecause.ready;
  return reasons.includes('indexReady') ? doorBecause.byClock : doorBecause.unsure;
};

const slabOf = (verdict: DoorVerdict, act: DoorAct, alone: boolean, goesLast: boolean) => {
  if (verdict === 'bakeFirst' && !alone) return doorWords.bakeFirst;
  return verdict === 'warm' && goesLast ? doorWords.goesLast : LABELS[act];
};

/**
 * The poke at the oven's door is told: the likeliest act is the slab, the others are tiles. The loaf
 * that is poked is the next one in, so that baking it first is to bake it now. `over`: it was called
 * over at its look before.
 */
export function doorView(kitchen: Kitchen, { who, bake }: Focus, over: boolean): Asked {
  const alone = kitchen.oven.context.waiting.length < 2;
  const goesLast = othersAreFresh(kitchen.oven.context);
  const signs = atDoor(kitchen, bake);
  const judged: DoorJudged = over
    ? { verdict: 'switchGoal', reasons: ['signsOver'], minutes: null }
    : doorPoke(signs);
  const flat = mayBakeFlat(kitchen);
  const told = ACT[judged.verdict];
  // Its bake was let go on though over: a shallow cut then, and flat where the hands say so.
  const first = told === 'pokeFlat' && (over || !flat) ? 'pokeOver' : told;
  const why = over ? verdicts.poke.because.over : because(judged, alone, goesLast);
  const deed = (act: DoorAct) => ({ kind: 'press', who, act }) as const;
  // What is over is never told to wait; baked flat is only that, or what hands may find over by its dent.
  const isOver = told === 'pokeOver' || told === 'pokeFlat';
  const mayBe: Readonly<Partial<Record<DoorAct, boolean>>> = {
    pokeNotYet: !isOver,
    pokeFlat: flat && (isOver || signs.dent === 'stays'),
  };
  const others = (Object.keys(LABELS) as DoorAct[]).filter(
    (act) => act !== first && mayBe[act] !== false,
  );
  const own = slabOf(judged.verdict, first, alone, goesLast);
  return {
    headline: verdicts.poke.headline,
    detail: why,
    spoken: why,
    slab: { ...own, deed: deed(first) },
    tiles: others.map((act) => ({ label: LABELS[act].label, deed: deed(act) })),
  };
}
