import { createRoot } from 'solid-js';
import { recordingsIn } from '../../../src/adapters/speaker/recordings.ts';
import { openDrafts } from '../../../src/app/book-drafts.ts';
import { openEquipment } from '../../../src/app/equipment.ts';
import { loadFormulas } from '../../../src/app/formulas.ts';
import { makeHalfTyped } from '../../../src/app/half-typed.ts';
import { makeLastKitchen } from '../../../src/app/last-kitchen.ts';
import { readWays } from '../../../src/app/ways.ts';
import { keyName, keyOf, mayTeach, teach } from '../../../src/core/kitchen/pedal-keys.ts';
import { EAR_PHRASES, DIGITS, type EarDigit } from '../../../src/core/ear/phrases.ts';
import { numberOf as numberSaid, readingOf, withDigit } from '../../../src/core/ear/digits.ts';
import { EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import { numberOf, typeKey, MOST_PRESSES, type PadKey } from '../../../src/parts/typed.ts';
import { BELOW, PAGES, writeKey } from '../../../src/parts/letter-keys.ts';
import { answer } from '../../../src/serve/answer.ts';
import { rawFormula } from '../../core/formula/shipped.ts';
import type { Seeded } from '../../core/day/support/seeded.ts';
import { makeMemorySettings } from '../../fakes/memory-settings.ts';
import { breakText } from '../break-text.ts';
import { either, ofData, ofJson, orNothing, type Made, type Reader } from '../reader.ts';
import { HOSTILE_TEXTS } from '../texts.ts';

const NOW = 1_935_000_000_000;
/** What a page of before, or of another version, may have left under that name. */
const kept = (name: string, value: unknown) => {
  const settings = makeMemorySettings();
  settings.values.set(name, value);
  return settings;
};
/** What was asked of the settings has come. */
const come = async (): Promise<void> => {
  for (let n = 0; n < 4; n += 1) await Promise.resolve();
};

const WAYS = {
  ...{ theme: 'dark', hands: 'left', text: 'bigger', clock: '12', heat: 'F', weight: 'oz' },
  ...{
    night: 'dim',
    tongue: 'de',
    small: 'off',
    learner: 'on',
    met: ['mix.first'],
    marks: ['sun'],
  },
  pxPerMm: 4.2,
};

/** So many of any of these, one after the other, in whatever order. */
const handful = <T>(chance: Seeded, of: readonly T[], most: number): readonly T[] =>
  Array.from({ length: chance.whole(0, most) }, () => chance.of(of));

const KEYS: readonly PadKey[] = ['0', '1', '2', '5', '9', '.', '.', 'clear'];
const LIMITS = { least: 15, most: 40, decimals: 1 };
const SITE = {
  get: (path: string) =>
    path === '/index.html'
      ? { body: Buffer.from('<p>'), type: 'text/html', hash: 'h', packed: () => null }
      : undefined,
};

/** Readers of settings, of keys that are pressed, of digits that are said, and of what is asked of the server. */
export const HAND_READERS: readonly Reader[] = [
  {
    of: 'app/ways.ts readWays',
    make: ofData(WAYS),
    read: (value: unknown): Made => ({ taken: readWays(value) }),
    ends: 'taken',
    again: true,
  },
  {
    of: 'app/equipment.ts openEquipment',
    make: ofData(EQUIPMENT),
    read: async (value: unknown): Promise<Made> => {
      const { misread } = await openEquipment(kept('equipment', value), false);
      return either(true, misread);
    },
    share: 0.5,
  },
  {
    of: 'app/half-typed.ts makeHalfTyped',
    make: ofData([{ question: 'dough', text: '24.', at: NOW }]),
    read: async (value: unknown): Promise<Made> => {
      const half = makeHalfTyped(kept('halfTyped', value), () => NOW, true);
      await come();
      const text = half('dough').read();
      if (!/^[\d.]{0,6}$/.test(text) || typeof text !== 'string') throw new Error('No number.');
      return orNothing(text || null);
    },
  },
  {
    of: 'app/last-kitchen.ts makeLastKitchen',
    make: ofData(21.5),
    read: async (value: unknown): Promise<Made> => {
      const last = createRoot(() => makeLastKitchen(kept('lastKitchen', value)));
      await come();
      const celsius = last.lastKitchen();
      if (celsius !== null && !Number.isFinite(celsius)) throw new Error('No temperature.');
      return orNothing(celsius);
    },
    share: 0.5,
  },
  {
    of: 'app/book-drafts.ts openDrafts',
    make: ofData([rawFormula('seed-oat')]),
    read: async (value: unknown): Promise<Made> => {
      const { drafts } = await createRoot(() => openDrafts(kept('bookDrafts', value), true));
      return orNothing(Object.values(drafts())[0]);
    },
    share: 0.5,
  },
  {
    of: 'app/formulas.ts loadFormulas',
    make: ofJson(rawFormula('seed-oat')),
    read: async (text: string): Promise<Made> => {
      const [found] = await loadFormulas(async () => new Response(text));
      if (found!.formula !== null) return { taken: found!.formula };
      const { path, expected, got } = found!.reason.values as Record<string, string>;
      return { refused: [{ path: path!, expected: expected!, got }] };
    },
    share: 0.3,
  },
  {
    of: 'adapters/speaker/recordings.ts recordingsIn',
    make: ofData(['hot now', 'fold the dough']),
    read: async (value: unknown): Promise<Made> => {
      const names = await recordingsIn(kept('recordings', value)).recorded();
      if ([...names].some((name) => typeof name !== 'string')) throw new Error('No name.');
      return { taken: names };
    },
    ends: 'taken',
    share: 0.5,
  },
  {
    of: 'core/kitchen/pedal-keys.ts mayTeach',
    make: (chance) => chance.of([...HOSTILE_TEXTS, 'PageDown', 'b', 'x'.repeat(1_000_000)]),
    read: (key: string): Made => {
      keyName(keyOf(key));
      teach({ done: 'b' }, 'next', key);
      return orNothing(mayTeach(keyOf(key)));
    },
    share: 0.5,
  },
  {
    of: 'parts/typed.ts typeKey',
    make: (chance) => handful(chance, KEYS, 12),
    read: (keys: readonly PadKey[]): Made => {
      const text = keys.reduce((now, key) => typeKey(now, key, 100), '');
      const number = numberOf(text);
      if (text.length > MOST_PRESSES || !/^\d*\.?\d*$/.test(text)) throw new Error(text);
      if (number !== null && !(Number.isFinite(number) && number >= 0)) throw new Error(text);
      return orNothing(number);
    },
    share: 0.5,
  },
  {
    of: 'parts/letter-keys.ts writeKey',
    make: (chance) => ({
      text: chance.of(HOSTILE_TEXTS),
      keys: handful(chance, [...BELOW, ...Object.values(PAGES).flat()], 20),
      at: chance.next(),
    }),
    read: ({ text, keys, at }: { text: string; keys: readonly string[]; at: number }): Made => {
      const from = Math.floor(at * (text.length + 1));
      const most = Math.max(40, text.length);
      let now = { text, from, to: from };
      for (const key of keys) {
        now = writeKey(now, key, most);
        const stands = now.from >= 0 && now.from <= now.to && now.to <= now.text.length;
        if (!stands || now.text.length > most) throw new Error(JSON.stringify(now));
      }
      return { taken: now };
    },
    ends: 'taken',
    share: 0.5,
  },
  {
    of: 'core/ear/digits.ts withDigit',
    make: (chance) => handful(chance, [...DIGITS, ...DIGITS, ...EAR_PHRASES], 9),
    read: (said: readonly EarDigit[]): Made => {
      let digits: readonly EarDigit[] = [];
      for (const digit of said) digits = withDigit(digits, digit, LIMITS) ?? digits;
      const number = numberSaid(digits);
      if (number !== null && !(number >= 0 && number <= LIMITS.most)) throw new Error(`${number}`);
      return orNothing(readingOf(digits, LIMITS));
    },
    share: 0.5,
  },
  {
    of: 'serve/answer.ts answer',
    make: (chance) => ({
      url: breakText(chance.of(['/', '/bench', '/assets/a.js', '/%2e%2e/x', '/a?b#c']), chance),
      accept: breakText('text/html, br;q=1.0, gzip;q=0', chance),
    }),
    read: ({ url, accept }: { url: string; accept: string }): Made => {
      const headers = { accept, 'accept-encoding': accept, 'if-none-match': accept };
      const { status } = answer(SITE as never, { method: 'GET', url, headers });
      return status < 400 ? { taken: status } : { refused: null };
    },
    share: 0.5,
  },
];
