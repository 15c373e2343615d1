import type { Accessor } from 'solid-js';
import type { Ear, VoiceRows } from '../../machines/ear-port.ts';
import type {
  CircleRows,
  Clock,
  KeepsakeRows,
  LogStore,
  OtherLogs,
  Pictures,
  Planner,
  ScreenAwake,
  Settings,
  Sound,
  Speaker,
  SpokenNotes,
  Stop,
  Studio,
  Update,
} from '../../machines/ports.ts';
import type { News } from '../adapters/news.ts';
import type { Showing } from '../adapters/showing.ts';
import type { LogRecord } from '../core/records/record.ts';
import type { Ways } from '../screens/house.ts';

/** Everything outside the program that a house is opened on; tests put fakes in. */
export interface World {
  readonly clock: Clock;
  readonly showing: Showing;
  readonly store: LogStore;
  /** Records of the real log that a rehearsal has its formulas from; null in earnest. */
  readonly lent: (() => Promise<readonly LogRecord[]>) | null;
  readonly settings: Settings;
  readonly sound: Sound;
  readonly speaker: Speaker;
  /** Comes when it is first wanted. */
  studio(): Promise<Studio>;
  /** Comes when it is first wanted. */
  spokenNotes(): Promise<SpokenNotes>;
  /** Comes when it is first wanted. */
  planner(): Promise<Planner>;
  /** Comes when it is first wanted. */
  pictures(): Promise<Pictures>;
  /** Comes when it is first wanted. */
  circle(): Promise<CircleRows>;
  /** Comes when it is first wanted. */
  keepsakes(): Promise<KeepsakeRows>;
  /** Comes when it is first wanted. */
  otherLogs(): Promise<OtherLogs>;
  /** Comes when it is first wanted. */
  ear(): Promise<Ear>;
  /** Comes when it is first wanted. */
  voices(): Promise<VoiceRows>;
  /** The wall's zone, an IANA name; a tablet may come to another. */
  zone(): string;
  readonly screen: ScreenAwake;
  readonly update: Update;
  readonly news: News;
  readonly ids: { readonly device: string; next(): string };
  readonly ways: { readonly ways: Accessor<Ways>; choose(change: Partial<Ways>): void };
  /** Whether this page holds the kitchen; one that does not only shows it. */
  readonly holds: boolean;
  whenFree(then: () => void): Stop;
  /** Whether the page may keep itself for offline, stay lit and lock (https or localhost). */
  readonly secure: boolean;
  askToKeep(): Promise<unknown>;
  /** Real milliseconds. */
  later(ms: number, then: () => void): Stop;
  /** Once what has just changed is on the glass; at once where nobody sees it. */
  drawn(then: () => void): Stop;
  /** And at once when the page is shown again. */
  every(ms: number, then: () => void): Stop;
  reload(): void;
  rehearse(): void;
  endRehearsal(): void;
}
