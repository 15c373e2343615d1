import { cleanup, render } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { HoldSlab } from '../../../src/parts/HoldSlab.tsx';
import { longestWord } from '../../../src/parts/longest-word.ts';
import { Slab } from '../../../src/parts/Slab.tsx';

afterEach(cleanup);

describe('the longest piece of a label that stays in one line', () => {
  it.each([
    ['Hold to take it in', 4],
    ['Zum Vergessen halten', 9],
    // Broad letters count for more.
    ['Nouvelle commande', 9],
    // At a soft hyphen a line may end: what stands before it shows a hyphen then.
    ['Im Kühl\u00adschrank', 7],
    ['Ofen\u00adhandschuh', 9],
  ])('of “%s” has %d letters', (label, letters) => expect(longestWord(label)).toBe(letters));
});

describe('what the big letters of a slab are fitted to', () => {
  const fitted = () => document.querySelector<HTMLElement>('.slab-room')!.style;

  it('is the longest word of a slab', () => {
    render(() => <Slab label="Ausgezogen" onPress={() => undefined} />);
    expect(fitted().getPropertyValue('--longest')).toBe('10');
  });

  it('is that of a gate as well', () => {
    render(() => (
      <HoldSlab label="Zum Vergessen halten" holding="Weiter" onHeld={() => undefined} />
    ));
    expect(fitted().getPropertyValue('--longest')).toBe('9');
  });
});
