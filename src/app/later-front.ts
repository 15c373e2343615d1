import { createSignal } from 'solid-js';
import type { House } from '../screens/house.ts';
import type { Kept } from './keeper.ts';

type Front = typeof import('../screens/front.ts');

/**
 * Which bench a page opens on, and which one a call brings to the front: wanted only where a bake runs,
 * so a kitchen in which nothing happened yet is shown without it. It is here before anything can ring.
 */
export async function makeFront(
  kept: () => Pick<Kept, 'kitchen' | 'records'>,
  ringing: House['ringing'],
): Promise<House['front']> {
  const [front, setFront] = createSignal<Front | null>(null);
  const fetch = async (): Promise<void> => {
    const found = await import('../screens/front.ts');
    setFront(found);
  };
  if (kept().records.length > 0) await fetch();
  return {
    fetch: () => void fetch(),
    opens: () => front()?.openingBake(kept().kitchen, kept().records) ?? null,
    brings(shown) {
      return front()?.frontOf(kept().kitchen, ringing(), shown) ?? null;
    },
  };
}
