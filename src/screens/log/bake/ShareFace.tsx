import { createMemo, createResource, createSignal, Show, type JSX } from 'solid-js';
import { NOTHING_SAID } from '../../../core/log/about.ts';
import { wallTime } from '../../../core/day/plan/wall-clock.ts';
import { bakeRows } from '../../../core/log/bake-rows.ts';
import { readingsCsv } from '../../../core/log/readings-csv.ts';
import { logShare as words } from '../../../core/speech/words/log-share.ts';
import { log } from '../../../core/speech/words/log.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { Control } from '../../../parts/Control.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import type { FaceProps } from '../face.ts';
import { LogPage } from '../LogPage.tsx';
import { recordsOf, type RecordsOf } from '../records-of.ts';
import { fileNameOf, isTyped, sharedFile } from './shared-file.ts';
import { tellingOf, type Telling } from './telling.ts';
import './Bake.css';

type Told = keyof typeof words.handed;

/** One bake handed on as a page file, or its readings as a sheet; says first what is in it. */
export default function ShareFace(props: FaceProps & { readonly start: string }): JSX.Element {
  const found = createMemo(() => recordsOf(props.house, props.log, props.start));
  const telling = createMemo(() => {
    const its = found();
    return its && tellingOf(props.house, its, props.start);
  });
  return (
    <Show
      when={telling()}
      fallback={
        <LogPage
          back={log.title}
          onBack={() => props.onBack()}
          words={<Words headline={words.title} detail={log.gone} />}
        />
      }
    >
      {(its) => <ShareOne {...props} telling={its()} found={found()!} />}
    </Show>
  );
}

function ShareOne(
  props: FaceProps & {
    readonly start: string;
    readonly telling: Telling;
    readonly found: RecordsOf;
  },
): JSX.Element {
  const [note, setNote] = createSignal(false);
  const [withPhotos, setWithPhotos] = createSignal(false);
  const [told, setTold] = createSignal<Told | null>(null);
  const [kept] = createResource(async () => {
    try {
      return await props.log.keepsakes(props.start);
    } catch {
      return [];
    }
  });
  const photos = () => (kept() ?? []).filter(({ kind }) => kind === 'photo');
  const about = () => props.log.abouts()[props.start] ?? NOTHING_SAID;
  const typed = () => isTyped(props.telling, about());
  const care = (): string | undefined =>
    withPhotos() ? words.carePhotos : note() ? words.careNote : undefined;
  const day = () => {
    const { from } = props.telling.page;
    const { year, month, day } = wallTime(props.house.wall(from), props.house.zone());
    return `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  };
  const hand = async (end: string, type: string, text: string): Promise<void> => {
    try {
      const name = fileNameOf(showBread(props.telling.page.name), day(), end);
      setTold(await props.house.handOn({ name, type, text }));
    } catch {
      setTold('failed');
    }
  };
  const page = (): Promise<void> =>
    hand(
      'html',
      'text/html',
      sharedFile(props.telling, {
        about: note() ? about() : null,
        photos: withPhotos() ? photos().map(({ bytes }) => bytes) : [],
      }),
    );
  const sheet = (): Promise<void> => {
    // A bake of this name may stand in the log twice: only the rows of this one are read.
    const { records, bake } = props.found;
    const own = bakeRows(records, bake, { begun: props.start })?.rows ?? [];
    const as = { zone: props.house.zone(), units: props.house.ways(), bakes: new Set([bake]) };
    return hand('csv', 'text/csv', readingsCsv(own, as));
  };
  return (
    <LogPage
      wide
      back={showBread(props.telling.page.name)}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={words.title}
          detail={told() ? words.handed[told()!] : words.detail}
          care={care()}
        >
          <div class="bake-list">
            <p>{unbroken(words.in)}</p>
            <p>{unbroken(words.out)}</p>
          </div>
        </Words>
      }
      slab={
        <Slab label={words.slab} then={words.then} fresh={words.slab} onPress={() => void page()} />
      }
      controls={
        <>
          <Control
            label={words.note}
            value={note() ? words.noteIn : typed() ? words.outOfPage : words.noteNone}
            fresh="note"
            chosen={note()}
            disabled={!typed()}
            onPress={() => setNote(!note())}
          />
          <Control
            label={words.photos}
            value={
              withPhotos()
                ? fill(words.inPage, { count: photos().length })
                : photos().length > 0
                  ? words.outOfPage
                  : words.photosNone
            }
            fresh="photos"
            chosen={withPhotos()}
            disabled={photos().length === 0}
            onPress={() => setWithPhotos(!withPhotos())}
          />
          <Control label={words.sheet} onPress={() => void sheet()} />
          <Control label={words.back} onPress={() => props.onBack()} />
        </>
      }
    />
  );
}
