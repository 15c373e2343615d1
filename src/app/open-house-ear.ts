import { createSignal } from 'solid-js';
import type { Ear, VoiceRows } from '../../machines/ear-port.ts';
import { StoreError } from '../../machines/ports.ts';
import { EAR_WEIGHT } from '../core/ear/ear-weight.ts';
import { keyOfPerson, readPeople, type PersonRow } from '../core/ear/read-person.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import { tongue } from '../core/speech/tongue.ts';
import type { NotWritten } from '../screens/house-circle.ts';
import type { HouseEar } from '../screens/house-ear.ts';

/**
 * The ear with the voices that are kept here. Rejects with a StoreError where they cannot be read; rows that
 * make no sense are nobody's, and whoever's they were speaks anew.
 */
export async function openHouseEar(
  ear: Ear,
  rows: VoiceRows,
  holds: boolean,
  choose: (ear: Equipment['ear']) => void,
): Promise<HouseEar> {
  const found = await rows.load();
  // A change of it opens the page anew.
  const spoken = tongue();
  const [people, setPeople] = createSignal(readPeople(found, spoken));
  const keyOf = (id: string): string => keyOfPerson(id, spoken);
  const put = async (changed: ReadonlyMap<string, unknown>): Promise<NotWritten | null> => {
    if (!holds) return 'closed';
    try {
      await rows.write(changed);
      return null;
    } catch (error) {
      return error instanceof StoreError && error.trouble === 'full' ? 'full' : 'closed';
    }
  };
  return {
    people,
    weighs: EAR_WEIGHT,
    fetch: (engine) => ear.fetch(engine),
    take: (engine, onSpeaks) => ear.take(engine, onSpeaks),
    listen: (ask, tell) => ear.listen(ask, tell),
    tone: (which) => ear.tone(which),
    async keep(person) {
      const row: PersonRow = { ...person, tongue: spoken };
      const why = await put(new Map([[keyOf(person.id), row]]));
      if (why === null) setPeople((all) => [...all.filter(({ id }) => id !== person.id), person]);
      return why;
    },
    async forget(id) {
      const why = await put(new Map([[keyOf(id), null]]));
      if (why === null) setPeople((all) => all.filter((one) => one.id !== id));
      return why;
    },
    async forgetAll() {
      // Rows that nobody could read go too, and those of other tongues.
      const keys = new Set([...found.keys(), ...people().map(({ id }) => keyOf(id))].map(String));
      const why = await put(new Map([...keys].map((key) => [key, null])));
      if (why !== null) return why;
      setPeople([]);
      choose('off');
      return null;
    },
  };
}
