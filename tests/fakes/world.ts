import { createSignal } from 'solid-js';
import type { News } from '../../src/adapters/news.ts';
import type { World } from '../../src/app/world.ts';
import { readWays } from '../../src/app/ways.ts';
import { makeMemoryCircle } from './memory-circle.ts';
import { makeMemoryKeepsakes } from './memory-keepsakes.ts';
import { makeMemoryOtherLogs } from './memory-other-logs.ts';
import { makeMemoryPictures } from './memory-pictures.ts';
import { makeMemorySettings } from './memory-settings.ts';
import { makeMemoryStore } from './memory-store.ts';
import { makeMemoryVoices } from './memory-voices.ts';
import { makePlannerAtOnce } from './planner-at-once.ts';
import { makeSilentSound } from './silent-sound.ts';
import { makeToldEar, type ToldEar } from './told-ear.ts';
import { makeTurnedClock, type TurnedClock } from './turned-clock.ts';

export interface FakeWorld extends World {
  ear(): Promise<ToldEar>;
  readonly clock: TurnedClock;
  readonly store: ReturnType<typeof makeMemoryStore>;
  readonly sound: ReturnType<typeof makeSilentSound>;
  /** The page is hidden, and shown again. */
  glance(): void;
  /** A new version waits. */
  offer(take: () => void): void;
  /** The frame that was waited for, where the world does not paint at once. */
  paint(): void;
  /** Calls back everything that was asked for every so often, once. */
  beat(): void;
}

/** A world in memory whose clock the test turns. */
export function makeFakeWorld(
  parts: {
    store?: ReturnType<typeof makeMemoryStore>;
    pictures?: ReturnType<typeof makeMemoryPictures>;
    circle?: ReturnType<typeof makeMemoryCircle>;
    keepsakes?: ReturnType<typeof makeMemoryKeepsakes>;
    otherLogs?: ReturnType<typeof makeMemoryOtherLogs>;
    voices?: ReturnType<typeof makeMemoryVoices>;
    at?: number;
    holds?: boolean;
    painting?: 'at once' | 'when told';
  } = {},
): FakeWorld {
  const clock = makeTurnedClock(parts.at ?? Date.UTC(2031, 4, 3, 6));
  const beats = new Set<() => void>();
  const puts = new Set<() => void>();
  const painting = parts.painting ?? 'at once';
  const offers = new Set<(take: () => void) => void>();
  const pictures = parts.pictures ?? makeMemoryPictures();
  const circle = parts.circle ?? makeMemoryCircle();
  const keepsakes = parts.keepsakes ?? makeMemoryKeepsakes();
  const otherLogs = parts.otherLogs ?? makeMemoryOtherLogs();
  const voices = parts.voices ?? makeMemoryVoices();
  const ear = makeToldEar();
  const [ways, setWays] = createSignal(readWays(null));
  const news: News = { tell: () => undefined, onNews: () => () => undefined };
  let n = 0;
  let showing = 1;
  return {
    clock,
    showing: () => showing,
    glance: () => void (showing += 1),
    store: parts.store ?? makeMemoryStore(),
    lent: null,
    settings: makeMemorySettings(),
    sound: makeSilentSound('armed'),
    speaker: {
      say: () => ({ over: Promise.resolve(), stop: () => undefined }),
      onLost: () => () => undefined,
      reads: () => Promise.resolve(false),
    },
    studio: () => Promise.reject(new Error('No studio here.')),
    spokenNotes: () => Promise.reject(new Error('No microphone here.')),
    planner: () => Promise.resolve(makePlannerAtOnce()),
    pictures: () => Promise.resolve(pictures),
    circle: () => Promise.resolve(circle),
    keepsakes: () => Promise.resolve(keepsakes),
    otherLogs: () => Promise.resolve(otherLogs),
    ear: () => Promise.resolve(ear),
    voices: () => Promise.resolve(voices),
    zone: () => 'Europe/Berlin',
    screen: { state: () => 'held', onState: () => () => undefined, hold: () => () => undefined },
    update: {
      onOffer(then) {
        offers.add(then);
        return () => offers.delete(then);
      },
    },
    news,
    ids: { device: 'counter', next: () => `id${(n += 1)}` },
    ways: { ways, choose: (change) => void setWays((old) => ({ ...old, ...change })) },
    holds: parts.holds ?? true,
    whenFree: () => () => undefined,
    secure: true,
    askToKeep: () => Promise.resolve(true),
    later: (_, then) => {
      queueMicrotask(then);
      return () => undefined;
    },
    drawn: (then) => {
      if (painting === 'at once') then();
      else puts.add(then);
      return () => puts.delete(then);
    },
    paint() {
      const put = [...puts];
      puts.clear();
      put.forEach((then) => then());
    },
    every: (_, then) => {
      beats.add(then);
      return () => beats.delete(then);
    },
    reload: () => undefined,
    rehearse: () => undefined,
    endRehearsal: () => undefined,
    offer: (take) => offers.forEach((then) => then(take)),
    beat: () => beats.forEach((then) => then()),
  };
}
