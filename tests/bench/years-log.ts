import type { Deed, Fact } from '../../src/core/records/fact.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { DAY, HOUR, type Instant } from '../../src/core/units.ts';
import { MACHINE_VERSION } from '../../machines/kitchen/kitchen.ts';
import { makeRow } from '../fakes/records.ts';
import { RECIPE } from '../machines/support/recipe.ts';

const BREADS = ['Lane wheat', 'Cherry and hazelnut', 'Barley tin', 'Olive and seed'] as const;
const NOTES = ['good', 'under', 'over', 'dark', 'pale', 'Less water next time', undefined] as const;

/**
 * A log of very many bakes, the last of them over a day before `until`: invented, and thinner than a real
 * one. Of each there are five rows: its start, three readings, and the note of its end; a bake that was
 * walked through leaves some eighty. No machine comes to their places: the kitchen is told at the end, by a
 * jump, that nothing runs in it, and is opened from there.
 */
export function yearsLog(bakes: number, until: Instant): readonly LogRecord[] {
  const rows: LogRecord[] = [];
  const put = (deed: Deed, at: Instant): void => {
    const seq = rows.length + 1;
    const fact = { ...deed, id: `f${seq}`, device: 'counter', at, raw: at } as Fact;
    const { position } = makeRow(seq);
    const attention = { heard: [], snoozed: {} };
    rows.push({
      seq,
      machineVersion: MACHINE_VERSION,
      fact,
      position: { ...position, now: at, attention },
    });
  };
  for (let n = 0; n < bakes; n += 1) {
    const at = until - (bakes - n + 1) * DAY;
    const bake = `bake-${n + 1}`;
    const name = BREADS[n % BREADS.length]!;
    const formula = { ...RECIPE.formula, id: `years-${n % BREADS.length}`, name };
    put(
      {
        kind: 'start',
        bake,
        loaves: [`${bake}.1`, `${bake}.2`],
        from: 'read.plan',
        recipe: { ...RECIPE, formula },
        kitchen: 22,
      },
      at,
    );
    const readings = [24.5, 25.5, 26] as const;
    readings.forEach((celsius, i) =>
      put(
        { kind: 'reading', by: 'hand', bake, reading: { what: 'doughTemperature', celsius } },
        at + (i + 1) * HOUR,
      ),
    );
    const text = NOTES[n % NOTES.length];
    put(
      { kind: 'press', who: bake, act: 'noted', ...(text === undefined ? {} : { text }) },
      at + 8 * HOUR,
    );
  }
  const { position } = rows.at(-1)!;
  put({ kind: 'jump', position }, position.now + HOUR);
  return rows;
}
