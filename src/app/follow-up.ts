import type { World } from './world.ts';

/**
 * What a press brought is on the glass before alarms and other pages hear of it: the hour it moved is
 * waited for, they are not. What calls, and what time brings, is followed at once, with all that was put
 * off before.
 */
export function makeFollowUp(
  { drawn, news }: Pick<World, 'drawn' | 'news'>,
  follow: () => void,
): (mayWait: boolean) => void {
  let callOff = (): void => {};
  const now = (): void => {
    follow();
    news.tell();
  };
  return (mayWait) => {
    callOff();
    callOff = () => undefined;
    if (mayWait) callOff = drawn(now);
    else now();
  };
}
