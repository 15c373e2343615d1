/** The oven, hot and cold, and who may stand before it. Hot iron has mitts, and never a child's hand. */
import { lump } from '../kit/dough.ts';
import { flatHand, gripHand, head, mitt, pinchHand } from '../kit/hands.ts';
import { cloud, flame, knob, shutPot, stove, waves } from '../kit/hot.ts';
import {
  CLAY,
  OCHRE,
  PAPER,
  TEAL,
  bench,
  cut,
  line,
  oval,
  place,
  ring,
  scene,
} from '../kit/ink.ts';
import { lame, pointer, scissors } from '../kit/tools.ts';
import type { Scenes } from '../scenes.ts';

const dashed = (d: string): string => line(d).replace('/>', ' stroke-dasharray="8 8"/>');

const parchment = (): string =>
  scene(
    bench(),
    cut('M36 78H176L206 158H6z'),
    cut('M6 158Q12 134 34 146Q44 156 36 158z', OCHRE),
    dashed(ring(108, 118, 56, 26)),
    place(shutPot(0, 0, 66, 44), { x: 196, y: 34, scale: 0.5 }),
    place(scissors(), { x: 164, y: 116, turn: -72, scale: 1.2 }),
    flatHand({ side: 'left', x: 46, y: 132, turn: 14 }),
    gripHand({ side: 'right', x: 196, y: 134, turn: -44 }),
  );

const kettle = (): string =>
  scene(
    bench(),
    cloud(46, 34, 0.85),
    oval(118, 154, 76, 20, CLAY),
    cut('M66 98L36 76L28 86L62 126z', TEAL),
    cut('M72 86H166C180 106 184 128 182 142A64 22 0 0 1 54 142C52 128 58 106 72 86z', TEAL),
    oval(119, 86, 47, 14, TEAL),
    oval(119, 74, 8, 7),
    line('M76 80C76 20 162 20 162 80', 9),
    mitt({ side: 'right', x: 172, y: 48, turn: -40 }),
  );

const ovenOn = (): string =>
  scene(
    stove(CLAY, shutPot(106, 120, 42, 20)),
    flame(62, 30),
    knob(158, 35, 70),
    pointer('M132 40A27 27 0 0 1 150 11', 158, 10, 85),
    pinchHand({ side: 'right', x: 170, y: 43, turn: -34 }),
  );

const ovenOff = (): string =>
  scene(
    stove(PAPER, line('M46 110H194M46 136H194', 2.6)),
    flame(62, 30, PAPER),
    line('M42 50L82 10', 5),
    knob(158, 35, 0),
    pointer('M164 9A27 27 0 0 0 132 30', 131, 38, 185),
    pinchHand({ side: 'right', x: 170, y: 43, turn: -34 }),
  );

const ovenHeats = (): string =>
  scene(stove(CLAY, waves(120, 148, 5, 54, 26)), flame(62, 30), knob(158, 32, 70));

const lidOn = (): string =>
  scene(
    cut('M8 -6H232V186H8z'),
    cut('M24 14H216V160H24z', CLAY),
    line('M24 146H216M24 60H36M204 60H216'),
    waves(120, 52, 5, 30, 36),
    shutPot(120, 96, 64, 38),
  );

const steamOut = (): string =>
  scene(
    cut('M20 -6H188V190H20z'),
    line('M20 40H188'),
    flame(52, 20),
    cut('M34 48H174V96H34z', CLAY),
    cut('M20 86H190L178 176H32z', TEAL),
    cut('M52 116H158L152 160H58z', CLAY),
    cloud(196, 78, 0.9),
    cloud(204, 34, 0.8),
    line('M44 102H166', 8),
    mitt({ side: 'left', x: 50, y: 100, turn: 14 }),
  );

const score = (): string =>
  scene(
    bench(),
    cut('M70 78H190L222 158H6z'),
    lump(108, 132, 76, 62),
    cut('M56 108Q96 72 140 82Q104 88 56 108z', PAPER),
    place(lame(), { x: 174, y: 52, turn: -126, scale: 1.25 }),
    gripHand({ side: 'right', x: 182, y: 56, turn: -30 }),
  );

const standBack = (): string =>
  scene(
    line('M0 166H240'),
    cut('M152 44H250V166H152z'),
    line('M152 68H240'),
    oval(172, 56, 6, 6, OCHRE),
    oval(196, 56, 6, 6, OCHRE),
    cut('M166 92H224V138H166z', CLAY),
    line('M170 81H220', 6),
    waves(196, 34, 3, 26, 20),
    dashed('M128 164V60'),
    pointer('M112 120H96', 88, 120, -90),
    cut('M30 166V108C30 82 74 82 74 108V166H58V142H46V166z', CLAY),
    head(52, 64, 24, OCHRE),
  );

export const oven: Scenes = {
  parchment,
  kettle,
  ovenOn,
  ovenHeats,
  score,
  lidOn,
  steamOut,
  ovenOff,
  standBack,
};
