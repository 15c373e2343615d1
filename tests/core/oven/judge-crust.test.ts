import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boilingPoint } from '../../../src/core/oven/boiling.ts';
import { coreSays } from '../../../src/core/oven/core-spots.ts';
import { coreTarget } from '../../../src/core/oven/core-target.ts';
import { judgeCrust, type CrustSigns } from '../../../src/core/oven/judge-crust.ts';

const core = fc.double({ min: -20, max: 230, noNaN: true });
const signs = fc.record<CrustSigns>({
  colour: fc.option(fc.constantFrom('pale', 'golden', 'dark')),
  base: fc.option(fc.constantFrom('hollow', 'dull', 'dark')),
  cores: fc.array(fc.oneof(core, fc.double({ min: 80, max: 101, noNaN: true })), { maxLength: 4 }),
  open: fc.integer({ min: 0, max: 60 }),
  least: fc.integer({ min: 10, max: 30 }),
  filled: fc.boolean(),
  height: fc.double({ min: 0, max: 3500, noNaN: true }),
});
const GOLDEN: CrustSigns = {
  ...{ colour: 'golden', base: 'hollow', cores: [], open: 22, least: 20, filled: false },
};
const OUT = ['out', 'trayBelowNextTime'];

describe('a loaf at the open oven', () => {
  it('comes out golden, hollow and in its time, core or no core', () => {
    expect(judgeCrust(GOLDEN)).toEqual({
      ...{ verdict: 'out', reasons: ['golden', 'baseHollow'], ask: null },
    });
    expect(judgeCrust({ ...GOLDEN, cores: [97] }).reasons).toContain('coreReady');
  });

  it('never comes out for its core alone', () => {
    // The loaf that had 99 °C a quarter of an hour early, and was gummy.
    const gummy = judgeCrust({ ...GOLDEN, base: null, cores: [99], open: 5 });
    expect(gummy).toMatchObject({ verdict: 'fiveMore', reasons: ['golden', 'coreReady', 'early'] });
    fc.assert(
      fc.property(signs, (one) => {
        const { verdict } = judgeCrust(one);
        if (one.colour === null || one.colour === 'pale') expect(OUT).not.toContain(verdict);
        if (one.colour !== 'dark' && one.open < one.least) expect(OUT).not.toContain(verdict);
      }),
    );
  });

  it('never comes out while core or base say that it is raw', () => {
    fc.assert(
      fc.property(signs, (one) => {
        const { verdict, reasons } = judgeCrust(one);
        if (reasons.includes('coreLow') || one.base === 'dull') expect(OUT).not.toContain(verdict);
      }),
    );
  });

  it('never goes back in for being open longer', () => {
    fc.assert(
      fc.property(signs, fc.nat({ max: 30 }), (one, more) => {
        if (OUT.includes(judgeCrust(one).verdict)) {
          expect(OUT).toContain(judgeCrust({ ...one, open: one.open + more }).verdict);
        }
      }),
    );
  });

  it('comes out dark before it burns, or goes back covered where it is raw', () => {
    expect(judgeCrust({ ...GOLDEN, colour: 'dark', base: null, open: 5 })).toMatchObject({
      ...{ verdict: 'out', reasons: ['dark', 'early', 'oneSign'] },
    });
    expect(judgeCrust({ ...GOLDEN, colour: 'dark', cores: [80] })).toMatchObject({
      ...{ verdict: 'fiveMore', reasons: ['dark', 'baseHollow', 'coreLow', 'tent'] },
    });
  });

  it('leaves the iron with a dark base: onto the rack, or out with a tray below next time', () => {
    const dark = { ...GOLDEN, base: 'dark' as const };
    expect(judgeCrust(dark).verdict).toBe('outOfPotOnRack');
    expect(judgeCrust({ ...dark, colour: 'pale' }).verdict).toBe('outOfPotOnRack');
    expect(judgeCrust({ ...dark, cores: [97] }).verdict).toBe('trayBelowNextTime');
    fc.assert(
      fc.property(signs, (one) => {
        const { verdict } = judgeCrust(one);
        const iron = verdict === 'outOfPotOnRack' || verdict === 'trayBelowNextTime';
        expect(iron).toBe(one.base === 'dark');
      }),
    );
  });

  it('asks for the sign that is missing, and lets nothing be decided by one', () => {
    expect(judgeCrust({ ...GOLDEN, base: null })).toEqual({
      ...{ verdict: 'fiveMore', reasons: ['golden', 'oneSign'] },
      ask: { key: 'askBase', values: {} },
    });
    expect(judgeCrust({ ...GOLDEN, colour: null }).ask?.key).toBe('askColour');
  });
});

describe('the core that counts', () => {
  const plain = { filled: false };
  const filled = { filled: true };

  it('asks in words about what no crumb has: 205 is °F, 120 is no crumb', () => {
    expect(coreSays([205], plain)).toEqual({
      ...{ says: null, core: null },
      ask: { key: 'coreFahrenheit', values: { got: 205, meant: 96 } },
    });
    expect(coreSays([120], plain).ask).toEqual({ key: 'coreNotCrumb', values: { got: 120 } });
    expect(judgeCrust({ ...GOLDEN, cores: [205] })).toMatchObject({
      ...{ verdict: 'out', ask: { key: 'coreFahrenheit' } },
    });
  });

  it('is the coolest of several spots, and a hot one beside it changes nothing', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 60, max: 100, noNaN: true }), { minLength: 1 }),
        (all) => {
          expect(coreSays(all, plain).core).toBe(Math.min(...all));
          expect(coreSays([...all, 150], plain).core).toBe(Math.min(...all));
        },
      ),
    );
  });

  it('is not demanded of a pocket of cheese', () => {
    const one = coreSays([84], filled);
    expect(one).toMatchObject({ says: null, ask: { key: 'coreSecond' } });
    expect(coreSays([84, 97], filled)).toMatchObject({ says: 'low', ask: { key: 'coreThird' } });
    expect(coreSays([84, 97, 96], filled)).toEqual({ says: 'ready', core: 96, ask: null });
    expect(coreSays([84, 86, 85], filled)).toMatchObject({ says: 'low', core: 84 });
    expect(coreSays([84], plain)).toMatchObject({ says: 'low', ask: null });
    expect(judgeCrust({ ...GOLDEN, cores: [84], filled: true }).verdict).toBe('out');
    expect(judgeCrust({ ...GOLDEN, cores: [84], filled: false }).verdict).toBe('fiveMore');
  });

  it('is asked for no higher than water boils', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 3500, noNaN: true }), (height) => {
        const most = boilingPoint(height) - 1;
        expect(coreSays([most], { filled: false, height }).says).toBe('ready');
        expect(coreSays([coreTarget(height).least - 0.1], { filled: false, height }).says).toBe(
          'low',
        );
      }),
    );
    expect(coreSays([91], { filled: false, height: 1500 }).says).toBe('ready');
    expect(coreSays([91], plain).says).toBe('low');
  });
});
