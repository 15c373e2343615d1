import { render } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import type { SharedFile } from '../../../machines/ports.ts';
import { openHouse } from '../../../src/app/open-house.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import type { House } from '../../../src/screens/house.ts';
import type { HouseLog } from '../../../src/screens/house-log.ts';
import BakeFace from '../../../src/screens/log/bake/BakeFace.tsx';
import ShareFace from '../../../src/screens/log/bake/ShareFace.tsx';
import type { Face } from '../../../src/screens/log/face.ts';
import { fakeHouseLog } from '../../fakes/house-log.ts';
import { makeMemoryStore } from '../../fakes/memory-store.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { turnedClock } from '../parts/touching.ts';

/** A page of one bake of this log, as it opens, and what was pressed, said and handed on there. */
export async function showBake(
  which: 'bake' | 'share',
  records: readonly LogRecord[],
  start: string,
  log: HouseLog = fakeHouseLog(),
) {
  const at = records.at(-1)!.fact.at;
  const world = makeFakeWorld({ at, store: makeMemoryStore(records) });
  const house = await createRoot(() => openHouse(world));
  const said: string[] = [];
  const handed: SharedFile[] = [];
  const opened: Face[] = [];
  let backs = 0;
  const its: House = {
    ...house,
    say: (words) => void said.push(words),
    handOn: (file) => {
      handed.push(file);
      return Promise.resolve('saved');
    },
  };
  const clock = turnedClock();
  const props = {
    house: its,
    log,
    start,
    onOpen: (face: Face) => void opened.push(face),
    onBack: () => void (backs += 1),
  };
  render(() => (
    <PressGround now={clock}>
      {which === 'bake' ? <BakeFace {...props} /> : <ShareFace {...props} />}
    </PressGround>
  ));
  return { clock, said, handed, opened, backs: () => backs, house: its };
}
