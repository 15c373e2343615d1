import { createSignal, type Accessor } from 'solid-js';
import type { NoPicture } from '../../../../machines/ports.ts';
import type { About, Keepsake } from '../../../core/log/about.ts';
import { keepsakesTold } from '../../../core/speech/words/keepsakes.ts';
import { pictureTold } from '../../../core/speech/words/picture.ts';
import { NOTHING_SAID } from '../../../core/log/about.ts';
import type { NotWritten } from '../../house-circle.ts';
import type { HouseLog } from '../../house-log.ts';
import type { House } from '../../house.ts';

/** What is said and kept of one bake, as its pages see it: nothing is shown that is not on the disk. */
export interface Kept {
  readonly said: Accessor<Omit<About, 'at'>>;
  /** Null: it has not come yet. */
  readonly photos: Accessor<readonly Keepsake[] | null>;
  readonly voices: Accessor<readonly Keepsake[] | null>;
  /** It cannot be read. */
  readonly closed: Accessor<boolean>;
  /** Whether a change was written; where it was not, that is told. */
  say(change: Partial<Omit<About, 'at'>>): Promise<boolean>;
  takePhoto(file: Blob): Promise<boolean>;
  takeVoice(voice: Pick<Keepsake, 'type' | 'bytes'>): Promise<boolean>;
  erase(id: string): Promise<boolean>;
  eraseAll(): Promise<boolean>;
}

const isOf =
  (kind: Keepsake['kind']) =>
  (one: Keepsake): boolean =>
    one.kind === kind;

/** Reads what is kept of a bake, and again after each change. */
export function openKept(house: Pick<House, 'tell' | 'holds'>, log: HouseLog, start: string): Kept {
  const [kept, setKept] = createSignal<readonly Keepsake[] | null>(null);
  const [closed, setClosed] = createSignal(false);
  const of = (kind: Keepsake['kind']): readonly Keepsake[] | null =>
    kept()?.filter(isOf(kind)) ?? null;
  const read = (): Promise<void> =>
    log.keepsakes(start).then(
      (found) => {
        setClosed(false);
        // One that is shown already stays the same one: its press may be half pressed.
        setKept((old) => found.map((one) => old?.find(({ id }) => id === one.id) ?? one));
      },
      () => void setClosed(true),
    );
  void read();
  const told = (why: NoPicture | NotWritten | null, words: Partial<Record<string, string>>) => {
    if (why === null) return true;
    const text = house.holds ? words[why] : keepsakesTold.shows;
    house.tell({ id: 'keepsakes', text: text ?? keepsakesTold.closed, action: null });
    return false;
  };
  const written = async (deed: Promise<NotWritten | null>): Promise<boolean> => {
    const isWritten = told(await deed, keepsakesTold);
    await read();
    return isWritten;
  };
  return {
    said: () => log.abouts()[start] ?? NOTHING_SAID,
    photos: () => of('photo'),
    voices: () => of('voice'),
    closed,
    say: async (change) => told(await log.say(start, change), keepsakesTold),
    async takePhoto(file) {
      const isTaken = told(await log.takePhoto(start, file), pictureTold);
      await read();
      return isTaken;
    },
    takeVoice: (voice) => written(log.takeVoice(start, voice)),
    erase: (id) => written(log.erase(start, id)),
    eraseAll: () => written(log.eraseAll(start)),
  };
}
