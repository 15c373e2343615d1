import type { JSX } from 'solid-js';
import { bench } from '../../core/speech/en/bench.ts';
import { askPage, awayPage } from '../../core/speech/en/day.ts';
import { Slab } from '../../parts/Slab.tsx';
import { Stepper } from '../../parts/Stepper.tsx';
import { Tiles } from '../../parts/Tiles.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { DayPage } from './DayPage.tsx';
import { WHATS } from './windows.ts';

export type Face = 'all' | 'what' | 'days' | 'from' | 'to';
/** Minutes a press. */
const HALF = 30;

export interface PageProps {
  readonly house: House;
  readonly onRemove: () => void;
  readonly onBack: () => void;
}

/** A page of a window: what it asks, and back to what it belongs to. */
export function Asks(props: {
  readonly house: House;
  readonly headline: string;
  readonly detail?: string;
  readonly back: string;
  readonly controls?: JSX.Element;
  readonly children: JSX.Element;
  readonly onBack: () => void;
}): JSX.Element {
  return (
    <DayPage
      caption={props.house.caption()}
      words={
        <Words headline={props.headline} detail={props.detail}>
          {props.children}
        </Words>
      }
      slab={
        <Slab
          label={bench.thatsIt}
          then={props.back}
          fresh={props.headline}
          onPress={() => props.onBack()}
        />
      }
      controls={props.controls}
    />
  );
}

/** What it is: the usual ones. */
export const What = (props: {
  readonly name: string;
  readonly onPick: (name: string) => void;
}): JSX.Element => (
  <Tiles
    label={awayPage.what}
    options={WHATS.map((value) => ({ value, label: value }))}
    chosen={props.name}
    onChoose={(name) => props.onPick(name)}
  />
);

/** An hour by halves of one. */
export const Half = (props: {
  readonly label: string;
  readonly shown: string;
  readonly onStep: (by: number) => void;
}): JSX.Element => (
  <Stepper
    label={props.label}
    value={0}
    shown={props.shown}
    step={HALF}
    least={-Infinity}
    most={Infinity}
    fewer={askPage.earlier}
    more={askPage.laterHour}
    onChange={(by) => props.onStep(by)}
  />
);
