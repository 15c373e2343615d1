import { createSignal, Show, type JSX } from 'solid-js';
import { readAFile } from '../../core/speech/en/read-a-file.ts';
import { kitchenFields } from '../../core/speech/en/kitchen-fields.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { HoldSlab } from '../../parts/HoldSlab.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House, LogFile } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';

/** A saved log, chosen, told of, and taken in by a hold. */
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
    const found = await props.house.readFile(await chosen.text());
    input.value = '';
    setFile(found.file);
    setWhy(found.why);
  };
  const take = async (): Promise<void> => {
    const good = file();
    if (good === null) return;
    try {
      await props.house.takeFile(good);
    } catch {
      setFile(null);
      setWhy(readAFile.failed);
    }
  };
  const log = ({ bakes, last }: LogFile): string =>
    last === null
      ? readAFile.none
      : fill(readAFile.found, { count: bakes, date: props.house.date(last) });
  const told = (file: LogFile): string =>
    file.circle === null ? log(file) : `${log(file)} ${readAFile.circle}`;
  return (
    <KitchenPage
      back={kitchenFields.tablet}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={readAFile.title}
          detail={file() ? told(file()!) : readAFile.detail}
          care={why() ?? undefined}
        >
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
        file() ? (
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
          <Show when={file()}>
            <Control label={kitchenFields.tablet} onPress={() => props.onBack()} />
          </Show>
        </>
      }
    />
  );
}
