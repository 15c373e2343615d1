import { createSignal } from 'solid-js';
import type { About, Keepsake } from '../../src/core/log/about.ts';
import { erasedSaid, saidWith } from '../../src/core/log/said-with.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import type { NotWritten } from '../../src/screens/house-circle.ts';
import type { HouseLog } from '../../src/screens/house-log.ts';
import { fakeSpokenNotes } from './spoken-notes.ts';

/** A Log that writes nowhere. `fails`: what every write comes to, where it is not written. */
export function fakeHouseLog(
  first: {
    readonly abouts?: Readonly<Record<string, About>>;
    readonly others?: readonly (readonly LogRecord[])[];
    readonly kept?: readonly Keepsake[];
    readonly voices?: ReturnType<typeof fakeSpokenNotes>;
  } = {},
  fails: () => NotWritten | null = () => null,
): HouseLog {
  const [abouts, setAbouts] = createSignal<Readonly<Record<string, About>>>(first.abouts ?? {});
  let kept = first.kept ?? [];
  let made = kept.length;
  const voices = first.voices ?? fakeSpokenNotes();
  const written = (deed: () => void): Promise<NotWritten | null> => {
    const why = fails();
    if (why === null) deed();
    return Promise.resolve(why);
  };
  const put = (
    start: string,
    kind: Keepsake['kind'],
    { type, bytes }: Pick<Keepsake, 'type' | 'bytes'>,
  ) => {
    const id = `${kind}-${(made += 1)}`;
    return written(() => (kept = [...kept, { id, start, kind, at: 0, type, bytes }]));
  };
  return {
    others: () => first.others ?? [],
    abouts,
    say: (start, change) =>
      written(() => {
        const said = abouts()[start] ?? null;
        setAbouts({ ...abouts(), [start]: saidWith(said, change, 0) });
      }),
    keepsakes: (start) => Promise.resolve(kept.filter((one) => one.start === start)),
    voices: () => Promise.resolve(voices),
    takePhoto: async (start, file) => {
      const bytes = new Uint8Array(await file.arrayBuffer());
      return put(start, 'photo', { type: file.type, bytes });
    },
    takeVoice: (start, recorded) => put(start, 'voice', recorded),
    erase: (_start, id) => written(() => (kept = kept.filter((one) => one.id !== id))),
    eraseAll: (start) =>
      written(() => {
        kept = kept.filter((one) => one.start !== start);
        setAbouts({ ...abouts(), [start]: erasedSaid(abouts()[start] ?? null, 0) });
      }),
  };
}
