import type { Tongue } from '../src/core/speech/tongue.ts';
import type { LaidAsk } from '../src/core/day/laid/lay-ask.ts';
import type { LiveAnswer, LiveQuestion } from '../src/core/day/laid/live-question.ts';
import type { AskWorld } from '../src/core/day/laid/ask-world.ts';
import type { DayAsk } from '../src/core/day/laid/day-plan.ts';
import type { Formula } from '../src/core/formula/formula.ts';
import type { ReadFormula } from '../src/core/formula/read-formula.ts';
import type { LogRecord } from '../src/core/records/record.ts';
import type { Pace } from '../src/core/speech/pace.ts';
import type { DrawnCode, ReadFile } from '../src/core/sheets/handed.ts';
import type { Grams, Instant } from '../src/core/units.ts';

/** What the machines and the screens ask of the world; adapters implement it. */

/** Undo of whatever was begun. Calling it twice does nothing. */
export type Stop = () => void;

/** Wall time. `wake` calls back once at or after `at` (at once when it is past), unless stopped. */
export interface Clock {
  now(): Instant;
  /** Milliseconds since some moment: nobody sets it. It may stand still while the device sleeps. */
  steady(): number;
  wake(at: Instant, then: () => void): Stop;
  /** How fast this clock runs against the wall: 1, or more in a rehearsal. */
  readonly rate: number;
}

/** Why a write failed. `taken`: another page wrote this seq. `gone`: rows before it are missing. */
export type StoreTrouble = 'closed' | 'full' | 'taken' | 'gone';

export class StoreError extends Error {
  constructor(
    readonly trouble: StoreTrouble,
    options?: ErrorOptions,
  ) {
    super(`The log could not be written: ${trouble}.`, options);
  }
}

/**
 * The append-only log. `append` is one durable transaction (`durability: 'strict'`): all rows or
 * none, refused with `taken` where a seq exists and `gone` where the row before the first is missing.
 */
export interface LogStore {
  /** All rows in seq order, as found (unread, unchecked). Rejects with `closed`. */
  load(): Promise<unknown[]>;
  append(records: readonly LogRecord[]): Promise<void>;
  /** Write a whole log again into an emptied store, in one durable transaction. */
  rewrite(records: readonly LogRecord[]): Promise<void>;
}

/** Small settings by name (units, theme, hands, last kitchen temperature). */
export interface Settings {
  get(name: string): Promise<unknown>;
  set(name: string, value: unknown): Promise<void>;
}

export type CallKind = 'look' | 'act' | 'hot';

/** Whether sound can be heard, as far as a page can know. `lost`: it was armed, and is not heard now. */
export type SoundState = 'locked' | 'armed' | 'lost' | 'unavailable';

/** Calls as sound. */
export interface Sound {
  state(): SoundState;
  onState(then: (s: SoundState) => void): Stop;
  /** Must be called inside a tap or a key press. */
  arm(): Promise<SoundState>;
  /**
   * The whole burst of one call, scheduled ahead on the audio clock so that it sounds on time in a
   * hidden page. It begins `inMs` real milliseconds from now; a negative number means that it began
   * so long ago and goes on from the loudness it has come to. Stopped, it is silent within 200 ms.
   */
  ring(kind: CallKind, inMs: number): Stop;
}

/** What somebody here wrote: phrases as they stand in what is said, and whether they are to be read aloud. */
export interface OwnWords {
  readonly phrases: readonly string[];
  readonly aloud: boolean;
}

/** A voice, as fast as is good for grown-ups unless told. Resolves when the words are over, or at once when there is no voice. */
export interface Speaker {
  /** What no clip says of `own` is left out, and read by the device behind the rest where it is wanted. */
  say(
    words: string,
    own?: OwnWords,
    pace?: Pace,
  ): { readonly over: Promise<void>; readonly stop: Stop };
  /** Whether the device has a voice that asks no network, of a tongue or any. */
  reads(tongue?: Tongue): Promise<boolean>;
  /** Calls back whenever words should have been heard and could not be. */
  onLost(then: () => void): Stop;
}

/** Why nothing was recorded. `silent`: nobody spoke. `stopped`: given up. `none`: no microphone here. */
export type NoTake = 'denied' | 'none' | 'silent' | 'failed' | 'stopped';

/** The microphone listens; it is over with what was taken, or why there is nothing. */
export interface Take<T> {
  readonly over: Promise<T | NoTake>;
  /** What was heard till now is taken. */
  readonly stop: Stop;
  /** It is not; the microphone is let go at once. */
  readonly cancel: Stop;
}

/** Clips spoken anew by somebody here, in place of those that came with the program. */
export interface Studio {
  /** Every clip by what it says, and the file it lies in, in reading order. */
  readonly clips: readonly { readonly id: string; readonly file: string }[];
  recorded(): Promise<ReadonlySet<string>>;
  /** What is taken is said in the clip's place from then on; `keep` writes it, `drop` lets go of it. */
  record(id: string, onHeard: (heard: boolean) => void): Take<null>;
  /** Rejects with a StoreError. */
  keep(id: string): Promise<void>;
  drop(id: string): Promise<void>;
}

/** How a spoken note ended that was played. `stopped`: something else came first. */
export type Played = 'heard' | 'stopped' | 'lost';

