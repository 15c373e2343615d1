/** Bread: it cools, is handed on, is noted down, and is eaten. */
import { loaf } from '../kit/dough.ts';
import { flatHand, gripHand } from '../kit/hands.ts';
import { waves } from '../kit/hot.ts';
import { CLAY, OCHRE, bench, cut, line, place, scene } from '../kit/ink.ts';
import { rack } from '../kit/kitchen.ts';
import { board, grains, pointer } from '../kit/tools.ts';
import type { Scenes } from '../scenes.ts';

const slice = (x: number, y: number): string =>
  place(
    cut('M-27 32V-4C-38 -10 -34 -34 0 -34C34 -34 38 -10 27 -4V32z', CLAY) +
      cut('M-20 26V-8C-27 -14 -22 -28 0 -28C22 -28 27 -14 20 -8V26z') +
      grains(
        [
          [-8, -13],
          [9, -7],
          [-6, 9],
          [10, 14],
          [-12, -1],
        ],
        3,
      ),
    { x, y },
  );

const rackOut = (): string =>
  scene(
    bench(),
    rack(120, 112, 190, 60),
    pointer('M120 38V58', 120, 66, 180),
    flatHand({ side: 'left', x: 30, y: 128, turn: 18 }),
    flatHand({ side: 'right', x: 210, y: 128, turn: -18 }),
  );

const cool = (): string =>
  scene(
    bench(),
    rack(120, 128, 216, 60),
    loaf(70, 122, 46),
    loaf(170, 128, 46),
    waves(70, 72, 2, 44, 24),
    waves(170, 78, 2, 44, 24),
  );

const handOver = (): string =>
  scene(
    flatHand({ side: 'left', x: 178, y: 60, turn: 200, sleeve: OCHRE }),
    flatHand({ side: 'right', x: 62, y: 60, turn: 160, sleeve: OCHRE }),
    loaf(120, 120, 72),
    flatHand({ side: 'left', x: 50, y: 132, turn: 22 }),
    flatHand({ side: 'right', x: 190, y: 132, turn: -22 }),
  );

const note = (): string =>
  scene(
    bench(),
    cut('M34 78H186L212 164H8z'),
    line('M110 78V164M48 96H98M44 112H98', 2.6),
    loaf(70, 142, 20),
    line('M122 96H150M124 116H140', 2.6),
    cut('M142 128L146 114L198 58L208 68L156 122z', OCHRE),
    gripHand({ side: 'right', x: 180, y: 92, turn: -30 }),
  );

const done = (): string =>
  scene(
    bench(),
    board(120, 126, 224, 70, OCHRE),
    loaf(74, 128, 54),
    slice(150, 118),
    slice(190, 128),
  );

export const bread: Scenes = { rackOut, cool, handOver, note, done };
