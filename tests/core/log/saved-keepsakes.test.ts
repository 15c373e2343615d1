import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { About } from '../../../src/core/log/about.ts';
import { broughtKeepsakes, type KeepsakesHere } from '../../../src/core/log/brought-keepsakes.ts';
import { keepsakeKey } from '../../../src/core/log/keepsake-key.ts';
import { KEEPSAKE_LIMITS } from '../../../src/core/log/keepsake-limits.ts';
import type { SaidRow } from '../../../src/core/log/read-about.ts';
import {
  isKeepsakeLine,
  readSavedKeepsakes,
  savedKeepsakes,
  type SavedKeepsake,
  type SavedKeepsakes,
} from '../../../src/core/log/saved-keepsakes.ts';

const ALL = { notes: true, photos: true, voices: true };
const SAID: About = {
  ...{ tags: ['best', 'Zanzibar'], hidden: false, note: 'Zanzibar', ate: ['n1'], home: true },
  at: 10,
};
const row = (change: Partial<About> = {}, erased: number | null = null): SaidRow => ({
  about: { ...SAID, ...change },
  erased,
});
const photo = (id: string, at = 5, start = 'f-1'): SavedKeepsake => ({
  ...{ id, start, kind: 'photo', at, type: 'image/jpeg', data: '/9j/AAAA' },
});
const voice = (id: string): SavedKeepsake => ({
  ...photo(id),
  ...{ kind: 'voice', type: 'audio/mp4', data: 'AAAA' },
});
const file = (change: Partial<SavedKeepsakes> = {}): SavedKeepsakes => ({
  ...{ said: new Map(), kept: [], gone: new Set<string>() },
  ...change,
});
const FULL = file({
  said: new Map([
    ['f-1', row()],
    ['f-2', row({ note: '' }, 9)],
  ]),
  kept: [photo('a'), voice('b')],
  gone: new Set(['f-1/c', 'f-2/d']),
});
/** A tablet after it has taken a file in. */
const after = (here: SavedKeepsakes, brought: SavedKeepsakes): SavedKeepsakes => {
  const { said, puts, gone } = broughtKeepsakes(here, brought);
  const left = [...here.kept, ...puts].filter(({ start, id }) => !gone.has(keepsakeKey(start, id)));
  return {
    said: new Map([...here.said, ...said]),
    kept: left,
    gone: new Set([...here.gone, ...gone]),
  };
};

describe('in a file', () => {
  it('is read back as it was written, through text', () => {
    const lines = JSON.parse(JSON.stringify(savedKeepsakes(FULL, ALL))) as unknown[];
    expect(lines.every(isKeepsakeLine)).toBe(true);
    expect(readSavedKeepsakes(lines)).toEqual({ saved: FULL, reason: null });
    expect([{ picture: 'a' }, { circle: 'orders' }, 'about', null].some(isKeepsakeLine)).toBe(
      false,
    );
  });

  it('has no note, photo or voice that was not to go out, but always what was erased', () => {
    const out = { notes: false, photos: false, voices: false };
    const lines = savedKeepsakes(FULL, out);
    expect(JSON.stringify(lines)).not.toMatch(/Zanzibar|9j|AAAA/);
    const { saved } = readSavedKeepsakes(lines);
    expect(saved?.said.get('f-1')?.about).toEqual({ ...SAID, note: '', tags: ['best'] });
    expect(saved?.gone).toEqual(FULL.gone);
    const kinds = (change: object) =>
      readSavedKeepsakes(savedKeepsakes(FULL, { ...out, ...change })).saved?.kept.map(
        ({ kind }) => kind,
      );
    expect([kinds({ photos: true }), kinds({ voices: true })]).toEqual([['photo'], ['voice']]);
  });

  it('is all of it or nothing: the first bad line is named by its place', () => {
    const why = (line: unknown) => readSavedKeepsakes([{ keepsake: photo('z') }, line]).reason;
    expect(why({ keepsake: photo('z') })).toMatchObject({ at: 1, expected: 'each once' });
    expect(why({ keepsake: { ...photo('a'), data: 'nothing!' } })?.path).toBe(
      'keepsakes.keepsake.data',
    );
    expect(why({ keepsake: { ...photo('a'), data: 'AAAA' } })?.expected).toBe('a JPEG');
    const most = Math.ceil(KEEPSAKE_LIMITS.photoBytes / 3) * 4;
    expect(why({ keepsake: { ...photo('a'), data: `/9j/${'A'.repeat(most)}` } })?.expected).toBe(
      `at most ${most} letters`,
    );
    expect(why({ about: 'f-1', said: { ...SAID, note: 7 } })?.path).toMatch(/said\.note$/);
    expect(why({ erased: { start: 'f-1', id: 'a/b' } })?.at).toBe(1);
    expect(why('Zanzibar')).toEqual({
      ...{ path: 'keepsakes', expected: 'an object', got: 'a text', at: 1 },
    });
    const twice = [...savedKeepsakes(FULL, ALL), { about: 'f-1', said: SAID }];
    expect(readSavedKeepsakes(twice).reason?.expected).toBe('each bake once');
  });

  it('is never thrown about, whatever stands there', () => {
    const any = fc.anything();
    const line = fc.oneof(
      any,
      fc.record({ about: fc.oneof(any, fc.string()), said: any }),
      fc.record({ keepsake: fc.record({ id: any, start: any, kind: any, at: any, data: any }) }),
      fc.record({ erased: any }),
    );
    fc.assert(
      fc.property(fc.array(line), (lines) => {
        const { saved, reason } = readSavedKeepsakes(lines);
        expect(saved === null).toBe(reason !== null);
      }),
    );
  });
});

