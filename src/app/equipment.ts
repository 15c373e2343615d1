import { createSignal, type Accessor } from 'solid-js';
import type { Settings } from '../../machines/ports.ts';
import type { Misread } from '../core/formula/read-fields.ts';
import { EQUIPMENT, type Equipment } from '../core/kitchen/equipment.ts';

const NAME = 'equipment';

/** The reader comes with the first thing kept: a new tablet is shown without it. */
const read = async (kept: unknown) =>
  (await import('../core/kitchen/read-equipment.ts')).readEquipment(kept);
const NOTHING = { equipment: EQUIPMENT, reason: null };

export interface KeptEquipment {
  readonly equipment: Accessor<Equipment>;
  /** Shown at once, then written; a setting that cannot be written still holds for this page. */
  equip(change: Partial<Equipment>): void;
  /** Why what was kept could not be read; it is left as it is until something is changed. */
  readonly misread: Misread | null;
}

/** @param keeps false in a rehearsal: what is changed there is gone with it */
export async function openEquipment(settings: Settings, keeps: boolean): Promise<KeptEquipment> {
  const kept = await settings.get(NAME).catch(() => undefined);
  const found = kept === undefined ? NOTHING : await read(kept);
  const [equipment, setEquipment] = createSignal(found.equipment ?? EQUIPMENT);
  return {
    equipment,
    equip(change) {
      setEquipment((old) => ({ ...old, ...change }));
      if (keeps) void settings.set(NAME, equipment()).catch(() => undefined);
    },
    misread: found.reason ?? null,
  };
}
