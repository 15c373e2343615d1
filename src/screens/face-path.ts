import { createSignal, type Accessor } from 'solid-js';

/** Where one is on a screen of many faces, and the way back, a press each. */
export interface FacePath<F extends { readonly at: string }> {
  readonly face: Accessor<F>;
  /** The face on show, if it is this one. */
  at<A extends F['at']>(which: A): Extract<F, { readonly at: A }> | null;
  readonly onOpen: (next: F) => void;
  readonly onBack: () => void;
}

/** @param onHome from `first` back, off the screen */
export function makeFacePath<F extends { readonly at: string }>(
  first: F,
  onHome: () => void,
): FacePath<F> {
  const [path, setPath] = createSignal<readonly F[]>([]);
  const face = (): F => path().at(-1) ?? first;
  return {
    face,
    at: <A extends F['at']>(which: A) => {
      const now = face();
      return now.at === which ? (now as Extract<F, { readonly at: A }>) : null;
    },
    onOpen: (next) => void setPath([...path(), next]),
    onBack: () => {
      if (path().length === 0) onHome();
      else setPath(path().slice(0, -1));
    },
  };
}
