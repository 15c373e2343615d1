/** The last rise: into the cold and out of it, a warm place, and what a finger tells. */
import { lump } from '../kit/dough.ts';
import { flatHand, pokeHand } from '../kit/hands.ts';
import { waves } from '../kit/hot.ts';
import { CLAY, LINE, OCHRE, PAPER, TEAL, bench, cut, line, scene } from '../kit/ink.ts';
import { fridge } from '../kit/kitchen.ts';
import { clock, pointer } from '../kit/tools.ts';
import { basket } from '../kit/vessels.ts';
import type { Scenes } from '../scenes.ts';

/** A jar with a lid, its foot's middle at x, y. */
const jar = (x: number, y: number, paint: string, s = 1): string =>
  cut(`M${x - 12 * s} ${y}v${-24 * s}h${24 * s}v${24 * s}z`) +
  cut(`M${x - 12 * s} ${y}v${-15 * s}h${24 * s}v${15 * s}z`, paint) +
  cut(`M${x - 14 * s} ${y - 32 * s}h${28 * s}v${8 * s}h${-28 * s}z`, paint);

const full = (x: number, y: number, rx: number): string =>
  basket(x, y, rx, lump(x, y + 2, rx - 10, rx * 0.42));

const clearShelf = (): string =>
  scene(
    fridge(
      jar(100, 59, CLAY) +
        jar(130, 59, OCHRE) +
        jar(160, 59, TEAL) +
        jar(192, 59, CLAY) +
        line('M106 76L114 111H182L190 76z').replace('/>', ' stroke-dasharray="7 7"/>'),
    ),
    pointer('M148 72V92', 148, 98, 180),
    jar(136, 172, OCHRE, 1.7),
    flatHand({ side: 'right', x: 178, y: 146, turn: -28 }),
  );

const intoFridge = (): string =>
  scene(
    fridge(full(148, 92, 50)),
    pointer('M148 58V34', 148, 28, 0),
    flatHand({ side: 'left', x: 100, y: 110, turn: 14 }),
    flatHand({ side: 'right', x: 196, y: 110, turn: -14 }),
  );

const takeOut = (): string =>
  scene(
    fridge(),
    pointer('M148 72V92', 148, 98, 180),
    full(148, 134, 64),
    flatHand({ side: 'left', x: 90, y: 152, turn: 18 }),
    flatHand({ side: 'right', x: 206, y: 152, turn: -18 }),
  );

const warmPlace = (): string =>
  scene(
    bench(),
    cut('M20 30H220V58H20z', CLAY),
    line('M40 30V58M60 30V58M80 30V58M100 30V58M120 30V58M140 30V58M160 30V58M180 30V58M200 30V58'),
    waves(120, 24, 6, 20, 34),
    basket(120, 118, 70),
    cut(
      'M42 124C42 64 198 64 198 124Q186 136 174 126Q160 144 144 132Q132 146 118 134Q104 146 92 132Q78 142 66 128Q54 136 42 124z',
      TEAL,
    ),
    line('M44 112Q120 128 196 112', 3, PAPER),
  );

/** A loaf in its basket, its top as the finger left it. */
const poked = (top: string): string =>
  bench() +
  basket(
    96,
    122,
    82,
    cut(`M22 122C20 92 40 64 62 56${top}C154 64 172 92 170 122A74 24 0 0 1 22 122z`, OCHRE),
  );

const pokeSpringsBack = (): string =>
  scene(
    poked('C82 50 110 50 130 56'),
    pointer('M96 86V30', 96, 20, 0),
    line('M72 40V26M120 40V26', 4),
    pokeHand({ side: 'right', x: 150, y: 26, turn: -70 }),
  );

const pokeSlow = (): string =>
  scene(
    poked('C74 54 78 72 96 72C114 72 118 54 130 56'),
    clock(34, 31, 26),
    pokeHand({ side: 'right', x: 122, y: 44, turn: -74 }),
  );

const pokeStays = (): string =>
  scene(
    poked('L72 54C72 108 120 108 120 54L130 56'),
    cut('M72 54C72 108 120 108 120 54Q96 66 72 54z', LINE),
    pokeHand({ side: 'right', x: 122, y: 40, turn: -74 }),
  );

export const proof: Scenes = {
  clearShelf,
  fridge: intoFridge,
  takeOut,
  warmPlace,
  pokeSpringsBack,
  pokeSlow,
  pokeStays,
};