/** A spoken note, in what the browser records in. */
export interface VoiceNote {
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** Spoken notes: recorded as the browser does it, and heard again. */
export interface SpokenNotes {
  /** Over by itself after the longest that one may be (core/log/keepsake-limits.ts). */
  record(onHeard: (heard: boolean) => void): Take<VoiceNote>;
  /** Once, from its beginning; silent within 200 ms of a stop. Call it inside a press. */
  play(voice: VoiceNote): { readonly over: Promise<Played>; readonly stop: Stop };
}

/** Why a picture was not taken: the file is none, is too large, or cannot be read; the disk is full, or shut. */
export type NoPicture = 'none' | 'large' | 'broken' | 'full' | 'closed';

/** A small picture, JPEG. */
export type Jpeg = Uint8Array<ArrayBuffer>;

/** A formula's picture. `before`: what the last press put it in the place of; left out: taken back. */
export interface KeptPicture {
  readonly now: Jpeg | null;
  readonly before?: Jpeg | null;
}

/** Pictures of formulas, on this device. */
export interface Pictures {
  /** By the formula's id. Rejects with `closed`. */
  load(): Promise<ReadonlyMap<string, KeptPicture>>;
  /** All of these in one durable transaction; null: no row any more. Rejects with a StoreError: none is written. */
  write(rows: ReadonlyMap<string, KeptPicture | null>): Promise<void>;
  /** A picture made small: nothing is left in it of what a camera wrote there. Never rejects. */
  shrink(file: Uint8Array<ArrayBuffer>): Promise<Jpeg | NoPicture>;
}

/** The circle's rows on this device by their keys (core/circle/read-circle.ts), as found: unread, unchecked. */
export interface CircleRows {
  /** Rejects with `closed`. */
  load(): Promise<ReadonlyMap<unknown, unknown>>;
  /** All of these in one durable transaction; null: no row any more. Rejects with a StoreError: none is written. */
  write(rows: ReadonlyMap<string, unknown>): Promise<void>;
}

/**
 * What is kept of bakes beside the log, as found: unread, unchecked. What a baker says of each, by its start's
 * id; photos and spoken notes by that id, '/' and their own.
 */
export interface KeepsakeRows {
  /** What is said of all bakes. Rejects with `closed`. */
  load(): Promise<ReadonlyMap<unknown, unknown>>;
  /** Photos and spoken notes of one bake; left out: of all. Rejects with `closed`. */
  loadKept(start?: string): Promise<ReadonlyMap<unknown, unknown>>;
  /** All of these in one durable transaction; null: no row any more. Rejects with a StoreError: none is written. */
  write(said: ReadonlyMap<string, unknown>, kept: ReadonlyMap<string, unknown>): Promise<void>;
}

/** Logs of other tablets that were brought in, each row by its log's name, '/' and its seq, as found. */
export interface OtherLogs {
  /** Rejects with `closed`. */
  load(): Promise<ReadonlyMap<string, readonly unknown[]>>;
  /** A log under its name, in the place of what stood there; null: it is no more. All or nothing. Rejects with a StoreError. */
  write(logs: ReadonlyMap<string, readonly LogRecord[] | null>): Promise<void>;
}

/** A file to be handed on. `text` is what it holds: bytes where that is no text. */
export interface SharedFile {
  readonly name: string;
  readonly type: string;
  readonly text: string | Uint8Array<ArrayBuffer>;
}

/** Formulas as files, links and codes. Nothing of it keeps anything. */
export interface Sheets {
  /** A file by what it holds. Never rejects. */
  read(bytes: Uint8Array): Promise<ReadFile>;
  /** A live sheet for so much of all flour, g. */
  xlsx(formula: Formula, flour: Grams): Promise<Uint8Array<ArrayBuffer>>;
  /** The whole address; null: the formula is too long for one. */
  link(formula: Formula): string | null;
  readLink(link: string): ReadFormula;
  /** Null: too long for a code that a telephone reads. */
  code(text: string): DrawnCode | null;
  /** False where the device does not let it be. */
  copy(text: string): Promise<boolean>;
}

/** `shared`: the device's own sheet took it; `saved`: it is a download; `left`: the baker closed the sheet. */
export type Handed = 'shared' | 'saved' | 'left';

/** Keeps the screen lit while wanted. */
export interface ScreenAwake {
  state(): 'held' | 'lost' | 'unavailable';
  onState(then: (s: 'held' | 'lost' | 'unavailable') => void): Stop;
  hold(): Stop;
}

/** A new version of the app. It is offered, never taken by itself. */
export interface Update {
  onOffer(then: (take: () => void) => void): Stop;
}

/** One page holds the kitchen. Resolves true when this page does; `whenFree` calls back once it could. */
export interface Hold {
  take(name: string): Promise<boolean>;
  whenFree(name: string, then: () => void): Stop;
}

/** Lays days aside from the page, so that nothing on it stands still meanwhile. */
export interface Planner {
  /**
   * Each plan of an ask as soon as it is known, the cheapest last; where nothing fits, what would do. To
   * make a question of it (its doughs' clocks, the wall's calendar) takes a slow tablet longer than a
   * frame, so that is done aside too. One that cannot be asked at all has neither trouble nor result.
   * Stopped, nothing more is told. One question at a time: a new one stops the one before.
   */
  layAsk(ask: DayAsk, world: AskWorld, onLaid: (laid: LaidAsk) => void): Stop;
  /** A question about a plan that runs, answered once: where it cannot be, that nothing is decided. */
  layLive(question: LiveQuestion, onAnswer: (answer: LiveAnswer) => void): Stop;
}
