import { describe, expect, it } from 'vitest';
import type { WaitModel } from '../../machines/kitchen/results.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import { doubts } from '../../src/core/speech/words/doubts.ts';
import { HOUR } from '../../src/core/units.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { sentencesOf, wordsOf } from '../core/speech/support/catalogue.ts';
import { Hand } from '../machines/support/hand.ts';
import { at } from '../machines/support/onward.ts';

const hour = (instant: number): string => new Date(instant).toISOString().slice(11, 16);
const view = (hand: Hand) =>
  benchView(hand.kitchen, focusOn(hand.kitchen, 'a')!, hour, null, { heat: 'C', weight: 'g' });
const detail = (hand: Hand): string => view(hand).detail;
const proving = (): Hand => at(new Hand({ wait: waitFor }), 'bulk.proving', 'levain.feed');

describe('a window in doubt', () => {
  it('says why in place of what is usual, for as long as it is in doubt', () => {
    const hand = proving();
    expect(detail(hand)).toMatch(/Keep it covered/);
    const { marks } = hand.kitchen.bakes['a']!.context;
    hand.dough('a', 29);
    expect(detail(hand)).toMatch(/^Next look at \d\d:\d\d\. Doughs this warm differ/);
    const wide = hand.kitchen.bakes['a']!.context.marks;
    const share = (m: Readonly<Record<string, number>>) =>
      (m['latest']! - m['earliest']!) / (m['likely']! - hand.records[0]!.fact.at);
    expect(share(wide)).toBeGreaterThan(share(marks));
    expect(hand.replayed().kitchen.bakes['a']!.context.doubt).toBe('above28');
    hand.takeBack();
    expect(detail(hand)).toMatch(/Keep it covered/);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('tells what a warm place would make of a cold dough, on screen and aloud', () => {
    const hand = proving();
    hand.measure('a', { what: 'kitchenTemperature', celsius: 17 });
    const { likely, warmed } = hand.kitchen.bakes['a']!.context.marks;
    expect(likely! - warmed!).toBeGreaterThan(45 * 60_000);
    // The next look stands above it, with the running time; aloud both are told.
    expect(detail(hand)).toBe(`In a warm place, 26 °C: ready about ${hour(warmed!)}.`);
    expect(view(hand).spoken).toMatch(/is the next look/);
    expect(view(hand).spoken).toMatch(/twenty-six degrees/);
    hand.turnTo(warmed! - 10 * 60_000);
    for (const item of ['rise45', 'rise70', 'rise85']) hand.press('a', 'taskDone', { item });
    expect(detail(hand)).toMatch(/Keep it covered/);
  });

  it('says of cold loaves whose whole window lies before the next look that they are ready by then', () => {
    const retard = (latest: number): string => {
      const wait: WaitModel = (input) => {
        if (input.stage !== 'proof.retard') return waitFor(input);
        const marks = { look: 10, earliest: 5, likely: 6, latest };
        const hours = Object.entries(marks).map(([mark, h]) => [mark, input.now + h * HOUR]);
        return { marks: Object.fromEntries(hours), model: 'm', doubt: 'coldProof' };
      };
      return detail(at(new Hand({ wait }), 'proof.retard', 'shape.divide'));
    };
    expect(retard(12)).toMatch(/^Next look at \d\d:\d\d\.$/);
    expect(retard(7)).toMatch(/^Next look at \d\d:\d\d\. They are likely ready by then\.$/);
  });

  it('is forgotten with its wait', () => {
    const hand = proving();
    hand.dough('a', 29);
    hand.turnTo(hand.deadline('a')!);
    hand.press('a', 'bulkReady');
    expect(hand.kitchen.bakes['a']!.context.doubt).toBeUndefined();
    expect(hand.records.at(-1)!.position.bakes['a']).not.toHaveProperty('doubt');
  });

  it('is told in one sentence of twelve words at most', () => {
    for (const text of Object.values(doubts)) {
      expect(sentencesOf(text)).toHaveLength(1);
      expect(wordsOf(text).length).toBeLessThanOrEqual(12);
    }
  });
});
