import { createSignal, Show, type JSX } from 'solid-js';
import { readAFile } from '../../core/speech/words/read-a-file.ts';
import { kitchenFields } from '../../core/speech/words/kitchen-fields.ts';
import { Control } from '../../parts/Control.tsx';
import { HoldSlab } from '../../parts/HoldSlab.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House, LogFile } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';
import { bringsAnything, fileWords } from './file-words.ts';

/** A saved file, chosen, told of before anything is written, and taken in by a hold. */
export function FilePage(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  const [file, setFile] = createSignal<LogFile | null>(null);
  const [why, setWhy] = createSignal<string | null>(null);
  let input!: HTMLInputElement;
  const read = async (): Promise<void> => {
    const [chosen] = input.files ?? [];
    if (!chosen) return;
    const found = await chosen
      .text()
      .then((text) => props.house.readFile(text))
      .catch(() => ({ file: null, why: readAFile.closed }));
    input.value = '';
    setFile(found.file);
    setWhy(found.why);
  };
  const take = async (): Promise<void> => {
    const good = file();
    if (good === null) return;
    try {
      await props.house.takeFile(good);
    } catch (error) {
      const { trouble } = error as { readonly trouble?: unknown };
      setFile(null);
      setWhy(trouble === 'taken' ? readAFile.meanwhile : readAFile.failed);
    }
  };
  const told = () => fileWords(file(), (at) => props.house.date(at));
  return (
    <KitchenPage
      back={kitchenFields.tablet}
      onBack={() => props.onBack()}
      words={
        <Words headline={told().headline} detail={told().detail} care={why() ?? undefined}>
          <input
            ref={input}
            type="file"
            hidden
            accept=".jsonl"
            aria-label={readAFile.choose}
            onChange={() => void read()}
          />
        </Words>
      }
      slab={
        bringsAnything(file()) ? (
          <HoldSlab
            label={readAFile.hold}
            holding={readAFile.holding}
            then={readAFile.then}
            onHeld={() => void take()}
          />
        ) : undefined
      }
      controls={
        <>
          <Control label={readAFile.choose} onPress={() => input.click()} />
          <Show when={bringsAnything(file())}>
            <Control label={kitchenFields.tablet} onPress={() => props.onBack()} />
          </Show>
        </>
      }
    />
  );
}
