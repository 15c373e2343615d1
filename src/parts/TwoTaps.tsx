import { createSignal, type JSX } from 'solid-js';
import { Control } from './Control.tsx';
import './TwoTaps.css';

/** The second tap counts this long after the first. */
const WITHIN_MS = 10_000;

export interface TwoTapsProps {
  readonly label: string;
  readonly first: string;
  readonly second: string;
  readonly onBoth: () => void;
  /** What stands between the two and keeps them apart. */
  readonly between?: JSX.Element;
  readonly now?: (() => number) | undefined;
}

/** For hands that cannot hold: two taps on targets at least 25 mm apart, and no learned key. */
export function TwoTaps(props: TwoTapsProps): JSX.Element {
  const now = (): number => props.now?.() ?? performance.now();
  const [firstAt, setFirstAt] = createSignal<number | null>(null);
  const second = (): void => {
    const at = firstAt();
    setFirstAt(null);
    if (at !== null && now() - at <= WITHIN_MS) props.onBoth();
  };
  return (
    <div class="two-taps" role="group" aria-label={props.label}>
      <Control
        label={props.first}
        chosen={firstAt() !== null}
        keys={false}
        onPress={() => setFirstAt(now())}
        now={props.now}
      />
      {props.between}
      <Control
        label={props.second}
        disabled={firstAt() === null}
        keys={false}
        onPress={second}
        now={props.now}
      />
    </div>
  );
}
