/** Dough into loaves: from the whole to what lies in its basket or tin. */
import { bits, crease, lump } from '../kit/dough.ts';
import { flatHand, gripHand, pinchHand } from '../kit/hands.ts';
import { CLAY, OCHRE, PAPER, TEAL, bench, cut, line, oval, place, scene } from '../kit/ink.ts';
import { brush, grains, pointer, scale, spoon } from '../kit/tools.ts';
import { basket, tin } from '../kit/vessels.ts';
import type { Scenes } from '../scenes.ts';

const divide = (): string =>
  scene(
    bench(),
    cut('M104 76C64 62 22 82 18 114C16 146 62 158 104 144z', OCHRE),
    cut('M122 76C166 62 212 82 216 114C218 146 166 158 122 144z', OCHRE),
    bits([
      [50, 96],
      [78, 124],
      [46, 128],
      [180, 132],
    ]),
    cut('M112 150V84L138 46V112z'),
    cut('M138 38q8 0 8 8v66q0 8 -8 8t-8 -8V46q0 -8 8 -8z', TEAL),
    gripHand({ side: 'right', x: 142, y: 66, turn: -40 }),
  );

const weighPiece = (): string =>
  scene(
    bench(),
    scale(112, 112, 78),
    lump(112, 110, 50, 50),
    flatHand({ side: 'right', x: 172, y: 92, turn: -38 }),
  );

const round = (): string =>
  scene(
    bench(),
    lump(120, 128, 60, 56),
    crease('M100 92Q122 84 142 94'),
    pointer('M74 52C92 26 146 26 164 44', 169, 50, 130),
    flatHand({ side: 'left', x: 60, y: 118, turn: 18, scale: 1.1 }),
    flatHand({ side: 'right', x: 180, y: 118, turn: -18, scale: 1.1 }),
  );

const benchRest = (): string =>
  scene(
    bench(),
    lump(48, 126, 36, 44),
    lump(192, 126, 36, 44),
    lump(120, 144, 40, 56),
    cut(
      'M16 84C26 66 70 66 82 82C96 70 144 70 158 82C170 66 214 66 224 84L234 108Q212 116 194 102Q172 98 160 116Q140 102 120 108Q100 102 80 116Q68 98 46 102Q28 116 6 108z',
      TEAL,
    ),
    line('M13 90Q48 76 82 98Q120 82 158 98Q192 76 227 90', 3, PAPER),
  );

const letterFold = (): string =>
  scene(
    bench(),
    cut('M50 76H178L206 160H22z', OCHRE),
    bits([
      [124, 94],
      [142, 116],
      [124, 134],
      [156, 146],
    ]),
    cut('M50 76Q76 66 102 76L104 160Q62 168 22 160z', OCHRE),
    line('M102 76L104 160', 5),
    cut('M178 76Q168 46 140 42L156 108Q190 120 206 160z', OCHRE),
    pointer('M124 40Q98 26 80 48', 76, 55, 210),
    flatHand({ side: 'left', x: 60, y: 128, turn: 8 }),
    pinchHand({ side: 'right', x: 148, y: 62, turn: -62 }),
  );

const seam = (): string =>
  scene(
    bench(),
    cut(
      'M40 84C60 72 180 72 200 84C224 98 224 128 200 140C180 150 60 150 40 140C16 128 16 98 40 84z',
      OCHRE,
    ),
    line('M28 112L40 104L50 118L60 104L70 118L80 104', 4.5),
    cut('M132 110Q170 92 214 112Q170 124 132 110z', CLAY),
    pinchHand({ side: 'left', x: 100, y: 110, turn: 32 }),
    pinchHand({ side: 'right', x: 134, y: 110, turn: -32 }),
  );

const laidIn = (): string =>
  scene(
    bench(),
    basket(120, 122, 70),
    pointer('M120 104V116', 120, 122, 180),
    lump(120, 76, 58, 56),
    line('M72 66L84 54L94 64L106 48L116 60L126 46L136 60L148 50L158 64L168 58', 4),
    flatHand({ side: 'left', x: 56, y: 76, turn: 24 }),
    flatHand({ side: 'right', x: 184, y: 76, turn: -24 }),
  );

const dustBasket = (): string =>
  scene(
    bench(),
    basket(92, 118, 72),
    grains(
      [
        [62, 78],
        [80, 88],
        [96, 76],
        [112, 90],
        [126, 78],
        [60, 112],
        [78, 122],
        [98, 112],
        [118, 121],
      ],
      2.6,
    ),
    cut('M40 34C40 74 148 74 148 34z'),
    line('M54 48L134 48M66 57H122M74 40L84 62M114 40L104 62', 2.4),
    oval(94, 34, 54, 14, PAPER),
    oval(94, 35, 42, 8, PAPER),
    cut('M148 30H222V42H148z', OCHRE),
    gripHand({ side: 'right', x: 196, y: 42, turn: -12 }),
  );

const greaseTin = (): string =>
  scene(
    bench(),
    cut('M8 82L22 72H58L52 82zM8 82H52V102H8zM52 82L58 72V92L52 102z', OCHRE),
    tin(138, 112, 156, cut('M74 108L82 76H132Q146 84 130 94Q120 104 126 108z', OCHRE)),
    place(brush(), { x: 164, y: 58, turn: 218, scale: 1.35 }),
    gripHand({ side: 'right', x: 176, y: 42, turn: -36 }),
  );

const spoonTin = (): string =>
  scene(
    bench(),
    tin(104, 116, 168, cut('M38 94Q72 74 104 86T164 90L180 114H28z', OCHRE)),
    cut('M84 92C80 74 64 66 70 46H118C126 62 108 72 106 92z', OCHRE),
    place(spoon(70, TEAL), { x: 186, y: 42, turn: -86, scale: 1.4 }),
    cut('M62 44C66 22 112 20 116 44Q90 54 62 44z', OCHRE),
    gripHand({ side: 'right', x: 190, y: 46, turn: -16 }),
  );

export const shaping: Scenes = {
  divide,
  weighPiece,
  round,
  benchRest,
  letterFold,
  seam,
  basket: laidIn,
  dustBasket,
  greaseTin,
  spoonTin,
};
