import { createSignal, type Accessor } from 'solid-js';
import type { Settings } from '../../machines/ports.ts';
import type { Ways } from '../screens/house.ts';

const NAME = 'ways';
const PLAIN: Ways = { theme: 'light', hands: 'right', text: 'plain' };

const read = (kept: unknown): Ways => {
  const found = (typeof kept === 'object' && kept !== null ? kept : {}) as Partial<Ways>;
  return {
    theme: found.theme === 'dark' ? 'dark' : 'light',
    hands: found.hands === 'left' ? 'left' : 'right',
    text: found.text === 'bigger' ? 'bigger' : 'plain',
  };
};

/** How things are shown on this tablet; written on the root, where the styles look for it. */
export async function openWays(
  settings: Settings,
  root: HTMLElement,
): Promise<{ readonly ways: Accessor<Ways>; choose(change: Partial<Ways>): void }> {
  const [ways, setWays] = createSignal(read(await settings.get(NAME).catch(() => null)));
  const show = ({ theme, hands, text }: Ways): void => {
    root.dataset['theme'] = theme;
    root.dataset['hands'] = hands;
    if (text === 'bigger') root.dataset['text'] = text;
    else delete root.dataset['text'];
  };
  show(ways());
  return {
    ways,
    choose(change) {
      setWays((old) => ({ ...PLAIN, ...old, ...change }));
      show(ways());
      void settings.set(NAME, ways()).catch(() => undefined);
    },
  };
}
