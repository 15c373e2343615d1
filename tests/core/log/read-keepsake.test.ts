import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { About, Keepsake } from '../../../src/core/log/about.ts';
import { keepsakeKey } from '../../../src/core/log/keepsake-key.ts';
import { KEEPSAKE_LIMITS } from '../../../src/core/log/keepsake-limits.ts';
import { readAbout, readSaid, saidRow } from '../../../src/core/log/read-about.ts';
import { GONE_ROW, readKeepsake, readKept } from '../../../src/core/log/read-keepsake.ts';
import { erasedSaid, saidWith } from '../../../src/core/log/said-with.ts';

const SAID: About = {
  ...{ tags: ['best', 'for the mill'], hidden: false, note: 'Sour,\nbut good', ate: ['n1'] },
  ...{ home: true, at: 1_935_000_000_000 },
};
const PHOTO: Keepsake = {
  ...{ id: 'a', start: 'f-1', kind: 'photo', at: 5, type: 'image/jpeg' },
  bytes: Uint8Array.from([0xff, 0xd8, 0xff, 1]),
};
const VOICE: Keepsake = {
  ...PHOTO,
  ...{ id: 'b', kind: 'voice', type: 'audio/webm;codecs=opus', bytes: Uint8Array.of(1, 2) },
};
const of = (one: Keepsake) => readKeepsake(keepsakeKey(one.start, one.id), one);
const anything = fc.anything({ withTypedArray: true, withDate: true, withMap: true });

describe('what is said of a bake', () => {
  it('is read back as it was written, since when it was erased too', () => {
    expect(readAbout({ ...SAID, more: 'from a newer program' })).toEqual({
      said: { about: SAID, erased: null },
      reason: null,
    });
    const row = { about: SAID, erased: 7 };
    expect(readAbout(saidRow(row)).said).toEqual(row);
    expect(readSaid(new Map([['f-1', SAID]]))).toEqual({
      said: new Map([['f-1', { about: SAID, erased: null }]]),
      misread: [],
    });
  });

  it('is always written so that it can be read back, whatever is pasted or pressed', () => {
    const text = fc.string({ unit: 'binary', maxLength: 3_000 });
    fc.assert(
      fc.property(
        fc.record({ tags: fc.array(text), note: text, hidden: fc.boolean(), home: fc.boolean() }),
        fc.option(fc.constant(SAID)),
        (change, said) => {
          const about = saidWith(said, change, 12);
          expect(readAbout(structuredClone(about)).said).toEqual({ about, erased: null });
          expect(saidWith(about, {}, 12)).toEqual(about);
        },
      ),
    );
  });

  it('is cut where it is longer than there is room for', () => {
    const note = '\u{1F35E}'.repeat(5_000);
    const { about } = readAbout({ ...SAID, note, tags: ['x'.repeat(99)] }).said!;
    expect([...about.note]).toHaveLength(KEEPSAKE_LIMITS.noteLetters);
    expect(about.tags).toEqual(['x'.repeat(KEEPSAKE_LIMITS.tagLetters)]);
  });

  it('has only its hiding and tags of the catalogue once it is erased', () => {
    expect(erasedSaid({ ...SAID, hidden: true }, 9)).toEqual({
      ...{ tags: ['best'], hidden: true, note: '', ate: [], home: false, at: 9 },
    });
    expect(erasedSaid(null, 9).tags).toEqual([]);
  });

  it('names what of it cannot be read, and nothing that stands in it', () => {
    const why = (change: object) => readAbout({ ...SAID, ...change }).reason;
    expect(why({ note: 4 })).toEqual({ path: 'said.note', expected: 'a text', got: '4' });
    expect(why({ ate: [''] })?.path).toBe('said.ate[0]');
    expect(why({ ate: ['constructor'] })?.path).toBe('said.ate[0]');
    expect(why({ hidden: 'Zanzibar' })).toEqual({
      path: 'said.hidden',
      expected: 'true or false',
      got: 'a text',
    });
    expect(readAbout(null).reason?.path).toBe('said');
    expect(readSaid(new Map<unknown, unknown>([[7, SAID]])).misread).toHaveLength(1);
    expect(readSaid(new Map([['__proto__', SAID]])).misread).toHaveLength(1);
  });

  it('is never thrown about, whatever lies there', () => {
    fc.assert(
      fc.property(anything, anything, (key, row) => {
        const { said, misread } = readSaid(new Map([[key, row]]));
        expect(said.size + misread.length).toBe(1);
        for (const { path, expected, got } of misread)
          expect([path, expected, got]).not.toContain('');
      }),
    );
    fc.assert(
      fc.property(
        fc.record({
          ...{ tags: anything, hidden: anything, note: anything, ate: anything, home: anything },
          ...{ at: anything, erased: anything },
        }),
        (row) => {
          const { said, reason } = readAbout(row);
          expect(said === null).toBe(reason !== null);
        },
      ),
    );
  });
});

describe('what is kept of a bake', () => {
  it('is read back as it was written, the oldest first, and what was erased by its key', () => {
    expect(of(PHOTO)).toEqual({ kept: PHOTO, gone: false, reason: null });
    expect(of(VOICE).kept).toEqual(VOICE);
    const older = { ...PHOTO, id: 'c', at: 4 };
    const rows = new Map<string, unknown>([
      ['f-1/a', PHOTO],
      ['f-1/b', VOICE],
      ['f-1/c', older],
      ['f-1/d', GONE_ROW],
    ]);
    expect(readKept(rows)).toEqual({
      kept: [older, PHOTO, VOICE],
      gone: new Set(['f-1/d']),
      misread: [],
    });
  });

  it('names what of it cannot be read', () => {
    const why = (change: object, key = 'f-1/a') =>
      readKeepsake(key, { ...PHOTO, ...change }).reason;
    expect(why({}, 'f-2/a')?.path).toBe('kept.id');
    expect(why({}, 'f-1')?.path).toBe('kept.key');
    expect(why({ kind: 'film' })?.path).toBe('kept.kind');
    expect(why({ type: 'image/png' })?.path).toBe('kept.type');
    expect(why({ kind: 'voice', type: 'text/html' })?.path).toBe('kept.type');
    expect(why({ at: Number.NaN })?.path).toBe('kept.at');
    expect(why({ bytes: [1] })).toEqual({
      path: 'kept.bytes',
      expected: 'bytes',
      got: 'a list of 1',
    });
    expect(why({ bytes: new Uint8Array(0) })?.got).toBe('0');
    expect(why({ bytes: Uint8Array.of(1, 2, 3) })?.expected).toBe('a JPEG');
    expect(why({ bytes: new Uint8Array(KEEPSAKE_LIMITS.photoBytes + 1) })?.path).toBe('kept.bytes');
  });

  it('is never thrown about, whatever lies there', () => {
    fc.assert(
      fc.property(anything, anything, (key, row) => {
        const { kept, gone, misread } = readKept(new Map([[key, row]]));
        expect(kept.length + gone.size + misread.length).toBe(1);
      }),
    );
    fc.assert(
      fc.property(
        fc.record({
          ...{ id: anything, start: anything, at: anything, type: anything, bytes: anything },
          kind: fc.constantFrom('photo', 'voice', 7),
        }),
        (row) => {
          const { kept, gone, reason } = readKeepsake('f-1/a', row);
          expect([kept !== null, gone, reason !== null].filter(Boolean)).toHaveLength(1);
        },
      ),
    );
  });
});
