import { createSignal, Show, type JSX } from 'solid-js';
import type { House } from '../house.ts';
import { ListFace } from './ListFace.tsx';
import { OpenFormula } from './OpenFormula.tsx';

/** The formulas: a list, each one's page, and what is changed on it. */
export default function Book(props: {
  readonly house: House;
  readonly onHome: () => void;
}): JSX.Element {
  const [at, setAt] = createSignal<string | null>(null);
  const [away, setAway] = createSignal(false);
  const open = (): string | null => {
    const id = at();
    return id !== null && props.house.book().some((one) => one.id === id) ? id : null;
  };
  /** One that was off the list is on it again by its next version. */
  const pick = async (id: string): Promise<void> => {
    const entry = props.house.book().find((one) => one.id === id);
    if (entry?.off) {
      await props.house.keepFormula(entry.latest);
      setAway(false);
      return;
    }
    setAt(id);
  };
  return (
    <Show
      when={open()}
      keyed
      fallback={
        <ListFace
          house={props.house}
          away={away()}
          onPick={(id) => void pick(id)}
          onAway={() => setAway(true)}
          onBack={() => (away() ? setAway(false) : props.onHome())}
        />
      }
    >
      {(id) => (
        <OpenFormula
          house={props.house}
          id={id}
          onOpen={(other) => setAt(other)}
          onBack={() => setAt(null)}
        />
      )}
    </Show>
  );
}
