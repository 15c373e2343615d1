import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { metaOf } from '../../../machines/kitchen/stage-of.ts';
import type { LaneVessel } from '../../core/records/position.ts';
import type { BakeStage, LaneStage, OvenStage } from '../../core/records/stage.ts';
import { bakeWords } from '../../core/speech/words/bake-words.ts';
import { denseCooling } from '../../core/speech/words/cool.ts';
import { manyWords, potsWords } from '../../core/speech/words/oven-many.ts';
import { rackWords } from '../../core/speech/words/oven-rack.ts';
import { basketWords } from '../../core/speech/words/shape.ts';
import { standOutWords } from '../../core/speech/words/proof.ts';
import type { countdown } from '../../core/speech/words/running.ts';
import { stoneWords } from '../../core/speech/words/oven-stone.ts';
import { trayWords } from '../../core/speech/words/oven-tray.ts';
import { tinWords } from '../../core/speech/words/oven-tin.ts';
import { overWords, ovenWords } from '../../core/speech/words/oven.ts';
import { isLane } from '../../core/records/lane.ts';
import { lids } from '../../core/kitchen/warn-of.ts';
import { careLines } from '../../core/speech/words/care.ts';
import { loadOver } from './gone-over.ts';
import { counterOf } from './counter-of.ts';
import { isOut } from './stood-out.ts';
import type { StageWords } from '../../core/speech/words.ts';
import type { Equipment } from '../../core/kitchen/equipment.ts';
import type { Focus } from '../focus.ts';
import { heatedLanes, nextLoad } from './next-load.ts';

/** What the oven says otherwise for what it is made ready for. */
const VESSEL_WORDS: Readonly<
  Record<LaneVessel, Readonly<Partial<Record<OvenStage, Partial<StageWords>>>>>
> = {
  pot: {},
  stone: stoneWords,
  tin: tinWords,
  tray: trayWords,
};

const outWords: Readonly<Partial<Record<BakeStage, StageWords>>> = standOutWords;

/** From here on a loaf is a dense rye, which sets for 12 to 24 hours (common practice, no source). */
const DENSE = 12 * 60;

/** Pots that heat, or will once the oven is turned on. */
const potsIn = ({ oven }: Kitchen, equipment: Equipment): number =>
  (oven.context.lanes ?? heatedLanes(equipment)).length;

/**
 * The words of a stage: the bake's own, or the oven's for what it is made ready for and for as many
 * loaves as are in it, or go in next.
 */
export const wordsOf = (
  kitchen: Kitchen,
  { who, bake }: Focus,
  stage: string,
  equipment: Equipment,
): StageWords => {
  if (who !== 'oven' && !isLane(who)) {
    const stands = stage === 'shape.basket' ? counterOf(bake.context) : null;
    if (stands !== null) return stands > 0 ? basketWords.counter : basketWords.fridge;
    const dense = stage === 'cool.cooling' && bake.context.recipe.process.cool >= DENSE;
    const out = isOut(bake.context) ? outWords[stage as BakeStage] : undefined;
    return dense ? denseCooling : (out ?? bakeWords[stage as BakeStage]);
  }
  const lane = kitchen.lanes[who]?.context;
  const vessel = lane?.vessel ?? kitchen.oven.context.vessel;
  const one = { ...ovenWords[stage as OvenStage], ...VESSEL_WORDS[vessel][stage as OvenStage] };
  const count = lane?.loaves.length ?? nextLoad(kitchen, equipment).length;
  const several = vessel === 'pot' && potsIn(kitchen, equipment) > 1;
  const told = stage === 'turnOn' && lids(bake.context.recipe, equipment).length > 0;
  const words = {
    ...one,
    ...(count > 1 && vessel !== 'tray' ? manyWords[vessel][stage as OvenStage] : {}),
    ...(several ? potsWords[stage as OvenStage] : {}),
    // What this kitchen said of its own lids and parchment is told instead of the usual.
    ...(told ? { care: careLines.RING } : {}),
  };
  const rack = lane?.onRack ? rackWords[stage as LaneStage] : undefined;
  if (rack) return { ...words, ...rack };
  const over = stage === 'score' && loadOver(kitchen, bake.context.id);
  return over ? { ...words, ...overWords.score } : words;
};

/** What a bench's countdown runs to, by the name of its words; null where nothing runs. What heats is named. */
export const waitsOf = (
  kitchen: Kitchen,
  { who, machine }: Focus,
  equipment: Equipment,
): keyof typeof countdown | null => {
  const waits = (metaOf(machine).waits ?? null) as keyof typeof countdown | null;
  if (waits !== 'hot') return waits;
  const lane = kitchen.lanes[who]?.context;
  const vessel = lane?.vessel ?? kitchen.oven.context.vessel;
  if (vessel === 'stone') return 'hotStone';
  if (vessel === 'tin') return 'hotOven';
  return lane === undefined && potsIn(kitchen, equipment) > 1 ? 'hotPots' : 'hot';
};
