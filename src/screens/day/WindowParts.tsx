import type { JSX } from 'solid-js';
import { askPage, awayPage } from '../../core/speech/words/day.ts';
import { Stepper } from '../../parts/Stepper.tsx';
import { awayWhats, showAway } from '../../core/speech/show-away.ts';
import { Tiles } from '../../parts/Tiles.tsx';
import type { House } from '../house.ts';
import { AsksPage } from './AsksPage.tsx';

export type Face = 'all' | 'what' | 'days' | 'from' | 'to';
/** Minutes a press. */
const HALF = 30;

export interface PageProps {
  readonly house: House;
  readonly onRemove: () => void;
  readonly onBack: () => void;
}

/** What it is: the usual ones. */
export const WhatPage = (props: {
  readonly house: House;
  readonly name: string;
  readonly onPick: (name: string) => void;
  readonly onBack: () => void;
}): JSX.Element => (
  <AsksPage
    house={props.house}
    headline={awayPage.what}
    back={showAway(props.name)}
    onBack={() => props.onBack()}
  >
    <Tiles
      label={awayPage.what}
      options={awayWhats()}
      chosen={props.name}
      onChoose={(name) => props.onPick(name)}
    />
  </AsksPage>
);

/** From when, or until when: by halves of an hour. */
export const HalfPage = (props: {
  readonly house: House;
  readonly end: 'from' | 'to';
  readonly name: string;
  /** Both ends of it as they stand. */
  readonly span: string;
  /** The hour that is asked for. */
  readonly shown: string;
  readonly onStep: (by: number) => void;
  readonly onBack: () => void;
}): JSX.Element => (
  <AsksPage
    house={props.house}
    headline={awayPage[props.end]}
    detail={props.span}
    back={showAway(props.name)}
    onBack={() => props.onBack()}
  >
    <Stepper
      label={awayPage[props.end]}
      value={0}
      shown={props.shown}
      step={HALF}
      least={-Infinity}
      most={Infinity}
      fewer={askPage.earlier}
      more={askPage.laterHour}
      onChange={(by) => props.onStep(by)}
    />
  </AsksPage>
);
