import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { inject } from 'vitest';
import type { EarTold } from '../../../machines/ear-port.ts';
import type { EarEngine } from '../../../src/core/ear/person.ts';
import type { EarPhrase } from '../../../src/core/ear/phrases.ts';

/** What the ear told, and when: ms since it was asked to listen. */
export interface ToldAt {
  readonly at: number;
  readonly told: EarTold;
}

/**
 * Runs in a page before anything else: every microphone that was opened is known to the test, which can have
 * parts of the app brought that nothing in its page has asked for yet.
 */
export const EAR_SCRIPT = `
  window.bring = (at) => import(at);
  window.tracks = [];
  if (navigator.mediaDevices) {
    const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
    navigator.mediaDevices.getUserMedia = async (what) => {
      const stream = await ask(what);
      tracks.push(...stream.getTracks());
      return stream;
    };
  }
`;

const chunk = (name: string): string => {
  const files = readdirSync(join(inject('site'), 'assets'));
  const file = files.find((one) => one.startsWith(`${name}-`) && one.endsWith('.js'));
  if (!file) throw new Error(`The build has no ${name}.`);
  return `/assets/${file}`;
};

/** The ear of the built app, in its page, with one person whom it learns to know. */
export interface EarPage {
  /** Opens it, and has its engine here. */
  open(engine: EarEngine): Promise<boolean>;
  /** The person says what the microphone hears: how many sayings were kept of it, or why none. */
  take(engine: EarEngine, phrase: EarPhrase): Promise<number | string>;
  /** Listens until so much was said, or it is over. */
  listen(engine: EarEngine, active: readonly EarPhrase[], until: number): Promise<ToldAt[]>;
  /** Keeps the person on the disk, as the app does. */
  keep(): Promise<void>;
  /** How many microphones are open. */
  live(): Promise<number>;
}

/** What the page of a test holds. */
interface InPage {
  ear: import('../../../machines/ear-port.ts').Ear;
  person: {
    id: string;
    mark: string;
    child: boolean;
    tongue: string;
    sayings: Record<string, unknown[]>;
  };
  tracks: MediaStreamTrack[];
  bring(at: string): Promise<unknown>;
}

export function earPage(page: Page): EarPage {
  return {
    open: (engine) =>
      page.evaluate(
        async ([at, which]) => {
          const its = globalThis as unknown as InPage;
          const { bring } = its;
          const { openEar } = (await bring(
            at,
          )) as typeof import('../../../src/adapters/ear/open-ear.ts');
          const later = (ms: number, then: () => void) => {
            const timer = setTimeout(then, ms);
            return () => clearTimeout(timer);
          };
          its.ear = openEar(later, () => null);
          its.person ??= { id: 'a', mark: 'sun', child: false, tongue: 'en', sayings: {} };
          return its.ear.fetch(which);
        },
        [chunk('open-ear'), engine] as const,
      ),
    take: (engine, phrase) =>
      page.evaluate(
        async ([which, said]) => {
          const { ear, person } = globalThis as unknown as InPage;
          const taken = await ear.take(which, () => {}).over;
          if (typeof taken === 'string') return taken;
          (person.sayings[said] ??= []).push(...taken);
          return taken.length;
        },
        [engine, phrase] as const,
      ),
    listen: (engine, active, until) =>
      page.evaluate(
        ([which, phrases, count]) =>
          new Promise<ToldAt[]>((over) => {
            const { ear, person } = globalThis as unknown as InPage;
            const all: ToldAt[] = [];
            const began = performance.now();
            const ask = { engine: which, people: [person as never], active: phrases };
            const stop = ear.listen(ask, (told) => {
              all.push({ at: performance.now() - began, told });
              const said = all.filter((one) => one.told.kind === 'said');
              if (told.kind !== 'over' && said.length < count) return;
              stop();
              over(all);
            });
          }),
        [engine, [...active], until] as const,
      ),
    keep: () =>
      page.evaluate(async (at) => {
        const { person, bring } = globalThis as unknown as InPage;
        const its = (await bring(
          at,
        )) as typeof import('../../../src/adapters/ear/open-voice-rows.ts');
        await its.openVoiceRows(true).write(new Map([[person.id, person]]));
      }, chunk('open-voice-rows')),
    live: () =>
      page.evaluate(() => {
        const { tracks } = globalThis as unknown as InPage;
        return tracks.filter(({ readyState }) => readyState === 'live').length;
      }),
  };
}
