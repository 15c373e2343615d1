import { createSignal } from 'solid-js';
import { CIRCLE, type Circle } from '../../src/core/circle/circle.ts';
import { changed, inverse, type Change } from '../../src/core/circle/row.ts';
import type { HouseCircle, NotWritten } from '../../src/screens/house-circle.ts';

/** A circle that writes nowhere. `fails`: what every write comes to, where it is not written. */
export function fakeCircle(
  first: Partial<Circle> = {},
  fails: () => NotWritten | null = () => null,
): HouseCircle & { readonly written: Change[] } {
  const [circle, setCircle] = createSignal<Circle>({ ...CIRCLE, ...first });
  const [before, setBefore] = createSignal<Change | null>(null);
  const written: Change[] = [];
  let ids = 0;
  const write = (change: Change): Promise<NotWritten | null> => {
    const why = fails();
    if (why !== null) return Promise.resolve(why);
    setBefore(inverse(circle(), change));
    setCircle(changed(circle(), change));
    written.push(change);
    return Promise.resolve(null);
  };
  return {
    circle,
    write,
    erase: (change) => write(change).then((why) => (why === null && setBefore(null), why)),
    canTakeBack: () => before() !== null,
    takeBack: () => {
      const back = before();
      return back === null ? Promise.resolve(null) : write(back).finally(() => setBefore(null));
    },
    freshId: () => `fresh-${++ids}`,
    written,
  };
}
