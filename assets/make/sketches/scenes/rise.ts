/** How dough looks as it rises, through the side of its tub. */
import { pokeHand } from '../kit/hands.ts';
import { OCHRE, bench, cut, line, oval, ring, scene } from '../kit/ink.ts';
import { tub } from '../kit/vessels.ts';
import { pointer } from '../kit/tools.ts';
import type { Scenes } from '../scenes.ts';

/** Where the dough once stood. */
const dashes = (from: number, to: number, y: number): string => {
  let d = '';
  for (let x = from; x < to; x += 15) d += `M${x} ${y}h8`;
  return line(d);
};

const TUB = { x: 100, y: 40, high: 108, rx: 72 } as const;

export const rise: Scenes = {
  domeEdge: () =>
    scene(
      bench(),
      tub({ x: 84, y: 40, high: 108, rx: 66, full: 0.46, dome: 26 }),
      pokeHand({ side: 'right', x: 157, y: 96, turn: -66, scale: 1.2 }),
    ),
  bubbles: () =>
    scene(
      bench(),
      tub({ ...TUB, full: 0.6, dome: 5, bubbles: true }),
      line('M184 140L208 172', 9),
      cut(ring(160, 108, 40, 40)),
      cut(ring(160, 108, 34, 34), OCHRE),
      oval(150, 98, 12, 12),
      oval(174, 112, 9, 9),
      oval(152, 126, 7, 7),
      oval(172, 90, 5, 5),
    ),
  riseMarks: () =>
    scene(
      bench(),
      tub({ ...TUB, full: 0.6, dome: 4, marks: 5, band: 0.3 }),
      pointer('M200 124V84', 200, 76, 0),
    ),
  gonePast: () =>
    scene(
      bench(),
      tub({ ...TUB, full: 0.38, dome: -22 }),
      dashes(33, 168, 82),
      line('M62 132Q100 144 138 132M78 146Q100 152 122 146', 2.6),
      pointer('M200 82V118', 200, 126, 180),
    ),
};
