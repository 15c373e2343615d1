/** What free hands do meanwhile: the filling and the bench. */
import { bits } from '../kit/dough.ts';
import { fist, flatHand, gripHand, mitt, pinchHand } from '../kit/hands.ts';
import { CLAY, OCHRE, PAPER, TEAL, bench, cut, line, oval, place, scene } from '../kit/ink.ts';
import { fridge, tray } from '../kit/kitchen.ts';
import { board, drops, grains, jug, knife, pointer, steam } from '../kit/tools.ts';
import { bowl } from '../kit/vessels.ts';
import type { Scenes } from '../scenes.ts';

/** Seeds: long and small, lying every way. */
const seeds = (at: readonly (readonly [number, number])[], paint: string = CLAY): string =>
  at
    .map(([x, y], no) => place(oval(0, 0, 6, 3.6, paint), { x, y, turn: (no * 67) % 180 }))
    .join('');

/** Bits all cut to one size. */
const cubes = (at: readonly (readonly [number, number])[]): string =>
  at
    .map(
      ([x, y]) =>
        cut(
          `M${x - 8} ${y - 5}L${x - 3} ${y - 11}H${x + 11}L${x + 8} ${y - 5}V${y + 8}H${x - 8}z`,
          CLAY,
        ) + line(`M${x - 8} ${y - 5}H${x + 8}`, 2.2),
    )
    .join('');

const wedge = (): string =>
  cut('M-34 -12L30 -26L38 -8L-34 2z', OCHRE) +
  cut('M-34 2L38 -8V20L-34 28z', OCHRE) +
  oval(-12, 14, 6, 6) +
  oval(14, 8, 4.5, 4.5) +
  oval(26, -3, 3, 3);

export const meanwhile: Scenes = {
  soak: () =>
    scene(
      bench(),
      bowl(
        100,
        102,
        74,
        oval(100, 106, 62, 23, TEAL) +
          seeds(
            [
              [66, 102],
              [84, 96],
              [104, 98],
              [120, 104],
              [78, 112],
              [98, 114],
              [118, 116],
              [138, 108],
              [60, 110],
              [92, 106],
            ],
            OCHRE,
          ),
      ),
      cut('M146 40C130 46 124 62 122 98Q130 104 138 98C138 74 142 60 154 54z', TEAL),
      place(jug(), { x: 146, y: 38, turn: -50, scale: 1.1 }),
      gripHand({ side: 'right', x: 204, y: 42, turn: -30, scale: 1.2 }),
    ),
  cheeseOut: () =>
    scene(
      fridge(),
      place(wedge(), { x: 136, y: 92, scale: 1.15 }),
      pinchHand({ side: 'right', x: 164, y: 92, turn: -34, scale: 1.25 }),
    ),
  toast: () =>
    scene(
      bench(),
      tray(112, 116, 190, 76),
      bits(
        [
          [56, 98],
          [84, 102],
          [112, 96],
          [142, 104],
          [166, 98],
          [62, 124],
          [100, 128],
          [128, 120],
          [160, 130],
        ],
        9,
        ['nut'],
      ),
      seeds(
        [
          [70, 110],
          [98, 112],
          [124, 108],
          [150, 116],
          [82, 132],
          [116, 136],
          [176, 114],
          [44, 132],
          [144, 134],
        ],
        OCHRE,
      ),
      steam(66, 74),
      steam(108, 70),
      steam(150, 74),
      mitt({ side: 'right', x: 206, y: 122, turn: -48, scale: 1 }),
    ),
  drain: () =>
    scene(
      bench(),
      bowl(112, 134, 58, oval(112, 137, 46, 15, TEAL)),
      line('M176 42L230 26', 9),
      cut('M40 44C42 82 76 88 108 88S174 82 176 44z'),
      line('M52 64H164M64 77H152M72 50V82M92 50V87M112 50V88M132 50V87M150 50V80', 2.2),
      oval(108, 44, 68, 24),
      bits(
        [
          [66, 40],
          [90, 33],
          [116, 34],
          [142, 38],
          [78, 50],
          [104, 48],
          [128, 52],
          [154, 48],
          [58, 50],
        ],
        9,
      ),
      drops([90, 92], [112, 98], [134, 92]),
    ),
  cutFilling: () =>
    scene(
      bench(),
      board(120, 120, 218, 78, PAPER),
      cut('M148 104C146 84 116 84 90 88C72 90 70 118 90 122C116 126 146 126 148 104z', CLAY),
      cubes([
        [176, 104],
        [200, 106],
        [180, 126],
        [206, 128],
      ]),
      fist({ side: 'left', x: 92, y: 98, turn: 46, scale: 1.25 }),
      place(knife(74), { x: 142, y: 120, turn: 8 }),
      gripHand({ side: 'right', x: 144, y: 136, turn: -40, scale: 1.2 }),
    ),
  dustFilling: () =>
    scene(
      bench(),
      bowl(
        104,
        108,
        78,
        bits(
          [
            [44, 108],
            [72, 98],
            [102, 94],
            [134, 98],
            [162, 106],
            [60, 120],
            [90, 114],
            [122, 114],
            [148, 121],
            [108, 128],
            [80, 130],
          ],
          11,
        ),
      ),
      grains(
        [
          [90, 66],
          [102, 72],
          [82, 74],
          [94, 80],
          [108, 82],
          [76, 86],
          [98, 90],
          [118, 92],
          [86, 96],
          [70, 104],
          [106, 100],
          [128, 104],
        ],
        2.6,
      ),
      pinchHand({ side: 'right', x: 98, y: 56, turn: -130, scale: 1.35 }),
    ),
  wetBench: () =>
    scene(
      bench(),
      cut('M24 132C14 104 60 84 120 84S224 96 220 122S176 160 126 160S32 158 24 132z', TEAL),
      line('M52 122C62 104 92 98 116 98M62 138C70 130 80 126 92 124', 3.4, PAPER),
      flatHand({ side: 'right', x: 144, y: 112, turn: -18, scale: 1.35 }),
      bowl(44, 74, 34, oval(44, 76, 26, 9, TEAL)),
    ),
  clearBench: () =>
    scene(
      bench(),
      grains(
        [
          [28, 96],
          [44, 110],
          [22, 126],
          [52, 128],
          [38, 146],
          [58, 94],
          [64, 146],
        ],
        3.4,
        CLAY,
      ),
      cut(
        'M84 96L150 84C176 78 204 88 214 100L222 134C204 150 176 148 156 150L92 154L76 136L86 118z',
        TEAL,
      ),
      line('M98 96L100 116L90 136L104 152M109 94L111 116L102 136L115 151', 3, PAPER),
      flatHand({ side: 'right', x: 156, y: 108, turn: -24, scale: 1.35 }),
      pointer('M134 44C108 38 84 38 62 44', 54, 47, -108),
    ),
};
