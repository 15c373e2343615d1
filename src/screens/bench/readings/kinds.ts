import type { NumberSlot } from '../../../core/records/reading-slot.ts';
import { reading, readingNames, riseInJar } from '../../../core/speech/words/readings.ts';
import { fill } from '../../../core/speech/fill.ts';
import { numberPage, picturePage, type PicturePage, type ReadingPage } from './page.ts';

/** One way of taking a reading: a tile of the first page, and where it leads. */
export interface Kind {
  readonly id: string;
  readonly label: string;
  readonly page: ReadingPage;
}

const keyed = (slot: NumberSlot, label = readingNames[slot]): Kind => ({
  id: slot,
  label,
  page: numberPage(slot),
});
const seen = (slot: PicturePage['slot'], label = readingNames[slot]): Kind => ({
  id: `${slot} by eye`,
  label,
  page: picturePage(slot),
});
const rise = (slot: 'rise.dough' | 'rise.levain'): readonly [Kind, Kind] => [
  seen(slot, fill(reading.byEye, { name: readingNames[slot] })),
  keyed(slot, fill(reading.inPercent, { name: readingNames[slot] })),
];

/** Every kind, in the words that stand: what belongs to one part of a bake alone comes last. */
function kinds(): {
  readonly all: readonly Kind[];
  readonly byPart: Readonly<Record<string, readonly Kind[]>>;
} {
  const dough = keyed('doughTemperature');
  const kitchen = keyed('kitchenTemperature');
  const core = keyed('coreTemperature');
  const flour = keyed('flourTemperature');
  const levain = keyed('levainTemperature');
  const filling = keyed('fillingTemperature');
  const tap = keyed('water.tap');
  const poured = keyed('water.bowl');
  const jar: Kind = {
    id: 'rise in a jar',
    label: riseInJar.name,
    page: { ...picturePage('rise.dough'), jar: true },
  };
  const edge = seen('edge');
  const growth = seen('growth');
  const poke = seen('poke');
  const crust = seen('crust');
  const doughWeight = keyed('weight.dough');
  const piece = keyed('weight.piece');
  const loaf = keyed('weight.loaf');

  const all = [
    dough,
    ...rise('rise.dough'),
    jar,
    edge,
    kitchen,
    growth,
    poke,
    core,
    crust,
    doughWeight,
    piece,
    loaf,
    ...rise('rise.levain'),
    levain,
    flour,
    tap,
    poured,
    filling,
  ];

  // What makes sense in each part; the oven’s stages have no part of their own.
  const byPart = {
    read: [kitchen],
    levain: [...rise('rise.levain'), levain, flour, tap, kitchen],
    mix: [dough, flour, levain, tap, poured, kitchen, doughWeight],
    bulk: [dough, ...rise('rise.dough'), jar, edge, kitchen, filling],
    shape: [piece, dough, kitchen],
    proof: [growth, poke, core, kitchen],
    oven: [core, crust, poke],
    cool: [core, loaf, crust, kitchen],
  };
  return { all, byPart };
}

/** Every kind of reading, those that make sense at this stage before the others. */
export function kindsAt(stage: string): {
  readonly first: readonly Kind[];
  readonly others: readonly Kind[];
} {
  const { all, byPart } = kinds();
  const first = byPart[stage.includes('.') ? (stage.split('.')[0] ?? '') : 'oven'] ?? [];
  const ids = new Set(first.map(({ id }) => id));
  return { first, others: all.filter(({ id }) => !ids.has(id)) };
}
