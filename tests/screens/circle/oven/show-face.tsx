import { render } from '@solidjs/testing-library';
import type { JSX } from 'solid-js';
import { PressGround } from '../../../../src/parts/PressGround.tsx';
import type { turnedClock } from '../../parts/touching.ts';

/** One face by itself. */
export const showFace = (face: () => JSX.Element, clock: ReturnType<typeof turnedClock>): void =>
  void render((): JSX.Element => <PressGround now={clock}>{face()}</PressGround>);
