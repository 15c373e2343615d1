import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { doorPoke, type DoorSigns } from '../../../src/core/oven/door-poke.ts';
import { warmUpMinutes, type StandingLoaf } from '../../../src/core/oven/warm-up.ts';

const LOAF: Omit<StandingLoaf, 'q'> = {
  ...{ p: 0.08257, factor: 0.9, vigour: 1, grams: 900, celsius: 4, room: 22 },
};
const signs = fc.record<DoorSigns>({
  dent: fc.option(fc.constantFrom('springs', 'slow', 'stays', 'unsure')),
  grown: fc.option(fc.constantFrom('none', 'little', 'grown', 'unsure')),
  rim: fc.option(fc.constantFrom('below', 'level', 'above')),
  q: fc.option(fc.double({ min: 0.3, max: 1.8, noNaN: true })),
  cold: fc.boolean(),
  loaf: fc.constant(LOAF),
});
const NONE: DoorSigns = { dent: null, grown: null, rim: null, q: null, cold: true };

describe('a loaf at the oven’s door', () => {
  it('cold, is not told by its dent alone, whatever the dent does', () => {
    for (const dent of ['springs', 'slow', 'stays'] as const) {
      expect(doorPoke({ ...NONE, dent })).toEqual({
        ...{ verdict: 'bakeNow', reasons: ['coldDentWeak'], minutes: null },
      });
    }
  });

  it('cold, changes its answer by the dent only where its other signs leave it open', () => {
    fc.assert(
      fc.property(signs, (one) => {
        const { grown, rim } = one;
        const agree =
          (grown === 'grown' && rim === 'level') || (grown !== 'grown' && rim === 'below');
        fc.pre(agree && grown !== null && grown !== 'unsure');
        const answers = (['springs', 'slow', 'stays', null] as const).map(
          (dent) => doorPoke({ ...one, cold: true, dent }).verdict,
        );
        expect(new Set(answers).size).toBe(1);
      }),
    );
  });

  it('warm, is told by its dent', () => {
    const warm = (dent: DoorSigns['dent']) => doorPoke({ ...NONE, cold: false, dent });
    expect(warm('springs')).toMatchObject({ verdict: 'warm', minutes: 30 });
    expect(warm('slow')).toMatchObject({ verdict: 'bakeNow', minutes: null });
    expect(warm('stays').verdict).toBe('bakeFirst');
    expect(warm('unsure')).toMatchObject({ verdict: 'bakeNow', reasons: ['unsure'] });
  });

  it('gone over by any sign or by the clock, is never told to stand', () => {
    fc.assert(
      fc.property(signs, (one) => {
        const { verdict } = doorPoke(one);
        const { q, cold, dent, rim } = one;
        if (q !== null && q > 1.35) expect(verdict).not.toBe('warm');
        if (!cold && dent === 'stays') expect(verdict).not.toBe('warm');
        if (cold && rim === 'above' && dent === 'stays' && one.grown === 'grown') {
          expect(['bakeFirst', 'switchGoal', 'bakeNow']).toContain(verdict);
        }
      }),
    );
  });

  it('has its goal switched only where signs and clock agree that it is over', () => {
    const over: DoorSigns = { ...NONE, grown: 'grown', rim: 'above', dent: 'stays', q: 1.5 };
    expect(doorPoke(over)).toMatchObject({
      ...{ verdict: 'switchGoal', reasons: ['signsOver', 'indexOver'] },
    });
    expect(doorPoke({ ...over, q: 1.1 })).toMatchObject({
      ...{ verdict: 'bakeFirst', reasons: ['signsOver', 'indexReady', 'disagree'] },
    });
    expect(doorPoke({ ...over, q: null }).verdict).toBe('bakeFirst');
    expect(doorPoke({ ...NONE, rim: 'above', q: 1.5 }).verdict).toBe('bakeFirst');
    fc.assert(
      fc.property(signs, (one) => {
        if (doorPoke(one).verdict !== 'switchGoal') return;
        expect(one.q).toBeGreaterThan(1.35);
        expect(one.dent).toBe('stays');
      }),
    );
  });

  it('nearly over, goes first of those that are ready', () => {
    const ready: DoorSigns = { ...NONE, grown: 'grown', rim: 'level' };
    expect(doorPoke({ ...ready, q: 1.1 }).verdict).toBe('bakeNow');
    expect(doorPoke({ ...ready, q: 1.3 }).verdict).toBe('bakeFirst');
  });

  it('stands out as long as the clock says, within an hour or two; else the usual and says so', () => {
    const tight: DoorSigns = { ...NONE, grown: 'none', rim: 'below', dent: 'springs', q: 0.8 };
    expect(doorPoke(tight)).toMatchObject({ verdict: 'warm', minutes: 90 });
    expect(doorPoke(tight).reasons).toContain('noClock');
    fc.assert(
      fc.property(signs, (one) => {
        const { verdict, minutes, reasons } = doorPoke(one);
        expect(minutes === null).toBe(verdict !== 'warm');
        if (minutes === null) return;
        expect(minutes).toBeGreaterThanOrEqual(one.cold ? 60 : 20);
        expect(minutes).toBeLessThanOrEqual(120);
        expect(reasons.includes('noClock')).toBe(one.q === null);
      }),
    );
  });

  it('says nothing it was not shown', () => {
    expect(doorPoke(NONE)).toEqual({ verdict: 'bakeNow', reasons: ['unsure'], minutes: null });
    expect(doorPoke({ ...NONE, q: 0.7, loaf: LOAF })).toMatchObject({
      ...{ verdict: 'warm', reasons: ['indexNotYet'] },
    });
  });
});

describe('minutes a loaf warms up', () => {
  const q = fc.double({ min: 0.5, max: 1.2, noNaN: true });
  const room = fc.double({ min: 18, max: 28, noNaN: true });

  it('are fewer the further it has come, the warmer the room and the quicker the starter', () => {
    fc.assert(
      fc.property(q, room, (now, air) => {
        const minutes = (loaf: Partial<StandingLoaf>): number =>
          warmUpMinutes({ ...LOAF, q: now, room: air, ...loaf })!;
        const plain = minutes({});
        expect(plain === 0).toBe(now >= 1);
        expect(minutes({ q: now + 0.05 })).toBeLessThanOrEqual(plain);
        expect(minutes({ room: air + 2 })).toBeLessThanOrEqual(plain);
        expect(minutes({ vigour: 1.2 })).toBeLessThanOrEqual(plain);
        expect(minutes({ celsius: 10, q: now })).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('are null where it would not come to it in half a day', () => {
    expect(warmUpMinutes({ ...LOAF, q: 0.5, room: 4 })).toBeNull();
  });

  it('of a loaf that has hardly grown are in the order of what bakers do', () => {
    const minutes = warmUpMinutes({ ...LOAF, q: 0.75 })!;
    expect(minutes).toBeGreaterThan(45);
    expect(minutes).toBeLessThan(240);
  });
});
