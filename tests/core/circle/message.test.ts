import { describe, expect, it } from 'vitest';
import type { Neighbour, Order } from '../../../src/core/circle/circle.ts';
import { messageTo, messageToAll, type MessageRead } from '../../../src/core/circle/message.ts';
import { pickUps } from '../../../src/core/circle/pick-up.ts';

const READ: MessageRead = {
  day: 'Sat 3 May 2031',
  hour: (at) => `${at / 60}:00`,
  bread: (id) => ({ cherry: 'cherry and hazelnut', wheat: 'lane wheat' })[id] ?? id,
  weight: (grams) => `${grams} g`,
  price: () => null,
};
const ORDER: Order = {
  ...{ id: 'o', who: 'k', day: '2031-05-03', at: 960, paid: false, handed: null, made: 0 },
  ...{ standing: null },
  lines: [
    { bread: 'cherry', count: 2, grams: null, cut: true },
    { bread: 'wheat', count: 1, grams: 500, cut: false },
  ],
};
const WARM = 'If the loaf is warm, leave its bag open until it is cool.';

describe('a text for one neighbour', () => {
  it('says when, what, and that a warm bag stays open', () => {
    expect(messageTo({ order: ORDER }, READ).split('\n')).toEqual([
      'Your bread on Sat 3 May 2031, at 16:00:',
      '2 × cherry and hazelnut, sliced',
      '1 × lane wheat, 500 g',
      WARM,
    ]);
    expect(messageTo({ order: { ...ORDER, at: null } }, READ)).toMatch(/2031, at any time:\n/);
  });

  it('says what is to pay where prices are set and nothing was paid', () => {
    const priced = { ...READ, price: () => '€14.00' };
    expect(messageTo({ order: ORDER }, priced)).toContain('\nTo pay: €14.00.\n');
    expect(messageTo({ order: { ...ORDER, paid: true } }, priced)).not.toContain('pay');
  });
});

describe('a text for all', () => {
  const neighbours: readonly Neighbour[] = [
    { id: 'k', name: 'K {date}\nof the quay', watch: ['milk'] },
    { id: 'm', name: 'M', watch: [] },
  ];
  const list = pickUps(
    [ORDER, { ...ORDER, id: 'p', who: 'm', at: null, paid: true, lines: ORDER.lines.slice(1) }],
    neighbours,
  );

  it('goes by hour and name, each in one line, whatever stands in a name', () => {
    expect(messageToAll(list, READ).split('\n')).toEqual([
      'Bread on Sat 3 May 2031:',
      '',
      'At 16:00',
      'K {date} of the quay: 2 × cherry and hazelnut, sliced; 1 × lane wheat, 500 g',
      '',
      'At any time',
      'M: 1 × lane wheat, 500 g',
      '',
      WARM,
    ]);
  });

  it('tells no one what another pays or must not eat', () => {
    const text = messageToAll(list, { ...READ, price: () => '€14.00' });
    expect(text).not.toMatch(/€|pay|paid|milk/i);
  });
});