describe('brought in', () => {
  const here = (change: Partial<KeepsakesHere>): KeepsakesHere => ({ ...file(), ...change });

  it('leaves what is said here, joins the tags and fills what is blank', () => {
    const ours = row({ tags: ['gift'], note: 'Ours', ate: [], home: false, at: 3, hidden: true });
    const { said } = broughtKeepsakes(
      here({ said: new Map([['f-1', ours]]) }),
      file({ said: new Map([['f-1', row()]]) }),
    );
    expect(said.get('f-1')).toEqual(
      row({ tags: ['gift', 'best', 'Zanzibar'], note: 'Ours', at: 3, hidden: true }),
    );
    const who = row({ ate: [], home: true });
    const brought = broughtKeepsakes(
      here({ said: new Map([['f-1', who]]) }),
      file({ said: new Map([['f-1', row()]]) }),
    );
    expect(brought.said).toEqual(new Map());
  });

  it('brings nothing back that was erased here, one by one or all of a bake', () => {
    const { puts, gone } = broughtKeepsakes(
      here({ gone: new Set(['f-1/a']) }),
      file({ kept: [photo('a'), photo('b')] }),
    );
    expect([puts.map(({ id }) => id), gone]).toEqual([['b'], new Set()]);
    const erased = row({ tags: [], note: '', ate: [], home: false, at: 20 }, 20);
    const its = broughtKeepsakes(
      here({ said: new Map([['f-1', erased]]) }),
      file({
        said: new Map([['f-1', row({ at: 10 })]]),
        kept: [photo('old', 20), photo('new', 21), photo('other', 1, 'f-2')],
      }),
    );
    expect(its.puts.map(({ id }) => id)).toEqual(['new', 'other']);
    expect(its.said.get('f-1')).toEqual(row({ ...erased.about, tags: ['best'] }, 20));
  });

  it('erases here what was erased where the file is from', () => {
    const { gone } = broughtKeepsakes(
      here({ kept: [photo('a'), photo('b')] }),
      file({ gone: new Set(['f-1/a', 'f-9/z']) }),
    );
    expect(gone).toEqual(new Set(['f-1/a', 'f-9/z']));
    const its = broughtKeepsakes(
      here({ said: new Map([['f-1', row({ at: 10 })]]), kept: [photo('a', 5), photo('b', 30)] }),
      file({ said: new Map([['f-1', row({ note: '', ate: [], at: 25 }, 20)]]) }),
    );
    expect(its.gone).toEqual(new Set(['f-1/a']));
    expect(its.said.get('f-1')?.about.note).toBe('');
  });

  const said = fc.record({
    about: fc.record({
      ...{ tags: fc.uniqueArray(fc.constantFrom('best', 'gift', 'own', 'other')) },
      ...{ hidden: fc.boolean(), note: fc.constantFrom('', 'One', 'Two'), home: fc.boolean() },
      ...{ ate: fc.uniqueArray(fc.constantFrom('n1', 'n2')), at: fc.nat(20) },
    }),
    erased: fc.option(fc.nat(20)),
  });
  /** What is erased lies under its key no more. */
  const tablet: fc.Arbitrary<SavedKeepsakes> = fc
    .record({
      said: fc
        .dictionary(fc.constantFrom('f-1', 'f-2'), said, { noNullPrototype: true })
        .map((its) => new Map(Object.entries(its))),
      kept: fc.uniqueArray(fc.constantFrom('a', 'b', 'c', 'd')),
      gone: fc.uniqueArray(fc.constantFrom('a', 'b', 'c')),
    })
    .map(({ said, kept, gone }) => {
      const its = (id: string): SavedKeepsake =>
        photo(id, id.charCodeAt(0) % 20, 'ac'.includes(id) ? 'f-1' : 'f-2');
      const keys = gone.map((id) => keepsakeKey(its(id).start, id));
      return {
        said,
        kept: kept.filter((id) => !gone.some((one) => one === id)).map(its),
        gone: new Set(keys),
      };
    });

  it('is the same brought twice as once, and never brings back what was erased', () => {
    fc.assert(
      fc.property(tablet, tablet, (ours, theirs) => {
        const once = after(ours, theirs);
        const again = broughtKeepsakes(once, theirs);
        expect(again.puts).toEqual([]);
        expect(again.said).toEqual(new Map());
        for (const { start, id, at } of once.kept.filter((one) => !ours.kept.includes(one))) {
          expect(ours.gone.has(keepsakeKey(start, id))).toBe(false);
          expect(at).toBeGreaterThan(once.said.get(start)?.erased ?? -1);
        }
        for (const key of theirs.gone)
          expect(once.kept.map(({ start, id }) => keepsakeKey(start, id))).not.toContain(key);
      }),
    );
  });

  it('leaves the same tags and the same erased on two tablets that bring in each other', () => {
    fc.assert(
      fc.property(tablet, tablet, (ours, theirs) => {
        const [a, b] = [after(ours, theirs), after(theirs, ours)];
        const told = (its: SavedKeepsakes) =>
          [...its.said]
            .map(([start, { about, erased }]) => [start, about.tags.toSorted(), erased])
            .toSorted((x, y) => (String(x[0]) < String(y[0]) ? -1 : 1));
        expect(told(a)).toEqual(told(b));
      }),
    );
  });
});
