import { createSignal, type JSX } from 'solid-js';
import { controls } from '../../core/speech/words/controls.ts';
import { start } from '../../core/speech/words/start.ts';
import { Control } from '../../parts/Control.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { Stepper } from '../../parts/Stepper.tsx';
import type { House } from '../house.ts';
import { loavesToKeep } from './loaves-to-keep.ts';

/** Fewer loaves than planned: dough that fell short, a loaf that was dropped. */
export default function FewerSheet(props: {
  readonly house: House;
  readonly bake: string;
  readonly onClose: () => void;
}): JSX.Element {
  const keep = () => loavesToKeep(props.house.kitchen(), props.bake);
  const [chosen, setChosen] = createSignal<number | null>(null);
  const many = (): number => chosen() ?? keep().all.length;
  const take = (): void => {
    const { all } = keep();
    if (many() < all.length) {
      const loaves = all.slice(0, many());
      void props.house.take({ kind: 'press', who: props.bake, act: 'fewer', loaves });
    }
    props.onClose();
  };
  return (
    <Sheet title={controls.fewerAsk}>
      <p class="act-detail">{controls.fewerRest}</p>
      <Stepper
        label={controls.fewerAsk}
        value={many()}
        least={keep().least}
        most={keep().all.length}
        fewer={start.fewer}
        more={start.more}
        onChange={setChosen}
      />
      <div class="sheet-grid">
        <Control label={controls.backToBench} onPress={() => props.onClose()} />
        <Control
          label={controls.fewerTake}
          disabled={many() === keep().all.length}
          onPress={take}
        />
      </div>
    </Sheet>
  );
}
