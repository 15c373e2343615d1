import type { Component, JSX } from 'solid-js';
import { Control } from '../../../src/parts/Control.tsx';
import { Slab } from '../../../src/parts/Slab.tsx';
import { Words } from '../../../src/parts/Words.tsx';
import { DayPage } from '../../../src/screens/day/DayPage.tsx';
import { DayTable } from '../../../src/screens/day/DayTable.tsx';
import { TapeFace } from '../../../src/screens/day/TapeFace.tsx';
import { RECIPE } from '../../machines/support/recipe.ts';
import { HOUR } from '../../../src/core/units.ts';
import { READ, saturday, SATURDAY_NOON } from '../day/saturday.ts';

const tape = (loaves: readonly number[], due = SATURDAY_NOON, table = false): JSX.Element => {
  const day = saturday(
    ...loaves.map((count, i) => ({
      formula: { ...RECIPE.formula, process: RECIPE.process, name: ['Cherry', 'Lane wheat'][i]! },
      loaves: count,
      due,
    })),
  );
  const mark = (batch: string) =>
    loaves.length < 2 ? null : day.batches.findIndex(({ name }) => name === batch) + 1;
  const read = { ...READ, mark, stays: ({ name }: { readonly name: string }) => name === 'mix' };
  const told = { headline: 'Ready Sat 12:00', detail: 'Cherry, 6 loaves. Kitchen 22 °C.' };
  const its = table ? (
    <div class="day-tape">
      <Words {...told}>
        <DayTable house={READ} day={day} read={read} />
      </Words>
    </div>
  ) : (
    <TapeFace {...{ day, read, ...told }} alt="The day on a tape." onTouch={() => {}} />
  );
  return (
    <DayPage
      wide
      caption=""
      words={its}
      slab={<Slab label="Take this plan" then="feed Thu 22:25, 1:5:5" onPress={() => {}} />}
      controls={['Change it', 'Say the day', 'More'].map((label) => (
        <Control label={label} onPress={() => {}} />
      ))}
    />
  );
};

/** The tape of one bake, of a big one, and of two at once, and the same as a table. */
export const dayScenes: Record<string, Component> = {
  'day-one': () => tape([6]),
  'day-big': () => tape([12], SATURDAY_NOON + 6 * HOUR),
  'day-two': () => tape([2, 2]),
  'day-table': () => tape([2, 2], SATURDAY_NOON, true),
};
