import type { Component, JSX } from 'solid-js';
import { BenchFrame } from '../../../src/parts/BenchFrame.tsx';
import { Control } from '../../../src/parts/Control.tsx';
import { Countdown } from '../../../src/parts/Countdown.tsx';
import { NumberPad } from '../../../src/parts/NumberPad.tsx';
import { RuledEdge } from '../../../src/parts/RuledEdge.tsx';
import { Slab } from '../../../src/parts/Slab.tsx';
import { Tiles } from '../../../src/parts/Tiles.tsx';
import { Words } from '../../../src/parts/Words.tsx';

/** Presses are counted on the root, so that a browser test can read them. */
const press = (name: string) => () => {
  const root = document.documentElement;
  root.dataset[name] = String(Number(root.dataset[name] ?? 0) + 1);
};

export const edge = (at: number): JSX.Element => (
  <RuledEdge
    label={`Step ${at + 1} of 31`}
    ticks={Array.from({ length: 31 }, (_, i) => ({ long: [0, 2, 6, 12, 19, 24, 28].includes(i) }))}
    at={at}
  />
);
export const controls = (last: string): JSX.Element => (
  <>
    <Control label="Take that back" onPress={press('back')} />
    <Control label="Say that again" onPress={press('again')} />
    <Control label={last} onPress={press('last')} />
  </>
);
export const ear = (): JSX.Element => <Control label="Sound on" onPress={press('ear')} />;

const hour = (h: number, m: number, s = 0): number => Date.UTC(2031, 4, 9, h, m, s);

export const scenes: Record<string, Component> = {
  act: () => (
    <BenchFrame
      label="Bench"
      edge={edge(12)}
      times={
        <Countdown
          name="Bulk, fold 2 of 2"
          label="to the next look"
          ends="at 12:32"
          deadline={hour(12, 32)}
          now={hour(11, 20)}
        />
      }
      words={
        <Words
          headline="Spread the dough thin on the wet bench"
          detail="Stop where it resists. Leave a 3 cm bare edge."
        />
      }
      controls={controls('New reading')}
      ear={ear()}
      slab={<Slab label="That’s done" then="then scatter the filling" onPress={press('slab')} />}
    />
  ),
  tiles: () => (
    <BenchFrame
      label="Bench"
      edge={edge(18)}
      times={
        <Countdown
          name="Bulk, look"
          label="to the next look"
          deadline={hour(11, 32, 5)}
          now={hour(11, 20)}
        />
      }
      words={
        <Words headline="How far has it risen?">
          <Tiles
            label="Rise"
            options={['A little', 'A quarter', 'A half', 'Three quarters', 'Doubled'].map((l) => ({
              value: l,
              label: l,
            }))}
            onChoose={press('tile')}
          />
        </Words>
      }
      controls={controls('Not sure')}
      ear={ear()}
      slab={<Slab label="It’s ready" then="then divide" onPress={press('slab')} />}
    />
  ),
  pad: () => (
    <BenchFrame
      label="Bench"
      edge={edge(11)}
      words={
        <Words headline="Measure the dough">
          <NumberPad
            label="Dough temperature"
            unit="°C"
            words={{ point: '.', clear: 'Clear', hint: 'Probe in the middle' }}
            min={10}
            max={40}
          />
        </Words>
      }
      controls={controls('Can’t measure')}
      ear={ear()}
      slab={<Slab label="That’s it" disabled onPress={press('slab')} />}
    />
  ),
};
