import { createSignal, Show, type JSX } from 'solid-js';
import type { NoPicture } from '../../../machines/ports.ts';
import { controls } from '../../core/speech/words/controls.ts';
import { picture, pictureTold } from '../../core/speech/words/picture.ts';
import { fill } from '../../core/speech/fill.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import type { BookPictures } from '../book-pictures.ts';
import type { House } from '../house.ts';
import { FileControl } from '../FileControl.tsx';
import { BookPage } from './BookPage.tsx';
import './Picture.css';

/** A formula's picture as large as there is room; taken, replaced and taken away, each taken back by a press. */
export function PictureFace(props: {
  readonly house: House;
  readonly pictures: BookPictures | null;
  readonly formula: { readonly id: string; readonly name: string };
  readonly onBack: () => void;
}): JSX.Element {
  const [busy, setBusy] = createSignal(false);
  const [why, setWhy] = createSignal<NoPicture | null>(null);
  const address = (): string | undefined => props.pictures?.shown()[props.formula.id];
  const still = (): boolean => !props.house.holds || busy();
  const change = async (
    work: (its: BookPictures, id: string) => Promise<NoPicture | null>,
  ): Promise<void> => {
    setWhy(props.pictures ? await work(props.pictures, props.formula.id) : 'closed');
  };
  const take = async (file: File): Promise<void> => {
    if (still()) return;
    setBusy(true);
    await change((its, id) => its.take(id, file));
    setBusy(false);
  };
  return (
    <BookPage
      back={showBread(props.formula.name)}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={busy() ? picture.busy : address() ? picture.title : picture.none}
          detail={why() === null ? picture.detail : undefined}
          care={why() === null ? undefined : pictureTold[why()!]}
        >
          <Show when={address()}>
            {(from) => (
              <img
                class="picture-large"
                src={from()}
                alt={fill(picture.alt, { name: showBread(props.formula.name) })}
              />
            )}
          </Show>
        </Words>
      }
      controls={
        <>
          <FileControl
            label={picture.camera}
            accept="image/*"
            camera
            disabled={still()}
            onFile={(file) => void take(file)}
          />
          <FileControl
            label={picture.choose}
            accept="image/*"
            disabled={still()}
            onFile={(file) => void take(file)}
          />
          <Show when={address()}>
            <Control
              label={picture.drop}
              disabled={still()}
              onPress={() => void change((its, id) => its.drop(id))}
            />
          </Show>
          <Show when={props.pictures?.canTakeBack(props.formula.id)}>
            <Control
              label={controls.takeBack}
              disabled={still()}
              onPress={() => void change((its, id) => its.takeBack(id))}
            />
          </Show>
        </>
      }
    />
  );
}
