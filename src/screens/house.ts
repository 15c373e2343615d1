import type { Accessor } from 'solid-js';
import type { Call } from '../../machines/attention/attention.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import type {
  CallKind,
  Handed,
  Planner,
  SharedFile,
  Sheets,
  SoundState,
  Stop,
  Studio,
} from '../../machines/ports.ts';
import type { DayPlan } from '../core/day/laid/day-plan.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import type { Notice } from '../core/formula/notice.ts';
import type { Formula } from '../core/formula/formula.ts';
import type { BookEntry } from '../core/records/book.ts';
import type { Deed } from '../core/records/fact.ts';
import type { SavedFile } from '../core/records/read-log-file.ts';
import type { LogRecord } from '../core/records/record.ts';
import type { BakeStage, Join } from '../core/records/stage.ts';
import type { EarShown } from '../core/ear/shown.ts';
import type { Clock } from '../core/speech/show-time.ts';
import type { Ages } from '../core/small/ages.ts';
import type { HandMark } from '../core/small/marks.ts';
import type { Tongue } from '../core/speech/tongue.ts';
import type { Celsius, Grams, Instant, Units } from '../core/units.ts';
import type { Half } from '../parts/half.ts';
import type { BookPictures } from './book-pictures.ts';
import type { HouseCircle } from './house-circle.ts';
import type { HouseEar } from './house-ear.ts';
import type { HouseLog } from './house-log.ts';

/** CSS pixels a millimetre that a screen can have: a wall's to a small telephone's. Judgement. */
export const PX_PER_MM = { least: 3, most: 12 } as const;

/** Preferences kept on this tablet; whatever wants the baker's units is handed these. */
export interface Ways extends Units {
  readonly theme: 'light' | 'dark';
  readonly hands: 'right' | 'left';
  readonly text: 'plain' | 'bigger';
  readonly clock: Clock;
  /** The tongue of words and captions; a change of it opens the page anew. */
  readonly tongue: Tongue;
  /** Which child's view of a bake is shown, by the ages it is for; `off`: the baker's. */
  readonly small: 'off' | Ages;
  /** The marks that children here have picked for their own loaves, in the order they did. */
  readonly marks: readonly HandMark[];
  /** Whether a first loaf is walked: why before what, and each word of the trade when it is first met. */
  readonly learner: 'off' | 'on';
  /** Lessons that were met, by the stage each is of. */
  readonly met: readonly string[];
  /** A low light: never, in the night hours by itself, or from now on. */
  readonly night: 'off' | 'hours' | 'dim';
  /** CSS pixels a millimetre of this screen, held against a bank card; null: as its size tells. */
  readonly pxPerMm: number | null;
}

/** A sentence that stays until it is dealt with, and what one press does about it. */
export interface Told {
  readonly id: string;
  readonly text: string;
  readonly action: { readonly label: string; readonly press: () => void } | null;
}

/**
 * Leaps of the tablet's clock while the page ran, in milliseconds; null: none, or dealt with. Ahead it
 * may have been a sleep, but where the page stood `inSight` all the while: then it is asked about. Several
 * that nobody has answered are told as one.
 */
export interface Leaps {
  readonly back: { readonly by: number; readonly from: Instant } | null;
  readonly ahead: {
    readonly by: number;
    readonly from: Instant;
    readonly inSight: boolean;
  } | null;
}

