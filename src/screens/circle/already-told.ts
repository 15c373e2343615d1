import { hasName, ownName } from '../../core/circle/neighbours.ts';
import { neighbourWords as words } from '../../core/speech/words/circle.ts';
import { fill } from '../../core/speech/fill.ts';
import type { FaceProps } from './face.ts';

/** What is to be said of a name that somebody else has, while it is typed. */
export function alreadyTold(
  props: Pick<FaceProps, 'circle'>,
  typed: string,
  besides: string | null,
): string | undefined {
  const circle = props.circle.circle();
  return hasName(circle, typed, besides)
    ? fill(words.already, { name: typed.trim(), other: ownName(circle, typed, besides) })
    : undefined;
}
