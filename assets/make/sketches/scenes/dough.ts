/** The dough, from the first pinch to the folds, the sheet and the roll. */
import { bits, sheet } from '../kit/dough.ts';
import { fist, flatHand, gripHand, pinchHand } from '../kit/hands.ts';
import { OCHRE, PAPER, TEAL, bench, cut, line, oval, place, ring, scene } from '../kit/ink.ts';
import { clock, clothOver, drop, drops, grains, jug, pointer, probe } from '../kit/tools.ts';
import { bowl, lumpIn } from '../kit/vessels.ts';
import type { Scenes } from '../scenes.ts';

/** Dough that is not yet one: ragged. */
const ragged = (x: number, y: number): string =>
  cut(
    `M${x - 58} ${y + 4}C${x - 62} ${y - 12} ${x - 46} ${y - 14} ${x - 42} ${y - 20}C${x - 34} ${y - 32} ${x - 20} ${y - 20} ${x - 12} ${y - 28}` +
      `C${x} ${y - 38} ${x + 12} ${y - 24} ${x + 22} ${y - 28}C${x + 36} ${y - 30} ${x + 36} ${y - 18} ${x + 46} ${y - 14}` +
      `C${x + 60} ${y - 10} ${x + 60} ${y} ${x + 56} ${y + 6}C${x + 30} ${y + 24} ${x - 30} ${y + 24} ${x - 58} ${y + 4}z`,
    OCHRE,
  ) +
  oval(x - 30, y - 6, 9, 4, PAPER) +
  oval(x + 34, y - 4, 8, 4, PAPER) +
  oval(x + 2, y - 18, 7, 3.4, PAPER);

export const dough: Scenes = {
  pinchMix: () =>
    scene(
      bench(),
      bowl(120, 92, 88, ragged(120, 84)),
      pinchHand({ side: 'left', x: 104, y: 82, turn: 34, scale: 1.25 }),
      pinchHand({ side: 'right', x: 136, y: 82, turn: -34, scale: 1.25 }),
    ),
  scrape: () =>
    scene(
      bench(),
      bowl(
        120,
        84,
        88,
        cut(
          'M48 88C52 70 78 66 98 72C120 68 150 76 162 84C176 82 186 76 192 66C202 74 204 88 190 98C166 114 72 112 48 88z',
          OCHRE,
        ),
      ),
      place(cut('M-26 0V-20Q-24 -40 0 -40T26 -20V0z', TEAL), {
        x: 158,
        y: 106,
        turn: 44,
        scale: 1.1,
      }),
      gripHand({ side: 'right', x: 152, y: 114, turn: 8, scale: 1.25 }),
      flatHand({ side: 'left', x: 36, y: 100, turn: 34, scale: 1.2 }),
    ),
  wetHands: () =>
    scene(
      bench(),
      bowl(
        120,
        84,
        86,
        cut(
          'M54 92C52 70 76 66 84 58C96 48 108 62 120 58C134 60 146 48 158 58C168 66 188 72 186 92C160 116 80 116 54 92z',
          OCHRE,
        ) +
          grains(
            [
              [106, 74],
              [134, 76],
              [120, 68],
              [120, 86],
            ],
            2.4,
          ),
      ),
      fist({ side: 'left', x: 86, y: 70, turn: 22, scale: 1.3 }),
      fist({ side: 'right', x: 154, y: 70, turn: -22, scale: 1.3 }),
      drop(78, 82, 5),
      drop(162, 82, 5),
      drops([36, 62], [204, 62], [22, 92], [218, 92]),
    ),
  restCovered: () => scene(bench(), bowl(120, 84, 78), clothOver(120, 82, 84, 46)),
  saltWater: () =>
    scene(
      bench(),
      bowl(112, 118, 74, lumpIn(112, 118, 74)),
      cut('M142 60C132 64 128 76 126 100Q133 106 140 101C142 84 146 74 152 68z', TEAL),
      place(jug(), { x: 142, y: 58, turn: -46, scale: 1.2 }),
      gripHand({ side: 'right', x: 208, y: 42, turn: -40, scale: 1.15 }),
      grains(
        [
          [78, 58],
          [88, 66],
          [72, 70],
          [84, 78],
          [94, 76],
          [76, 84],
          [92, 88],
        ],
        2.6,
      ),
      pinchHand({ side: 'left', x: 80, y: 48, turn: 126, scale: 1.2 }),
    ),
  probe: () =>
    scene(
      bench(),
      bowl(112, 120, 80, lumpIn(112, 120, 80)),
      place(probe(36), { x: 138, y: 106, turn: 10, scale: 1.4 }),
    ),
  foldStretch: () =>
    scene(
      bench(),
      bowl(
        120,
        108,
        78,
        lumpIn(120, 110, 76) +
          cut(
            'M76 104C84 76 80 56 82 36Q120 26 158 36C160 56 156 76 164 104Q120 92 76 104z',
            OCHRE,
          ),
      ),
      line('M104 88V58M136 88V58', 2.6),
      pinchHand({ side: 'left', x: 86, y: 34, turn: 42, scale: 1.2 }),
      pinchHand({ side: 'right', x: 154, y: 34, turn: -42, scale: 1.2 }),
    ),
  spreadSheet: () =>
    scene(
      bench(),
      sheet(120, 114, 200, 84),
      flatHand({ side: 'left', x: 70, y: 108, turn: -10, scale: 1.2 }),
      flatHand({ side: 'right', x: 170, y: 108, turn: 10, scale: 1.2 }),
      pointer('M50 46H26', 18, 46, -90),
      pointer('M190 46H214', 222, 46, 90),
    ),
  scatter: () =>
    scene(
      bench(),
      sheet(120, 130, 220, 82),
      bits(
        [
          [46, 116],
          [74, 108],
          [60, 134],
          [36, 154],
          [92, 126],
          [82, 152],
          [116, 142],
          [124, 160],
          [146, 130],
          [164, 152],
          [190, 138],
          [182, 116],
        ],
        7.5,
      ),
      bits(
        [
          [92, 66],
          [110, 78],
          [82, 88],
          [102, 98],
          [122, 94],
        ],
        7.5,
      ),
      pinchHand({ side: 'right', x: 104, y: 54, turn: -128, scale: 1.35 }),
    ),
  rollUp: () =>
    scene(
      bench(),
      sheet(120, 96, 206, 60),
      bits(
        [
          [50, 82],
          [80, 80],
          [108, 82],
          [136, 80],
          [164, 82],
          [190, 84],
          [44, 96],
          [120, 96],
          [196, 98],
        ],
        6.5,
      ),
      cut('M22 104H212V154H22A14 25 0 0 1 22 104z', OCHRE),
      cut(ring(212, 129, 15, 25), OCHRE),
      line('M212 143C200 143 202 115 212 115C222 115 220 137 213 137C208 137 208 125 213 125', 2.6),
      flatHand({ side: 'left', x: 74, y: 124, turn: 6, scale: 1.2 }),
      flatHand({ side: 'right', x: 152, y: 124, turn: -6, scale: 1.2 }),
      pointer('M120 54V36', 120, 28, 0),
    ),
  coverAndWait: () =>
    scene(
      bench(),
      bowl(80, 98, 62),
      clothOver(80, 96, 66, 38),
      line('M184 138L176 148M214 138L222 148', 5),
      clock(199, 114, 33),
    ),
};
