import { onCleanup, type JSX } from 'solid-js';
import type { Keepsake } from '../../../core/log/about.ts';

/** A photo that is kept, under an address of this page's own while it is shown. */
export function Photo(props: {
  readonly of: Keepsake;
  readonly alt: string;
  readonly class: string;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- what is kept does not change
  const address = URL.createObjectURL(new Blob([props.of.bytes], { type: props.of.type }));
  onCleanup(() => URL.revokeObjectURL(address));
  return <img class={props.class} src={address} alt={props.alt} />;
}
