import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decide, type ToDecide } from '../../../src/core/ear/decide.ts';
import { COMMANDS, EAR_PHRASES } from '../../../src/core/ear/phrases.ts';
import { flat, person, saying } from './support/sayings.ts';

const BAKER = person('baker', ['done', 'takeBack', 'sayAgain', 'longer', 'hush']);
const ask: ToDecide = {
  saying: saying('done'),
  room: -55,
  long: false,
  people: [BAKER],
  active: ['done', 'takeBack', 'sayAgain'],
  engine: 'plain',
  last: null,
};

describe('what was said', () => {
  it('is the phrase it is nearest to, and whose voice it is', () => {
    for (const phrase of ['done', 'takeBack', 'sayAgain'] as const)
      expect(decide({ ...ask, saying: saying(phrase) })).toEqual({ phrase, person: 'baker' });
  });

  it('is another, where a phrase is nearest that is known and not asked for', () => {
    expect(decide({ ...ask, saying: saying('longer') })).toEqual({ phrase: null, why: 'other' });
  });

  it('is another, where it is far from all of them', () => {
    expect(decide({ ...ask, saying: saying('showMe') })).toEqual({ phrase: null, why: 'other' });
  });

  it('is unclear a little beyond what is near enough, and where two are as near', () => {
    const beyond = saying('done', 3.75);
    expect(decide({ ...ask, saying: beyond })).toEqual({ phrase: null, why: 'unclear' });
    const twins = person('baker', ['done']);
    const both = { ...twins, sayings: { ...twins.sayings, takeBack: twins.sayings.done! } };
    expect(decide({ ...ask, people: [both] })).toEqual({ phrase: null, why: 'unclear' });
  });

  it('is talk where it was long, and nobody looks for a phrase in it', () => {
    expect(decide({ ...ask, long: true })).toEqual({ phrase: null, why: 'long' });
  });

  it('was too loud to tell where nothing is found in a loud room, and is taken there where it is found', () => {
    const loud = { ...ask, room: -20 };
    expect(decide({ ...loud, saying: saying('showMe') })).toEqual({ phrase: null, why: 'loud' });
    expect(decide(loud)).toEqual({ phrase: 'done', person: 'baker' });
  });
});

describe('digits', () => {
  const counts = person('baker', ['done', 'two', 'three', 'yes']);

  it('are told from all digits: one that may not come now is no other digit', () => {
    const digits = { ...ask, people: [counts], active: ['two', 'yes'] as const };
    expect(decide({ ...digits, saying: saying('two') })).toMatchObject({ phrase: 'two' });
    expect(decide({ ...digits, saying: saying('yes') })).toMatchObject({ phrase: 'yes' });
    expect(decide({ ...digits, saying: saying('three') })).toEqual({ phrase: null, why: 'other' });
  });

  it('are no rivals of a command, nor commands of a digit', () => {
    const same = { ...counts, sayings: { ...counts.sayings, two: counts.sayings.done! } };
    expect(decide({ ...ask, people: [same] })).toMatchObject({ phrase: 'done' });
    expect(decide({ ...ask, people: [same], active: ['two'] })).toMatchObject({ phrase: 'two' });
  });
});

describe('people', () => {
  const child = person('child', ['takeBack', 'hush'], 40);

  it('are all listened to, whoever spoke last', () => {
    for (const last of [null, 'baker', 'child', 'gone']) {
      const people = [BAKER, child];
      expect(decide({ ...ask, people, last })).toMatchObject({ person: 'baker' });
      const theirs = { ...ask, people, last, saying: saying('takeBack', 0, 40) };
      expect(decide(theirs)).toEqual({ phrase: 'takeBack', person: 'child' });
    }
  });

  it('the last who spoke is understood where another says something like it', () => {
    const twin = { ...BAKER, id: 'twin' };
    expect(decide({ ...ask, people: [BAKER, twin], last: 'twin' })).toMatchObject({
      person: 'twin',
    });
    expect(decide({ ...ask, people: [BAKER, twin], last: 'baker' })).toMatchObject({
      person: 'baker',
    });
  });

  it('are heard by the net only where it heard all that they said', () => {
    const learnt = person('baker', ['done', 'takeBack'], 0, true);
    const heard = { ...saying('done', 0, 0, true), plain: saying('done', 3.75).plain };
    const asked = { ...ask, saying: heard, engine: 'learned' } as const;
    // The net knows it for the same, and its shape alone would not do.
    expect(decide({ ...asked, people: [learnt] })).toMatchObject({ phrase: 'done' });
    expect(decide({ ...asked, engine: 'plain', people: [learnt] })).toMatchObject({
      why: 'unclear',
    });
    const half = { ...learnt, sayings: { ...learnt.sayings, hush: [saying('hush')] } };
    expect(decide({ ...asked, people: [half] })).toMatchObject({ why: 'unclear' });
  });
});

describe('whatever is said', () => {
  const phrases = fc.constantFrom(...EAR_PHRASES);
  const anything = fc.record({
    said: phrases,
    off: fc.double({ min: 0, max: 1, noNaN: true }),
    known: fc.uniqueArray(phrases, { maxLength: 8 }),
    active: fc.uniqueArray(phrases, { maxLength: 4 }),
    room: fc.double({ min: -90, max: 0, noNaN: true }),
    engine: fc.constantFrom('plain', 'learned'),
  });

  it('no phrase comes that is not asked for or not known, and none of nobody', () => {
    fc.assert(
      fc.property(anything, ({ said, off, known, active, room, engine }) => {
        const asked = { ...ask, saying: saying(said, off), active, room, engine } as ToDecide;
        const heard = decide({ ...asked, people: [person('baker', known)] });
        if (heard.phrase !== null) {
          expect(active).toContain(heard.phrase);
          expect(known).toContain(heard.phrase);
        }
        expect(decide({ ...asked, people: [] }).phrase).toBeNull();
        expect(decide({ ...asked, people: [person('baker', [])] }).phrase).toBeNull();
      }),
      { numRuns: 60 },
    );
  });

  it.each([
    ['nothing', flat(0)],
    ['silence', flat(30)],
    ['no number', flat(30, NaN)],
    ['no end', flat(30, Infinity)],
    [
      'frames of another kind',
      { plain: { count: 2, size: 3, data: new Float32Array(6).fill(1) }, learned: null },
    ],
  ])('%s is no phrase, and no fault', (_, broken) => {
    for (const engine of ['plain', 'learned'] as const) {
      const asked = { ...ask, saying: broken, active: COMMANDS, engine };
      expect(decide(asked)).toEqual({ phrase: null, why: 'other' });
      const known = { ...BAKER, sayings: { done: [broken] } };
      expect(decide({ ...ask, engine, people: [known] }).phrase).toBeNull();
    }
  });
});
