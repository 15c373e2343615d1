import { render } from '@solidjs/testing-library';
import type { JSX } from 'solid-js';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import type { DayDraft } from '../../../src/screens/day-draft.ts';
import Circle from '../../../src/screens/circle/Circle.tsx';
import type { House } from '../../../src/screens/house.ts';
import type { turnedClock } from '../parts/touching.ts';

/** The Circle of a house, as it opens. */
export const showCircle = (
  house: House,
  clock: ReturnType<typeof turnedClock>,
  on: { readonly onHome?: () => void; readonly onDay?: (draft: DayDraft) => void } = {},
): void =>
  void render((): JSX.Element => (
    <PressGround now={clock}>
      <Circle house={house} onHome={() => on.onHome?.()} onDay={(draft) => on.onDay?.(draft)} />
    </PressGround>
  ));
