import { createSignal, type JSX } from 'solid-js';
import { earKitchen, earPeople } from '../../../core/speech/words/ear-kitchen.ts';
import { EraseFace } from '../../EraseFace.tsx';
import { KitchenPage } from '../../KitchenPage.tsx';
import { notWritten, type EarFaceProps } from './face.ts';

/** One voice is forgotten, or every one and the ear is off: for good. */
export function EraseVoices(props: EarFaceProps & { readonly id: string | null }): JSX.Element {
  const [told, setTold] = createSignal<string | undefined>();
  const words = () => (props.id === null ? earKitchen : earPeople);
  const erase = async (): Promise<void> => {
    const { id, ear } = props;
    const why = await (id === null ? ear.forgetAll() : ear.forget(id));
    if (why !== null) return void setTold(notWritten(why));
    props.onOpen({ at: id === null ? 'ear' : 'people' });
  };
  return (
    <EraseFace
      page={KitchenPage}
      ask={words().eraseAsk}
      detail={words().eraseDetail}
      care={told()}
      back={words().title}
      onErase={() => void erase()}
      onBack={() => props.onBack()}
    />
  );
}
