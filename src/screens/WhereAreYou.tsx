import { createSignal, Show, type JSX } from 'solid-js';
import { controls } from '../core/speech/words/controls.ts';
import { bench } from '../core/speech/words/bench.ts';
import type { Join } from '../core/records/stage.ts';
import { joins } from '../core/speech/words/start.ts';
import { whereAreYou } from '../core/speech/words/trouble.ts';
import { showBread } from '../core/speech/show-bread.ts';
import { BenchFrame } from '../parts/BenchFrame.tsx';
import { RuledEdge } from '../parts/RuledEdge.tsx';
import { Slab } from '../parts/Slab.tsx';
import { Tiles } from '../parts/Tiles.tsx';
import { Words } from '../parts/Words.tsx';
import type { Lost } from './house.ts';

/** The log cannot say where the dough is: the baker does, bake by bake. */
export default function WhereAreYou(props: { readonly lost: Lost }): JSX.Element {
  const [places, setPlaces] = createSignal<Readonly<Record<string, Join>>>({});
  const open = () => props.lost.bakes.find(({ id }) => !(id in places()));
  const [chosen, setChosen] = createSignal<Join | null>(null);
  const here = (): void => {
    const [bake, join] = [open(), chosen()];
    if (!bake || join === null) return;
    setPlaces((old) => ({ ...old, [bake.id]: join }));
    setChosen(null);
    if (!open()) void props.lost.put(places());
  };
  return (
    <BenchFrame
      label={bench.label}
      further={controls.readOn}
      edge={<RuledEdge label={whereAreYou.headline} ticks={[{ long: true }]} at={0} />}
      words={
        <Show when={open()}>
          {(bake) => (
            <Words
              headline={whereAreYou.headline}
              detail={`${showBread(bake().name)}. ${whereAreYou.detail}`}
            >
              <Tiles
                label={whereAreYou.headline}
                options={bake().joins.map((join) => ({ value: join, label: joins[join] }))}
                chosen={chosen() ?? ''}
                onChoose={(join) => setChosen(join as Join)}
              />
            </Words>
          )}
        </Show>
      }
      slab={
        <Slab
          label={whereAreYou.slab}
          then={whereAreYou.then}
          fresh={open()?.id}
          disabled={chosen() === null}
          onPress={here}
        />
      }
    />
  );
}
