import { createSignal, type Accessor } from 'solid-js';
import type { Settings } from '../../machines/ports.ts';
import type { Misread } from '../core/formula/read-fields.ts';
import { EQUIPMENT, type Equipment } from '../core/kitchen/equipment.ts';
import { readEquipment } from '../core/kitchen/read-equipment.ts';

const NAME = 'equipment';

export interface KeptEquipment {
  readonly equipment: Accessor<Equipment>;
  /** Shown at once, then written; a setting that cannot be written still holds for this page. */
  equip(change: Partial<Equipment>): void;
  /** Why what was kept could not be read; it is left as it is until something is changed. */
  readonly misread: Misread | null;
}

/** @param keeps false in a rehearsal: what is changed there is gone with it */
export async function openEquipment(settings: Settings, keeps: boolean): Promise<KeptEquipment> {
  const found = readEquipment(await settings.get(NAME).catch(() => undefined));
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
