import { createMemo, Show, type JSX } from 'solid-js';
import { LOAF_SIGNS, type LoafSign } from '../../../core/log/loaf-names.ts';
import { controls } from '../../../core/speech/words/controls.ts';
import { cutLoaf, cutPage, cutLoafLines } from '../../../core/speech/words/cut-loaf.ts';
import { Control } from '../../../parts/Control.tsx';
import { LoafPicture } from '../../../parts/LoafPictures.tsx';
import { Tiles, type TileOption } from '../../../parts/Tiles.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { LogPage } from '../LogPage.tsx';
import './cut.css';

/** One sign of a cut loaf, by its pictures; whoever is not sure says so. */
export function AskFace(props: {
  readonly house: House;
  readonly sign: LoafSign;
  /** A plain loaf has no holes round a filling. */
  readonly filled: boolean;
  readonly chosen: string | undefined;
  readonly onChoose: (shown: string) => void;
  /** Null: this is the first. */
  readonly onBefore: (() => void) | null;
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  const options = createMemo((): readonly TileOption[] => {
    const { sign } = props;
    const words: Readonly<Record<string, string>> = cutLoaf[sign].shown;
    return [
      ...LOAF_SIGNS[sign]
        .filter((shown) => props.filled || shown !== 'byFilling')
        .map((shown) => ({
          value: shown,
          label: words[shown]!,
          picture: <LoafPicture sign={sign} shown={shown} />,
        })),
      {
        value: 'unsure',
        label: cutLoafLines.cutLoafUnsure,
        picture: <LoafPicture sign={sign} shown="unsure" />,
      },
    ];
  });
  return (
    <LogPage
      back={props.back}
      onBack={() => props.onBack()}
      caption={props.house.caption()}
      words={
        <Words headline={cutLoaf[props.sign].ask}>
          <div class="cut-pictures">
            <Tiles
              label={cutLoaf[props.sign].ask}
              options={options()}
              chosen={props.chosen}
              onChoose={(shown) => props.onChoose(shown)}
            />
          </div>
        </Words>
      }
      controls={
        <>
          <Show when={props.onBefore}>
            {(before) => <Control label={cutPage.before} onPress={() => before()()} />}
          </Show>
          <Control
            label={controls.sayAgain}
            does="sayAgain"
            onPress={() => props.house.say(cutLoaf[props.sign].ask)}
          />
        </>
      }
    />
  );
}
