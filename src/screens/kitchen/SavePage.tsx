import { createSignal, type JSX } from 'solid-js';
import { readingsOfLogs } from '../../core/log/readings-csv.ts';
import type { Log } from '../../core/records/merge-logs.ts';
import { kitchenFields } from '../../core/speech/words/kitchen-fields.ts';
import { saveAFile as words } from '../../core/speech/words/save-a-file.ts';
import { troubleLines } from '../../core/speech/words/trouble.ts';
import { Control } from '../../parts/Control.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';

/** All of it as a file; names of neighbours and voices only where that is ticked, and then for this once. */
export function SavePage(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  const [names, setNames] = createSignal(false);
  const [others, setOthers] = createSignal<readonly Log[]>([]);
  const [sheet, setSheet] = createSignal<string>();
  // Where they cannot be read, the sheet has the readings of this kitchen alone.
  // eslint-disable-next-line solid/reactivity -- the house is one
  props.house.log().then(
    (its) => setOthers(its.others()),
    () => undefined,
  );
  const save = (): void => {
    props.house.saveAsFile(names());
    props.onBack();
  };
  const readings = async (): Promise<void> => {
    const { house } = props;
    const text = readingsOfLogs([house.records(), ...others()], {
      zone: house.zone(),
      units: house.ways(),
    });
    if (text === null) return void setSheet(words.noReadings);
    const handed = await house
      .handOn({ name: words.sheetFile, type: 'text/csv', text })
      .catch(() => 'failed' as const);
    setSheet(words.handed[handed]);
  };
  return (
    <KitchenPage
      back={kitchenFields.tablet}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={troubleLines.saveAsFile}
          detail={words.detail}
          care={names() ? words.care : undefined}
        />
      }
      slab={
        <Slab label={words.slab} then={kitchenFields.tablet} fresh="save" onPress={() => save()} />
      }
      // Where the ear stands a tall tablet has no room for the longest word.
      aside={<Control label={kitchenFields.tablet} onPress={() => props.onBack()} />}
      controls={
        <>
          <Control
            label={words.names}
            value={names() ? words.named : words.marks}
            chosen={names()}
            onPress={() => setNames(!names())}
          />
          <Control label={words.sheet} value={sheet()} onPress={() => void readings()} />
        </>
      }
    />
  );
}
