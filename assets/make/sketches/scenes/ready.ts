/** What is made ready, and the starter. */
import { loaf } from '../kit/dough.ts';
import { flatHand, gripHand, pinchHand } from '../kit/hands.ts';
import { CLAY, OCHRE, PAPER, TEAL, bench, cut, line, oval, place, scene } from '../kit/ink.ts';
import { bag, drops, grains, pointer, scale, spoon } from '../kit/tools.ts';
import { bowl, tub } from '../kit/vessels.ts';
import type { Scenes } from '../scenes.ts';

const jar = { x: 120, y: 46, high: 102, rx: 46 } as const;

/** The lid of a jar, laid on loosely. */
const looseLid = (x: number, y: number, rx: number): string =>
  place(
    cut(
      `M${-rx} 0V-10A${rx} ${rx / 3.4} 0 0 1 ${rx} -10V0A${rx} ${rx / 3.4} 0 0 1 ${-rx} 0z`,
      CLAY,
    ) + line(`M${-rx} -10A${rx} ${rx / 3.4} 0 0 0 ${rx} -10`),
    { x, y, turn: -6 },
  );

const holes = (at: readonly (readonly [number, number, number])[]): string =>
  at.map(([x, y, r]) => oval(x, y, r, r)).join('');

export const ready: Scenes = {
  read: () =>
    scene(
      bench(),
      cut('M34 70L10 160H230L206 70z', TEAL),
      cut('M120 76C94 66 62 66 42 72L22 152C52 144 92 146 120 156z'),
      cut('M120 76C146 66 178 66 198 72L218 152C188 144 148 146 120 156z'),
      line('M52 118C70 114 90 115 106 119M48 132C68 127 90 129 106 134', 3),
      place(loaf(0, 0, 19), { x: 80, y: 102 }),
      line('M138 118C156 114 176 114 192 116M138 134C160 128 180 128 196 130', 3),
      cut('M120 156C136 120 168 96 204 98L188 30C160 30 134 48 120 76z'),
      line('M134 74C146 58 162 50 178 48M136 96C150 78 168 68 186 66', 3),
      flatHand({ side: 'left', x: 36, y: 140, turn: 38, scale: 1.1 }),
      pinchHand({ side: 'right', x: 196, y: 78, turn: -26, scale: 1.2 }),
    ),
  washHands: () =>
    scene(
      bench(),
      cut('M22 96A98 30 0 0 1 218 96C218 130 200 190 120 190S22 130 22 96z', PAPER),
      oval(120, 98, 98, 34, PAPER),
      oval(120, 104, 82, 25, TEAL),
      line('M160 70V36C160 10 118 10 118 34V40', 22),
      line('M160 70V36C160 10 118 10 118 34V40', 15, PAPER),
      cut('M104 38H132V47H104z', CLAY),
      cut('M110 47H126L129 92Q118 98 107 92z', TEAL),
      flatHand({ side: 'right', x: 138, y: 112, turn: -42, scale: 1.25 }),
      flatHand({ side: 'left', x: 100, y: 106, turn: 42, scale: 1.25 }),
      oval(50, 80, 8, 8),
      oval(68, 66, 6, 6),
      oval(190, 82, 8, 8),
      drops([74, 80], [176, 92]),
    ),
  weigh: () =>
    scene(
      bench(),
      scale(100, 136, 66),
      bowl(100, 98, 54),
      cut(
        'M58 102C66 92 78 88 88 86C94 80 96 70 104 56Q114 50 122 60C112 70 110 78 112 86C124 90 136 94 142 102Q100 120 58 102z',
      ),
      grains([
        [84, 96],
        [98, 90],
        [112, 98],
        [100, 104],
        [124, 102],
        [76, 103],
        [108, 70],
      ]),
      place(bag(), { x: 112, y: 54, turn: -118, scale: 1.3 }),
      gripHand({ side: 'right', x: 166, y: 40, turn: -70, scale: 1.3 }),
    ),
  feed: () =>
    scene(
      bench(),
      place(
        cut('M-20 0H20L24 62H-24z', OCHRE) + cut('M-12 20H12V44H-12z') + line('M-20 8H20', 2.6),
        { x: 39, y: 34 },
      ),
      cut('M12 84L18 140Q38 148 58 140L64 84z', PAPER),
      cut('M14 104L18 140Q38 148 58 140L62 104Q38 112 14 104z', TEAL),
      oval(38, 84, 26, 9),
      tub({ x: 124, y: 70, high: 84, rx: 46, full: 0.62, bubbles: true }),
      place(spoon(84, CLAY), { x: 156, y: 34, turn: 197 }),
      pointer('M84 44C88 26 106 20 120 26', 127, 30, 118),
      gripHand({ side: 'right', x: 158, y: 30, turn: -66, scale: 1.2 }),
    ),
  levainRising: () =>
    scene(
      bench(),
      tub({ ...jar, full: 0.66, dome: 3, bubbles: true, band: 0.36 }),
      looseLid(120, 44, 50),
      pointer('M194 128V88', 194, 80, 0),
    ),
  levainRipe: () =>
    scene(
      bench(),
      tub({ ...jar, full: 0.8, dome: 16, bubbles: true, band: 0.36 }),
      holes([
        [106, 57, 5],
        [133, 56, 6],
        [92, 72, 4],
        [122, 72, 5],
        [148, 77, 4],
        [104, 83, 3.5],
        [154, 102, 3.5],
        [98, 110, 4],
        [134, 110, 3.5],
      ]),
      place(looseLid(0, 0, 34), { x: 200, y: 150 }),
    ),
  keepBack: () =>
    scene(
      bench(),
      tub({ x: 60, y: 66, high: 86, rx: 44, full: 0.56, bubbles: true }),
      tub({ x: 158, y: 110, high: 42, rx: 31, full: 0.3 }),
      pointer('M70 40Q98 22 124 38', 131, 44, 130),
      place(spoon(48, CLAY), { x: 206, y: 78, turn: -76 }),
      cut(
        'M132 66C134 56 164 56 166 68C166 76 158 78 155 84C155 96 161 98 160 105C158 111 149 111 148 105C148 98 150 94 148 86C142 84 132 78 132 66z',
        OCHRE,
      ),
      gripHand({ side: 'right', x: 210, y: 80, turn: -20, scale: 1.15 }),
    ),
};
