import { createSignal, onCleanup, type JSX } from 'solid-js';
import type { EarEngine } from '../../../core/ear/person.ts';
import { earKitchen as words } from '../../../core/speech/words/ear-kitchen.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showMegabytes } from '../../../core/speech/show-megabytes.ts';
import { Tiles } from '../../../parts/Tiles.tsx';
import { Words } from '../../../parts/Words.tsx';
import { KitchenPage } from '../../KitchenPage.tsx';
import type { EarFaceProps } from './face.ts';

const EARS = ['off', 'plain', 'learned'] as const;

/** What understands a voice, if anything shall; what has to come for it is weighed before it is chosen. */
export function EnginePage(props: EarFaceProps): JSX.Element {
  const [comes, setComes] = createSignal<EarEngine | null>(null);
  const [lost, setLost] = createSignal(false);
  let here = true;
  onCleanup(() => (here = false));
  const weight = () => ({ value: showMegabytes(props.ear.weighs) });
  const fetch = async (engine: EarEngine): Promise<void> => {
    setComes(engine);
    const came = await props.ear.fetch(engine).catch(() => false);
    // Whoever has left may have chosen otherwise since.
    if (!here) return;
    setComes(null);
    setLost(!came);
    if (came) props.house.equip({ ear: engine });
  };
  const choose = (ear: (typeof EARS)[number]): void => {
    setLost(false);
    if (ear === 'off') props.house.equip({ ear });
    else void fetch(ear);
  };
  const detail = (): string => {
    const engine = comes();
    if (engine === null) return words.engineDetail;
    return engine === 'plain' ? words.comesPlain : fill(words.comes, weight());
  };
  return (
    <KitchenPage
      back={words.title}
      onBack={() => props.onBack()}
      words={
        <Words headline={words.engine} detail={detail()} care={lost() ? words.comesNot : undefined}>
          <Tiles
            label={words.engine}
            options={EARS.map((value) => ({
              value,
              label: words.is[value],
              means: fill(words.means[value], weight()),
            }))}
            chosen={props.house.equipment().ear}
            disabled={comes() !== null}
            onChoose={(value) => choose(value as (typeof EARS)[number])}
          />
        </Words>
      }
    />
  );
}
