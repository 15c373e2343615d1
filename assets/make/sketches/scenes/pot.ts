/** A loaf and its hot pot: in, lid away, looked at, out; and what is baked without one. */
import { loaf, lump } from '../kit/dough.ts';
import { fist, mitt } from '../kit/hands.ts';
import { cloud, flatLid, hotPot, raisedLid, waves } from '../kit/hot.ts';
import { CLAY, LINE, OCHRE, PAPER, bench, cut, line, oval, place, scene } from '../kit/ink.ts';
import { tray } from '../kit/kitchen.ts';
import { grains, pointer } from '../kit/tools.ts';
import type { Scenes } from '../scenes.ts';

/** A loaf in a sling of paper, a mitt at either end. */
const slung = (what: string): string =>
  what +
  cut('M44 40L70 66Q120 88 170 66L196 40Q166 102 120 102T44 40z') +
  mitt({ side: 'left', x: 42, y: 66, turn: 14 }) +
  mitt({ side: 'right', x: 198, y: 66, turn: -14 });

const load = (): string =>
  scene(
    bench(),
    hotPot(120, 134, 62, 36),
    pointer('M120 116V132', 120, 138, 180, PAPER),
    slung(lump(120, 66, 46, 46) + line('M92 46Q118 28 146 44', 4)),
  );

const liftLid = (): string =>
  scene(
    bench(),
    cloud(60, 34, 0.9),
    cloud(182, 34, 0.9),
    cloud(120, 26, 1.2),
    hotPot(120, 138, 62, 34),
    raisedLid(120, 78, 66, 38),
    mitt({ side: 'left', x: 50, y: 84, turn: 18 }),
    mitt({ side: 'right', x: 190, y: 84, turn: -18 }),
  );

const unload = (): string =>
  scene(
    bench(),
    hotPot(120, 134, 62, 36),
    pointer('M120 144V126', 120, 118, 0, PAPER),
    waves(120, 22, 3, 22, 24),
    slung(loaf(120, 66, 48)),
  );

const judgeCrust = (): string =>
  scene(
    bench(),
    place(flatLid(44), { x: 206, y: 66, turn: 62 }),
    hotPot(102, 106, 82, 44, loaf(102, 106, 66)),
    waves(102, 36, 3, 30, 26),
  );

const knock = (): string =>
  scene(
    bench(),
    cut('M140 30C70 26 26 58 26 94C26 132 70 158 140 154z', CLAY),
    cut('M50 82C60 58 88 46 112 46C92 56 74 68 68 92C64 104 46 98 50 82z', OCHRE),
    oval(140, 92, 44, 62, OCHRE),
    line('M130 80q-7 16 0 32M117 70q-11 26 0 52', 4.5),
    fist({ side: 'right', x: 148, y: 98, turn: -46 }),
    mitt({ side: 'left', x: 56, y: 128, turn: 34 }),
  );

const flatTray = (): string =>
  scene(
    bench(),
    tray(120, 112, 200, 72),
    cut('M58 112C56 86 182 86 184 112C188 138 52 138 58 112z', OCHRE),
    grains(
      [
        [84, 110],
        [106, 104],
        [132, 106],
        [156, 110],
        [96, 122],
        [120, 121],
        [145, 122],
      ],
      3.4,
    ),
    mitt({ side: 'left', x: 28, y: 112, turn: 14 }),
    mitt({ side: 'right', x: 212, y: 112, turn: -14 }),
  );

const colours = (): string =>
  scene(
    bench(),
    loaf(42, 114, 33, OCHRE, PAPER),
    loaf(120, 114, 33, CLAY, OCHRE),
    loaf(198, 114, 33, LINE, CLAY),
    pointer('M22 154H206', 214, 154, 90),
  );

export const pot: Scenes = { load, liftLid, unload, judgeCrust, knock, flatTray, colours };
