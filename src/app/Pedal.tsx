import { createEffect, createMemo, onCleanup, onMount } from 'solid-js';
import type { Stop } from '../../machines/ports.ts';
import { makeMediaKeys } from '../adapters/media-keys.ts';
import { doneBy, mediaDoes, type PedalDoes } from '../core/kitchen/pedal-keys.ts';
import { pedal as words } from '../core/speech/words/pedal.ts';
import { controlFor, nextOf, pressFor, slabOrChosen } from '../parts/pedal-press.ts';
import { longerOf } from '../screens/bench/longer.ts';
import type { House } from '../screens/house.ts';

/** One step on a pedal that sends several keys, or bounces, counts once, ms. Judgement. */
const STEP_MS = 250;

/** The keys of headphones stay ours so long after the last word, ms. Judgement. */
const LINGER_MS = 60_000;

/** Where a key is being taught it does nothing else. */
const TAUGHT_HERE = '[data-teaches]';

/**
 * Hears the keys that a pedal was taught. While a call rings the first one only silences it (the press
 * ground sees to that before us). A key held or stuck is one press until it is let go. The keys of
 * headphones, where they are wanted, go the same way; a browser may send them twice, as an action and a key.
 */
export default function Pedal(props: {
  readonly house: House;
  /** The bake on show. */
  readonly bake: string | null;
}): null {
  const down = new Set<string>();
  let steppedAt = Number.NEGATIVE_INFINITY;
  let mediaAt = Number.NEGATIVE_INFINITY;
  const media = makeMediaKeys();
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
    const { pedal, mediaKeys } = props.house.equipment();
    const does = doneBy(pedal, e.key) ?? (mediaKeys ? mediaDoes(e.key) : null);
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
  /** As if the browser had sent it as a key: a call that rings is silenced first, and one step is one. */
  const onMedia = (key: string): void => {
    const now = performance.now();
    if (now - mediaAt < STEP_MS || now - steppedAt < STEP_MS) return;
    mediaAt = now;
    const send = (type: string): void =>
      void document.body.dispatchEvent(
        new KeyboardEvent(type, { key, bubbles: true, cancelable: true }),
      );
    send('keydown');
    send('keyup');
    steppedAt = now;
  };
  const sounds = createMemo(
    () =>
      props.house.equipment().mediaKeys &&
      (props.house.ringing() !== null || props.house.caption() !== ''),
  );
  let stopMedia: Stop | null = null;
  createEffect(() => {
    if (sounds()) return void (stopMedia ??= media.listen(onMedia));
    // The answer to what was said comes after it.
    const over = setTimeout(() => {
      stopMedia?.();
      stopMedia = null;
    }, LINGER_MS);
    onCleanup(() => clearTimeout(over));
  });
  onCleanup(() => stopMedia?.());
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
