import { createSignal } from 'solid-js';
import { NO_EAR } from '../core/ear/shown.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import type { House } from '../screens/house.ts';
import type { World } from './world.ts';

/** The ear and the voices it knows, opened when they are first wanted; once, unless that failed. */
export function laterEar(
  world: Pick<World, 'ear' | 'voices' | 'holds'>,
  choose: (ear: Equipment['ear']) => void,
): Pick<House, 'ear' | 'hearing' | 'showHearing'> {
  const [hearing, showHearing] = createSignal(NO_EAR);
  let coming: ReturnType<House['ear']> | null = null;
  const ear: House['ear'] = () =>
    (coming ??= Promise.all([import('./open-house-ear.ts'), world.ear(), world.voices()])
      .then(([its, ear, rows]) => its.openHouseEar(ear, rows, world.holds, choose))
      .catch((error: unknown) => {
        coming = null;
        throw error;
      }));
  return { ear, hearing, showHearing };
}
