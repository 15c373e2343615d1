import type { JSX } from 'solid-js';
import { handOver, handPrint as words } from '../../../core/speech/words/hand-over.ts';
import { Control } from '../../../parts/Control.tsx';
import { printPage } from '../../../parts/print-page.ts';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CirclePage } from '../CirclePage.tsx';
import { PickUpSheet, type SheetView } from './PickUpSheet.tsx';

/** The list on paper, for the door: it says first that names are on it. */
export function PickUpPrint(props: {
  readonly view: () => SheetView;
  readonly onBack: () => void;
}): JSX.Element {
  const print = (): void => {
    const view = props.view();
    printPage(() => <PickUpSheet view={view} />);
  };
  return (
    <CirclePage
      back={handOver.list}
      onBack={() => props.onBack()}
      words={<Words headline={words.title} detail={words.detail} care={words.names} />}
      slab={<Slab label={words.print} then={words.then} fresh={words.print} onPress={print} />}
      controls={<Control label={handOver.list} onPress={() => props.onBack()} />}
    />
  );
}
