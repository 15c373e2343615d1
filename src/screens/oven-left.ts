import {
  MACHINES,
  type BakeSnapshot,
  type Kitchen,
  type StartFact,
} from '../../machines/kitchen/kitchen.ts';
import { loavesIn } from '../../machines/kitchen/lanes.ts';
import { bakeInput } from '../../machines/kitchen/pinned.ts';
import { soonBakes } from '../../machines/kitchen/settle.ts';
import { stageOf } from '../../machines/kitchen/stage-of.ts';

/** Whether a running bake has the oven, so that its own bench shows it. */
const isHad = (kitchen: Kitchen): boolean =>
  soonBakes(kitchen).length > 0 ||
  Object.values(kitchen.bakes).some((bake) => {
    const stage = stageOf(bake);
    return (
      stage === 'oven.queued' || (stage.startsWith('cool.') && stageOf(kitchen.oven) === 'turnOff')
    );
  });

/** The bake that ended last, by its id. */
const lastOver = ({ standing }: Kitchen): string | undefined => {
  const end = standing.findLast(
    (fact) => fact.kind === 'press' && (fact.act === 'ended' || fact.act === 'noted'),
  );
  return end?.kind === 'press' ? end.who : undefined;
};

/**
 * The start of the bake that is over and left the oven hot; null while the oven is off or a running
 * bake has it. It is the one whose loaves the oven had, else the one that ended last.
 */
export const leftBy = (kitchen: Kitchen): StartFact | null => {
  const { bakes, oven, starts } = kitchen;
  if (stageOf(oven) === 'off' || isHad(kitchen)) return null;
  const over = Object.values(starts).filter(({ bake }) => !(bake in bakes));
  const loaf = loavesIn(kitchen)[0] ?? oven.context.out.at(-1);
  const ended = lastOver(kitchen);
  return (
    over.findLast(({ loaves }) => loaf !== undefined && loaves.includes(loaf)) ??
    over.findLast(({ bake }) => bake === ended) ??
    over.at(-1) ??
    null
  );
};

/** That bake, as it stands at its end: the oven's bench is shown with its recipe. */
export const leftBake = (kitchen: Kitchen): BakeSnapshot | null => {
  const start = leftBy(kitchen);
  return (
    start &&
    MACHINES.bake.resolveState({
      value: 'ended',
      context: {
        ...bakeInput(start),
        marks: {},
        entered: { [start.from]: start.at },
        byDue: false,
        answers: {},
        tasks: {},
        touches: 0,
        readings: {},
      },
    })
  );
};

/** Every bake with a bench: those that run, and the one that left the oven hot. */
export const benches = (kitchen: Kitchen): readonly string[] => {
  const left = leftBy(kitchen);
  return left ? [...Object.keys(kitchen.bakes), left.bake] : Object.keys(kitchen.bakes);
};
