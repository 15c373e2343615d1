import { createComputed, createMemo, createSignal, type Accessor } from 'solid-js';
import type { StoreTrouble } from '../../machines/ports.ts';
import type { Misread } from '../core/formula/read-fields.ts';
import { bench } from '../core/speech/words/bench.ts';
import { twoPages, update } from '../core/speech/words/kitchen.ts';
import { trouble, troubleLines } from '../core/speech/words/trouble.ts';
import { fill } from '../core/speech/fill.ts';
import type { Told } from '../screens/house.ts';

export interface ToldParts {
  readonly store: Accessor<StoreTrouble | null>;
  readonly unsaved: Accessor<number>;
  readonly clockBack: Accessor<boolean>;
  readonly holds: boolean;
  /** The other page has gone: this one can take the kitchen. */
  readonly free: Accessor<boolean>;
  readonly offer: Accessor<(() => void) | null>;
  readonly baking: Accessor<boolean>;
  /** No sound can be made in this browser. */
  readonly soundless: Accessor<boolean>;
  /** Words should have been heard and could not be. */
  readonly voiceLost: Accessor<boolean>;
  readonly secure: boolean;
  /** Why what was kept of the equipment could not be read. */
  readonly misread: Misread | null;
  readonly saveAsFile: () => void;
  readonly reload: () => void;
}

const STORE = {
  closed: 'storeClosed',
  full: 'storeFull',
  taken: 'storeTaken',
  gone: 'storeGone',
} as const satisfies Readonly<Record<StoreTrouble, keyof typeof trouble>>;

/** Presses, more than a saved file holds, after which it is offered anew. Judgement. */
const AGAIN = 5;

/** Sentences of trouble for who tells them. */
export const troubles = trouble;

const equipmentTold = ({ misread }: ToldParts): readonly Told[] =>
  misread === null
    ? []
    : [
        {
          id: 'equipment',
          text: fill(trouble.equipmentUnreadable, { ...misread }),
          action: null,
        },
      ];

/** Everything the program has to tell, each once, with what one press does about it. */
export function makeTold(parts: ToldParts): {
  readonly told: Accessor<readonly Told[]>;
  tell(notice: Told): void;
} {
  const [said, setSaid] = createSignal<readonly Told[]>(equipmentTold(parts));
  const [closed, setClosed] = createSignal<readonly string[]>([]);
  /** Presses in memory alone that a file was made of. */
  const [kept, setKept] = createSignal(0);
  createComputed(() => parts.unsaved() === 0 && setKept(0));
  const offersFile = (): boolean =>
    parts.unsaved() > 0 && (kept() === 0 || parts.unsaved() >= kept() + AGAIN);
  const closing = (id: string, text: string): Told => ({
    id,
    text,
    action: { label: bench.close, press: () => setClosed((ids) => [...ids, id]) },
  });
  const told = createMemo((): readonly Told[] => {
    const store = parts.store();
    const offer = parts.offer();
    const all: (Told | false | null)[] = [
      !parts.holds && {
        id: 'pages',
        text: parts.free() ? twoPages.free : `${twoPages.headline}. ${twoPages.detail}`,
        action: parts.free() ? { label: twoPages.take, press: parts.reload } : null,
      },
      store !== null && offersFile()
        ? {
            id: 'store',
            // What was pressed stands, and its number is taken: nothing more of this log can be saved.
            text: store === 'taken' ? trouble.storeClosed : trouble[STORE[store]],
            action: {
              label: troubleLines.saveAsFile,
              // How many wait stays told; where the baker has to get at the rest, this lies over it.
              press() {
                parts.saveAsFile();
                setKept(parts.unsaved());
              },
            },
          }
        : parts.unsaved() === 0 &&
          (store === 'taken'
            ? closing('taken', trouble[STORE.taken])
            : // Not opened: else an empty kitchen would stand there without a word.
              store === 'closed' && {
                id: 'unread',
                text: trouble.storeUnread,
                action: { label: troubleLines.loadAgain, press: parts.reload },
              }),
      parts.clockBack() && closing('clock', trouble.clockBack),
      parts.soundless() && closing('sound', trouble.soundMissing),
      parts.voiceLost() && closing('voice', trouble.voiceLost),
      !parts.secure && closing('insecure', trouble.insecure),
      // Never in the middle of a bake: a new version waits until the kitchen is idle.
      offer !== null &&
        !parts.baking() && {
          id: 'update',
          text: `${update.offer} ${update.detail}`,
          action: { label: update.take, press: offer },
        },
      // What asks for nothing is closed, or it would lie there as long as the page does.
      ...said().map((one) => (one.action === null ? closing(one.id, one.text) : one)),
    ];
    return all.filter((t): t is Told => !!t && !closed().includes(t.id));
  });
  return {
    told,
    tell(notice) {
      setClosed((ids) => ids.filter((id) => id !== notice.id));
      setSaid((old) => [...old.filter((t) => t.id !== notice.id), notice]);
    },
  };
}
