import { createSignal, type Accessor } from 'solid-js';
import type { Settings } from '../../machines/ports.ts';
import type { Celsius } from '../core/units.ts';

const NAME = 'lastKitchen';

/** The kitchen's temperature as it was last told, kept on the tablet; null: not yet. */
export function makeLastKitchen(settings: Settings): {
  readonly lastKitchen: Accessor<Celsius | null>;
  keep(celsius: Celsius): void;
} {
  const [lastKitchen, set] = createSignal<Celsius | null>(null);
  const found = (kept: unknown) =>
    void set(typeof kept === 'number' && Number.isFinite(kept) ? kept : null);
  void settings.get(NAME).then(found, () => undefined);
  return {
    lastKitchen,
    keep(celsius) {
      set(celsius);
      void settings.set(NAME, celsius).catch(() => undefined);
    },
  };
}
