import { MACHINES, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { Deed } from '../core/records/fact.ts';
import { JOINS } from '../core/records/stage.ts';
import { joinsOf } from '../core/records/stages-of.ts';
import { trouble, troubleLines } from '../core/speech/words/trouble.ts';
import { fill } from '../core/speech/fill.ts';
import type { Lost, Told } from '../screens/house.ts';
import type { KitchenTime } from './kitchen-time.ts';
import type { Opened } from './open-log.ts';
import { canStandAt, positionSaid } from './recover.ts';

export interface FindPlaceParts {
  readonly opened: Opened;
  readonly kitchen: Kitchen;
  readonly time: KitchenTime;
  readonly take: (deed: Deed) => Promise<void>;
  readonly tell: (notice: Told) => void;
  readonly saveAsFile: () => void;
  readonly done: () => void;
}

/**
 * A log that does not fold to where it says it stood: the last stored position is taken if these
 * machines know its stages, else the baker is asked. Either way the rebuild is itself a fact. A row
 * that cannot be read, or a newer version's, is told by name and nothing is written over it.
 */
export async function findPlace(parts: FindPlaceParts): Promise<Lost | null> {
  const { opened, kitchen, time, take, tell, saveAsFile, done } = parts;
  const found = opened.trouble;
  if (found?.kind === 'unreadable') {
    const { path, expected, got } = found.reason;
    const text =
      path === 'machineVersion'
        ? fill(trouble.logNewer, { version: got })
        : fill(trouble.logUnreadable, {
            path: path || 'row',
            expected,
            got,
            seq: found.seq,
            last: found.seq - 1,
          });
    tell({ id: 'log', text, action: { label: troubleLines.saveAsFile, press: saveAsFile } });
  }
  if (found?.kind !== 'differs') return null;
  if (canStandAt(found.last, kitchen, MACHINES)) {
    await take({ kind: 'jump', position: found.last });
    tell({ id: 'log', text: fill(trouble.logMismatch, { seq: found.seq }), action: null });
    return null;
  }
  return {
    bakes: Object.entries(found.last.bakes).map(([id, { start }]) => {
      const recipe = kitchen.starts[start]?.recipe;
      return {
        id,
        name: recipe?.formula.name ?? id,
        joins: recipe ? joinsOf(recipe.process) : JOINS,
      };
    }),
    async put(places) {
      const { at } = time.read(found.last.now);
      await take({ kind: 'jump', position: positionSaid(found.last, places, at) });
      done();
    },
  };
}
