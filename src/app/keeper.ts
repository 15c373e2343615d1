import { MACHINE_VERSION, type Kitchen, type Machines } from '../../machines/kitchen/kitchen.ts';
import type { Say } from '../../machines/kitchen/step.ts';
import { StoreError, type LogStore, type StoreTrouble } from '../../machines/ports.ts';
import type { Metres } from '../core/oven/boiling.ts';
import type { Deed, Fact } from '../core/records/fact.ts';
import type { LogRecord } from '../core/records/record.ts';
import type { Judge } from './judge.ts';
import type { LaterCourse } from './later-course.ts';
import type { KitchenTime } from './kitchen-time.ts';
import type { Opened } from './open-log.ts';

/** `again`: another page wrote meanwhile; the log was read anew and the press is offered once more. */
export type Outcome = 'taken' | 'refused' | 'again';

/** What the keeper knows. `unsaved` records are in memory only; `slow`: shown before it was written. */
export interface Kept {
  readonly kitchen: Kitchen;
  readonly records: readonly LogRecord[];
  readonly unsaved: number;
  readonly slow: boolean;
  readonly trouble: StoreTrouble | null;
}

/** A press, and the kitchen before and after it. */
export interface Pressed {
  readonly who: string;
  readonly before: Kitchen;
  readonly after: Kitchen;
}

export interface KeeperParts {
  readonly opened: Pick<Opened, 'kitchen' | 'records'>;
  readonly reopen: () => Promise<Pick<Opened, 'kitchen' | 'records'>>;
  readonly store: LogStore;
  readonly machines: Machines;
  /** Loaded after the first paint; the first press waits for it. */
  readonly judge: () => Promise<Judge>;
  readonly course: LaterCourse;
  /** Above the sea; left out: at it. */
  readonly height?: () => Metres;
  readonly time: KitchenTime;
  readonly ids: { readonly device: string; next(): string };
  /** `pressed`: a deed brought it, and no time that has passed. */
  readonly onChange: (kept: Kept, pressed: boolean) => void;
  /** `pressed`: what brought it, where a press did. */
  readonly onSay: (says: readonly Say[], pressed?: Pressed) => void;
  /** Calls back after real milliseconds; returns its undo. */
  readonly later: (ms: number, then: () => void) => () => void;
}

export interface Keeper {
  kept(): Kept;
  /** One deed: judged, written durably, then shown. Deeds are taken one after the other. */
  take(deed: Deed): Promise<Outcome>;
  /**
   * A deed that may be done next is judged, and nothing comes of it: what judging takes is here and has
   * run before the press waits for it. The fact is judged by itself, at its own instant.
   */
  foresee(deed: Deed): void;
  /** Time has passed: what is due falls due. Writes nothing. */
  tick(): void;
  /** Tries to write what is still in memory only. */
  retry(): Promise<void>;
}

/** A fact not written within this time is shown, marked *not saved yet*. */
const SHOW_AFTER_MS = 250;

/** The one writer of the kitchen's log. */
export function makeKeeper(parts: KeeperParts): Keeper {
  const { store, machines, time, ids, onChange, onSay, later, height = () => 0 } = parts;
  let kept: Kept = {
    kitchen: parts.opened.kitchen,
    records: parts.opened.records,
    unsaved: 0,
    slow: false,
    trouble: null,
  };
  let queue: Promise<unknown> = Promise.resolve();
  let writing = false;

  const show = (change: Partial<Kept>, pressed = false) => {
    kept = { ...kept, ...change };
    onChange(kept, pressed);
  };

  /** Writes the tail, the newest record included; what fails stays in memory and is said. */
  const write = async (
    records: readonly LogRecord[],
    tail: number,
  ): Promise<StoreTrouble | null> => {
    const done = (work: Promise<void>) =>
      work.then(
        () => null,
        (error: unknown) => (error instanceof StoreError ? error.trouble : 'closed'),
      );
    const trouble = await done(store.append(records.slice(records.length - tail)));
    return trouble === 'gone' ? done(store.rewrite(records)) : trouble;
  };

  const takeNow = async (deed: Deed): Promise<Outcome> => {
    const [judge] = await Promise.all([parts.judge(), parts.course.fetch()]);
    if (deed.kind === 'press' && deed.seen !== undefined && deed.seen !== kept.kitchen.seq) {
      return 'refused';
    }
    const bare: Fact = {
      ...deed,
      id: ids.next(),
      device: ids.device,
      ...time.read(kept.kitchen.now),
    };
    const judged = judge(kept.kitchen, machines, bare, height());
    if (judged === null) return 'refused';
    const before = kept.kitchen;
    const { kitchen, says } = judged.stepped;
    const record: LogRecord = {
      seq: kitchen.seq,
      fact: judged.fact,
      machineVersion: MACHINE_VERSION,
      position: judged.position,
    };
    const records = [...kept.records, record];
    const tail = kept.unsaved + 1;
    let shown = false;
    const reveal = (change: Partial<Kept>) => {
      show(shown ? change : { kitchen, records, ...change }, true);
      const pressed = deed.kind === 'press' ? { who: deed.who, before, after: kitchen } : undefined;
      if (!shown && (pressed || says.length > 0)) onSay(says, pressed);
      shown = true;
    };
    const stopWaiting = later(SHOW_AFTER_MS, () => reveal({ unsaved: tail, slow: true }));
    writing = true;
    const trouble = await write(records, tail);
    writing = false;
    stopWaiting();
    if (trouble === 'taken') {
      const { kitchen: theirs, records: rows } = await parts.reopen();
      // A row that nobody can read stands in the way of its number: no page wrote, and what is done goes on.
      if (rows.length > records.length - tail) {
        show({ kitchen: theirs, records: rows, unsaved: 0, slow: false, trouble });
        return 'again';
      }
    }
    reveal({ unsaved: trouble === null ? 0 : tail, slow: false, trouble });
    tick();
    return 'taken';
  };

  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const result = queue.then(work);
    queue = result.catch(() => undefined);
    return result;
  };

  /** While a fact is being written the kitchen stands still: what falls due then is due a moment later. */
  const tick = () => {
    const course = parts.course.here();
    if (writing || course === null) return;
    const { at } = time.read(kept.kitchen.now);
    const stepped = course.advance(kept.kitchen, machines, at);
    if (!stepped.taken) return;
    show({ kitchen: stepped.kitchen });
    if (stepped.says.length > 0) onSay(stepped.says);
  };

  return {
    kept: () => kept,
    take: (deed) => inTurn(() => takeNow(deed)),
    foresee(deed) {
      const { now } = kept.kitchen;
      const bare: Fact = { ...deed, id: 'foreseen', device: ids.device, at: now, raw: now };
      const judging = parts.judge().then((judge) => judge(kept.kitchen, machines, bare, height()));
      // What goes wrong is told when it is done.
      judging.catch(() => undefined);
    },
    tick,
    retry: () =>
      inTurn(async () => {
        if (kept.unsaved === 0) return;
        const trouble = await write(kept.records, kept.unsaved);
        show({ unsaved: trouble === null ? 0 : kept.unsaved, trouble });
      }),
  };
}
