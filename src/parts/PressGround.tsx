import { onCleanup, type JSX } from 'solid-js';
import { makePressRoom, RoomContext, type RoomOptions } from './room.ts';

/**
 * Stands once around the whole app: watches every contact, and lets the first touch on a ringing
 * call do nothing but silence it (`firstTouch` says whether it did).
 */
export function PressGround(props: RoomOptions & { readonly children: JSX.Element }): JSX.Element {
  const room = makePressRoom(window, {
    /* eslint-disable solid/reactivity -- a page has one clock */
    ...(props.now ? { now: () => props.now!() } : {}),
    ...(props.when ? { when: (e: Event) => props.when!(e) } : {}),
    /* eslint-enable solid/reactivity */
    firstTouch: () => props.firstTouch?.() ?? false,
  });
  onCleanup(() => room.stop());
  return <RoomContext.Provider value={room}>{props.children}</RoomContext.Provider>;
}
