import { onCleanup, onMount } from 'solid-js';
import { doneBy, type PedalDoes } from '../core/kitchen/pedal-keys.ts';
import { pedal as words } from '../core/speech/en/pedal.ts';
import { controlFor, nextOf, pressFor, slabOrChosen } from '../parts/pedal-press.ts';
import { longerOf } from '../screens/bench/longer.ts';
import type { House } from '../screens/house.ts';

/** One step on a pedal that sends several keys, or bounces, counts once, ms. Judgement. */
const STEP_MS = 250;

/** Where a key is being taught it does nothing else. */
const TAUGHT_HERE = '[data-teaches]';

/**
 * Hears the keys that a pedal was taught. While a call rings the first one only silences it (the press
 * ground sees to that before us). A key held or stuck is one press until it is let go.
 */
export default function Pedal(props: {
  readonly house: House;
  /** The bake on show. */
  readonly bake: string | null;
}): null {
  const down = new Set<string>();
  let steppedAt = Number.NEGATIVE_INFINITY;
  let chosen: HTMLElement | null = null;
  let pressing = false;

  const press = (el: HTMLElement | null): void => {
    if (!el) return;
    pressing = true;
    pressFor(el, () => props.house.say(words.byHand));
    pressing = false;
  };
  const choose = (): void => {
    chosen = nextOf(document, chosen?.isConnected ? chosen : null);
    chosen?.focus();
    const name = chosen?.getAttribute('aria-label') ?? chosen?.innerText;
    if (name) props.house.say(name.replace(/\s+/g, ' '));
  };
  const DOES: Readonly<Record<PedalDoes, () => void>> = {
    done() {
      const el = slabOrChosen(document, chosen);
      // A digit may be wanted twice; every other answer is given once.
      if (!chosen?.matches('.key')) chosen = null;
      if (el) press(el);
      else choose();
    },
    next: choose,
    takeBack: () => press(controlFor(document, 'takeBack')),
    sayAgain: () => press(controlFor(document, 'sayAgain')),
    longer: () => props.house.say(longerOf(props.house, props.bake)),
    // What rings was silenced by this very key; what is being said stops.
    hush: () => props.house.say(''),
  };
  const onDown = (e: KeyboardEvent): void => {
    if (pressing || e.ctrlKey || e.metaKey || e.altKey) return;
    if (document.querySelector(TAUGHT_HERE)) return;
    const does = doneBy(props.house.equipment().pedal, e.key);
    if (does === null) return;
    e.preventDefault();
    e.stopImmediatePropagation();
    const held = e.repeat || down.has(e.key);
    down.add(e.key);
    const now = performance.now();
    if (held || now - steppedAt < STEP_MS) return;
    steppedAt = now;
    DOES[does]();
  };
  const onUp = (e: KeyboardEvent): void => {
    // The bar acts as it is let go; taught, it acts as it goes down, and only then.
    if (down.delete(e.key)) e.stopImmediatePropagation();
  };
  const onLeft = (): void => down.clear();
  onMount(() => {
    window.addEventListener('keydown', onDown, true);
    window.addEventListener('keyup', onUp, true);
    window.addEventListener('blur', onLeft);
  });
  onCleanup(() => {
    window.removeEventListener('keydown', onDown, true);
    window.removeEventListener('keyup', onUp, true);
    window.removeEventListener('blur', onLeft);
  });
  return null;
}
