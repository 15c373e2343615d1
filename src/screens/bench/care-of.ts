import type { BakeSnapshot, Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { deadlineOf } from '../../../machines/kitchen/dues.ts';
import { metaOf } from '../../../machines/kitchen/stage-of.ts';
import type { Notice } from '../../core/formula/notice.ts';
import type { Equipment } from '../../core/kitchen/equipment.ts';
import { fitsPot, potsOf } from '../../core/kitchen/pots.ts';
import { coldWarnings, warnOf } from '../../core/kitchen/warn-of.ts';
import { laneOf } from '../../core/records/lane.ts';
import { tickedLines } from '../../core/records/ticked.ts';
import { careLines } from '../../core/speech/words/care.ts';
import { night } from '../../core/speech/words/kitchen.ts';
import { fill } from '../../core/speech/fill.ts';
import { tellNotice } from '../../core/speech/tell-notice.ts';
import { HOUR, type Celsius, type Instant, type Units } from '../../core/units.ts';
import type { Focus } from '../focus.ts';
import { nextLane } from '../pot-of.ts';

/** A wait this long is slept through: the tablet needs its plug and the baker another alarm. */
const NIGHT_MS = 6 * HOUR;

const nightCare = (
  stage: string,
  deadline: Instant | null,
  now: Instant,
  hour: (at: Instant) => string,
): string | null =>
  stage === 'proof.retard' && deadline !== null && deadline - now >= NIGHT_MS
    ? `${night.plug} ${fill(night.phone, { time: hour(deadline) })}`
    : null;

/** How warm its loaves go into the fridge: as last measured, else as the kitchen. */
const warmth = ({ context }: BakeSnapshot): Celsius => {
  const { reading } = context.readings['doughTemperature'] ?? {};
  return reading && 'celsius' in reading ? reading.celsius : context.kitchen;
};

/** Whether the loaf that goes in next would lift the lid of the pot it goes into. */
const potSmall = (
  kitchen: Kitchen,
  { bake }: Focus,
  stage: string,
  equipment: Equipment,
): readonly Notice[] => {
  const { piece, process } = bake.context.recipe;
  if (stage !== 'load' || process.vessel !== 'pot') return [];
  const lane = nextLane(kitchen);
  const pots = potsOf(equipment);
  const pot = pots.find(({ name }) => laneOf(name) === lane);
  return pot && !fitsPot(pot, piece) ? [{ key: 'potSmallHere', values: {} }] : [];
};

/** Loaves that went in since the oven was turned on. */
const loadedNow = ({ standing }: Kitchen): readonly string[] => {
  const on = standing.findLastIndex((fact) => fact.kind === 'press' && fact.act === 'ovenOn');
  return standing
    .slice(on + 1)
    .flatMap((fact) => (fact.kind === 'press' && fact.act === 'loaded' ? (fact.loaves ?? []) : []));
};

/** The first cold loaf of an oven that was turned on for warm ones: nobody spoke of its pot by then. */
const coldLate = (
  kitchen: Kitchen,
  { bake }: Focus,
  stage: string,
  equipment: Equipment,
): readonly Notice[] => {
  const loaded = stage === 'load' ? loadedNow(kitchen) : [];
  const isWarm = (loaf: string): boolean =>
    Object.values(kitchen.starts).findLast(({ loaves }) => loaves.includes(loaf))?.recipe.process
      .retard === 0;
  const told = loaded.length === 0 || !loaded.every(isWarm);
  return told ? [] : coldWarnings(bake.context.recipe, equipment);
};

/**
 * The caution of a step: what this kitchen cannot do first, then what the step always says or, of a
 * wait through the night, what the tablet needs. The read-through lists its own. Null: none.
 */
export function careOf(
  kitchen: Kitchen,
  focus: Focus,
  stage: string,
  usual: string | null,
  equipment: Equipment,
  units: Units,
  hour: (at: Instant) => string,
): string | null {
  const { machine, bake } = focus;
  const { recipe, loaves } = bake.context;
  const warned =
    stage === 'read.plan'
      ? []
      : [
          ...warnOf(stage, recipe, loaves.length, equipment, warmth(bake)),
          ...coldLate(kitchen, focus, stage, equipment),
          ...potSmall(kitchen, focus, stage, equipment),
        ].map((one) => tellNotice(one, units));
  const step = nightCare(stage, deadlineOf(machine), kitchen.now, hour) ?? usual;
  const fills = metaOf(machine).list === 'worked' && tickedLines(recipe, 'worked').length > 0;
  return (
    [...warned, ...(step ? [step] : []), ...(fills ? [careLines.ALLERGENS] : [])].join(' ') || null
  );
}
