import { createSignal, lazy, Match, Show, Switch, type JSX } from 'solid-js';
import { book } from '../../core/speech/words/book.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import type { House } from '../house.ts';
import { leaveLink, linkHere } from '../link-here.ts';
import { ListFace } from './ListFace.tsx';
import { OpenFormula } from './OpenFormula.tsx';
import { usePictures } from './use-pictures.ts';

const LinkIn = lazy(() => import('./share/LinkIn.tsx'));
const Share = lazy(() => import('./share/Share.tsx'));

/** The formulas: a list, each one's page, and what is changed on it. */
export default function Book(props: {
  readonly house: House;
  readonly onHome: () => void;
}): JSX.Element {
  const [at, setAt] = createSignal<string | null>(null);
  const [away, setAway] = createSignal(false);
  // eslint-disable-next-line solid/reactivity -- the house is one
  const pictures = usePictures(props.house);
  const [link, setLink] = createSignal(linkHere());
  /** In and out: of one formula by its id, or of all. */
  const [shared, setShared] = createSignal<string | null>(null);
  const sharedFormula = () => props.house.book().find((one) => one.id === shared())?.latest ?? null;
  const sharedBread = (): string | null => {
    const formula = sharedFormula();
    return formula && showBread(formula.name);
  };
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
  const page = (): JSX.Element => (
    <Show
      when={open()}
      keyed
      fallback={
        <ListFace
          house={props.house}
          pictures={pictures()}
          away={away()}
          onPick={(id) => void pick(id)}
          onAway={() => setAway(true)}
          onShare={() => setShared('')}
          onBack={() => (away() ? setAway(false) : props.onHome())}
        />
      }
    >
      {(id) => (
        <OpenFormula
          house={props.house}
          pictures={pictures()}
          id={id}
          onOpen={(other) => setAt(other)}
          onShare={() => setShared(id)}
          onBack={() => setAt(null)}
        />
      )}
    </Show>
  );
  return (
    <Switch fallback={page()}>
      <Match when={link()}>
        {(held) => (
          <LinkIn
            house={props.house}
            link={held()}
            back={book.title}
            onBack={() => {
              leaveLink();
              setLink(null);
            }}
          />
        )}
      </Match>
      <Match when={shared() !== null}>
        <Share
          house={props.house}
          formula={sharedFormula()}
          back={sharedBread() ?? book.title}
          onBack={() => setShared(null)}
        />
      </Match>
    </Switch>
  );
}
