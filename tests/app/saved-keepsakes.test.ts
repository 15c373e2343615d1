import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Keepsake } from '../../src/core/log/about.ts';
import { serveFormulas } from '../fakes/baking.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { bakes, newTablet, savedBy, takes, wiped, type Tablet } from '../fakes/two-tablets.ts';

beforeEach(() => serveFormulas());
afterEach(() => vi.unstubAllGlobals());
afterAll(async () => {
  await loadedLater();
});

/** A bake of which something is said, seen and heard, each with a mark that stands nowhere else. */
async function remembered(): Promise<{ readonly tablet: Tablet; readonly start: string }> {
  const tablet = await newTablet('counter');
  const start = await bakes(tablet);
  await (await tablet.house.log()).say(start, { note: 'Qvyxlo came.', ate: ['z'] });
  const at = tablet.house.now();
  const keep = (id: string, kind: Keepsake['kind'], type: string, bytes: readonly number[]) =>
    tablet.disk.keepsakes.kept.set(`${start}/${id}`, {
      ...{ id, start, kind, at, type },
      bytes: Uint8Array.from(bytes),
    });
  keep('p', 'photo', 'image/jpeg', [0xff, 0xd8, 0xff, 7]);
  keep('v', 'voice', 'audio/webm;codecs=opus', [1, 2, 3]);
  return { tablet, start };
}
const idsIn = async ({ house }: Tablet, start: string): Promise<readonly string[]> =>
  (await (await house.log()).keepsakes(start)).map(({ id }) => id);

describe('what is kept of bakes, in a saved file', () => {
  it('comes back as it was; voices only where they were ticked, for that once', async () => {
    const { tablet, start } = await remembered();
    const { tablet: back } = await takes(await wiped(tablet), await savedBy(tablet, true));
    expect([...back.disk.keepsakes.said]).toEqual([...tablet.disk.keepsakes.said]);
    expect([...back.disk.keepsakes.kept]).toEqual([...tablet.disk.keepsakes.kept]);
    const { tablet: quiet } = await takes(await wiped(tablet), await savedBy(tablet));
    expect(await idsIn(quiet, start)).toEqual(['p']);
    expect((await quiet.house.log()).abouts()[start]).toMatchObject({ note: 'Qvyxlo came.' });
    expect(await idsIn(back, start)).toEqual(['p', 'v']);
  });

  it('does not come back once it was erased for good, in another file’s way neither', async () => {
    const { tablet, start } = await remembered();
    const whole = await savedBy(tablet, true);
    tablet.world.clock.turn(1_000);
    const log = await tablet.house.log();
    await log.erase(start, 'p');
    const { tablet: one } = await takes(tablet, whole);
    expect(await idsIn(one, start)).toEqual(['v']);
    one.world.clock.turn(1_000);
    await (await one.house.log()).eraseAll(start);
    const { tablet: none } = await takes(one, whole);
    expect(await idsIn(none, start)).toEqual([]);
    expect((await none.house.log()).abouts()[start]).toMatchObject({ note: '', ate: [] });
    // That it was erased is in the file, and no byte of it.
    const after = await savedBy(none, true);
    expect(after).not.toMatch(/Qvyxlo|"AQID"/);
    const { tablet: anew } = await takes(await wiped(none), after);
    const { tablet: last } = await takes(anew, whole);
    expect(await idsIn(last, start)).toEqual([]);
    expect((await last.house.log()).abouts()[start]).toMatchObject({ note: '', ate: [] });
  });

  it('tells nobody who was erased from the circle', async () => {
    const { tablet, start } = await remembered();
    const whole = await savedBy(tablet);
    const empty = await wiped(tablet);
    empty.disk.circle.rows.set('gone:z', true);
    const { tablet: back } = await takes(empty, whole);
    expect((await back.house.log()).abouts()[start]!.ate).toEqual([]);
  });

  it('is left out where it cannot be read, and that is told', async () => {
    const { tablet } = await remembered();
    tablet.disk.keepsakes.fail('closed');
    expect(await savedBy(tablet)).not.toContain('Qvyxlo');
    await vi.waitFor(() =>
      expect(tablet.house.told().map(({ text }) => text)).toEqual([
        expect.stringContaining('holds all but them'),
      ]),
    );
  });
});