/** What the screens ask of the program; everything that changes is an accessor. */
export interface House {
  readonly kitchen: Accessor<Kitchen>;
  readonly records: Accessor<readonly LogRecord[]>;
  /** Kitchen time, moved on every second. */
  readonly now: Accessor<Instant>;
  /** The wall instant at which kitchen time reaches an instant; another only where the clock was set back. */
  wall(at: Instant): Instant;
  /** '15:05' or '3:05 pm': a kitchen instant on the clock this tablet is read by. */
  hour(at: Instant): string;
  /** 'Sat', and '3 May 2031', in the tablet's own words. */
  day(at: Instant): string;
  date(at: Instant): string;
  /** The last midnight before it on this tablet's wall, in kitchen time. */
  midnight(at: Instant): Instant;
  /** One deed; resolves once it is written (or refused). */
  take(deed: Deed): Promise<void>;
  /** This deed may be done next: what it takes is made ready, and nothing comes of it. */
  foresee(deed: Deed): void;
  takeBack(): Promise<void>;
  /**
   * The tablet's clock had leapt: every wait gets that much longer. Where nobody knows by how much,
   * everything stands as at the last press, with as long to go.
   */
  clockWasWrong(): Promise<void>;
  readonly leaps: Accessor<Leaps>;
  /** It was told, or was but a sleep. */
  leapRead(which: keyof Leaps): void;
  /** A new bake; the recipe is pinned in its first fact. */
  begin(order: Order): Promise<string | null>;
  /** The plan that stands, its begun bakes in it; null where none does or all its bread is long due. */
  readonly plan: Accessor<DayPlan | null>;
  /**
   * A bake of the plan that stands begins, by its name there: its recipe is pinned as it was planned,
   * its levain's feed as the plan chose it. Its id; null where no such bake waits to begin.
   */
  beginPlanned(name: string): Promise<string | null>;
  /** Plans aside from the page. Rejects where it cannot be had. */
  planner(): Promise<Planner>;
  /** The wall's zone on this tablet, an IANA name. */
  zone(): string;
  readonly saving: Accessor<'saved' | 'slow' | 'unsaved'>;
  readonly unsaved: Accessor<number>;
  readonly ringing: Accessor<Call | null>;
  /** Which bench the page opens on, and which one a ringing call brings to the front; null: none. */
  readonly front: {
    opens(): string | null;
    brings(shown: string | null): string | null;
    /** Has it here before anything rings. */
    fetch(): void;
  };
  /** What rings waits for a touch to be heard; that touch only brings the sound. */
  unheard(): boolean;
  /** A touch anywhere; true where it was used up by silencing what rings, or by bringing its sound. */
  hush(): boolean;
  say(words: string): void;
  /** Whether the tablet has a voice of its own that asks no network, of a tongue or any. */
  reads(tongue?: Tongue): Promise<boolean>;
  /** Where clips are spoken anew. Rejects where it cannot be had. */
  studio(): Promise<Studio>;
  readonly caption: Accessor<string>;
  readonly sound: Accessor<SoundState>;
  armSound(): void;
  readonly lit: Accessor<'held' | 'lost' | 'unavailable'>;
  readonly told: Accessor<readonly Told[]>;
  tell(notice: Told): void;
  /** False in a page that only shows the kitchen of another. */
  readonly holds: boolean;
  /** How fast the clock runs in a rehearsal; null in earnest. */
  readonly rehearsal: number | null;
  rehearse(): void;
  endRehearsal(): void;
  readonly ways: Accessor<Ways>;
  choose(ways: Partial<Ways>): void;
  /** What may be baked: the latest version of each formula on the Book's list, and what could not be read. */
  readonly formulas: Accessor<readonly FormulaFound[]>;
  /** Every formula with all its versions, those off the list too. Empty until it has come. */
  readonly book: Accessor<readonly BookEntry[]>;
  /** Written as the next version of its id, or as the first of an id of its own; null: it was not taken. */
  keepFormula(formula: Formula): Promise<Formula | null>;
  /** Takes a formula off the list; nothing of it is lost. */
  dropFormula(id: string): Promise<void>;
  /** Formulas that are being changed and were not kept yet, by id; they outlive a reload. */
  readonly drafts: Accessor<Readonly<Record<string, Formula>>>;
  /** Null: there is nothing half changed any more. */
  keepDraft(id: string, formula: Formula | null): void;
  /** Pictures of its formulas: come when they are first wanted. Rejects where they cannot be had. */
  pictures(): Promise<BookPictures>;
  /** Orders and those who have them: come when they are first wanted. Rejects where they cannot be had. */
  circle(): Promise<HouseCircle>;
  /** What is kept of bakes beside the records: comes when it is first wanted. Rejects where it cannot be had. */
  log(): Promise<HouseLog>;
  /** Known voices and what hears them: comes when it is first wanted. Rejects where it cannot be had. */
  ear(): Promise<HouseEar>;
  /** What the ear beside an act does, as it is to be shown. */
  readonly hearing: Accessor<EarShown>;
  showHearing(shown: EarShown): void;
  readonly lastKitchen: Accessor<Celsius | null>;
  /** What this kitchen bakes with; a setting of the tablet. */
  readonly equipment: Accessor<Equipment>;
  equip(change: Partial<Equipment>): void;
  /** What is half typed on the keypad of one question, kept across a reload; in no fact. */
  half(question: string): Half;
  /** A call's whole burst as it really sounds, from `inMs` real milliseconds on, until stopped. */
  tryCall(kind: CallKind, inMs: number): Stop;
  /** The instant the page was last left for more than 30 s, and came back; null when read. */
  readonly away: Accessor<{ readonly from: Instant; readonly to: Instant } | null>;
  readBack(): void;
  /** `names`: with those who have bread, and what was spoken, this once. */
  saveAsFile(names?: boolean): void;
  /** Hands a file to the device's share sheet, or saves it. Call it inside a press. */
  handOn(file: SharedFile): Promise<Handed>;
  /** Formulas as files, links and codes. Rejects where it cannot be had. */
  sheets(): Promise<Sheets>;
  /** A saved file's text held against what is here; nothing is written. Rejects where that cannot be read. */
  readFile(text: string): Promise<FileRead>;
  /**
   * Writes it in one go and opens the page anew. Rejects with a StoreError: then nothing was written; `taken`,
   * where what becomes of it is not what was told any more.
   */
  takeFile(file: LogFile): Promise<void>;
  /** Where the log cannot tell: the baker says. Null when it can. */
  readonly lost: Accessor<Lost | null>;
}

/**
 * What becomes of a saved file's log: all of it comes into an empty kitchen; it goes on from the one that is
 * here; it stays beside that; or no fact of it is new.
 */
export type Comes = 'all' | 'goesOn' | 'beside' | 'already';

/** A saved file that may be taken in: how many bakes it holds, and when its last entry was made. */
export interface LogFile extends SavedFile {
  readonly comes: Comes;
  readonly bakes: number;
  /** How many bakes are not here yet. */
  readonly fresh: number;
  readonly last: Instant | null;
}

export type FileRead =
  { readonly file: LogFile; readonly why: null } | { readonly file: null; readonly why: string };

/** A formula to bake, or a file of one that could not be read and why. `file`: its name, or the formula's id. */
export type FormulaFound =
  | { readonly formula: Formula; readonly file: string }
  | { readonly formula: null; readonly file: string; readonly reason: Notice };

/** What the start page gathers. */
export interface Order {
  readonly formula: Formula;
  readonly loaves: number;
  /** How heavy a baked loaf is to be, g; left out: as the formula's own piece comes out. */
  readonly bread?: Grams;
  readonly kitchen: Celsius;
  readonly from: BakeStage;
}

/** Bakes whose place is unknown, by id, and how to say where each is. */
export interface Lost {
  readonly bakes: readonly {
    readonly id: string;
    readonly name: string;
    /** Where a bake of its process may stand. */
    readonly joins: readonly Join[];
  }[];
  put(places: Readonly<Record<string, BakeStage>>): Promise<void>;
}
