import type { Component, JSX } from 'solid-js';
import { BenchFrame } from '../../../src/parts/BenchFrame.tsx';
import { Control } from '../../../src/parts/Control.tsx';
import { Countdown } from '../../../src/parts/Countdown.tsx';
import { NumberPad } from '../../../src/parts/NumberPad.tsx';
import { RuledEdge } from '../../../src/parts/RuledEdge.tsx';
import { Slab } from '../../../src/parts/Slab.tsx';
import { Target } from '../../../src/parts/Target.tsx';
import { Tiles } from '../../../src/parts/Tiles.tsx';
import { Words } from '../../../src/parts/Words.tsx';
import { CallMark } from '../../../src/parts/CallMark.tsx';
import { Caption } from '../../../src/parts/Caption.tsx';
import { EarPanel } from '../../../src/parts/EarPanel.tsx';
import { HoldSlab } from '../../../src/parts/HoldSlab.tsx';
import { Lines } from '../../../src/parts/Lines.tsx';
import { ReadyWindow } from '../../../src/parts/ReadyWindow.tsx';
import { RehearsalMark } from '../../../src/parts/RehearsalMark.tsx';
import { ReturnCard } from '../../../src/parts/ReturnCard.tsx';
import { StandBack } from '../../../src/parts/StandBack.tsx';
import { TwoTaps } from '../../../src/parts/TwoTaps.tsx';
import { bookScenes } from './book-scenes.tsx';
import { cupboardScenes } from './cupboard-scenes.tsx';
import { cutScenes } from './cut-scenes.tsx';
import { dayScenes } from './day-scenes.tsx';
import { earScenes } from './ear-scenes.tsx';
import { letterScenes } from './letter-scenes.tsx';
import { riseScenes } from './rise-scenes.tsx';
import { stageScenes } from './stage-scenes.tsx';
import { States } from './states.tsx';

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
export const ear = (): JSX.Element => (
  <>
    <EarPanel sound="Sound is on" lit="Keep the screen on yourself" />
    <Control label="More" onPress={press('more')} />
  </>
);

const hour = (h: number, m: number, s = 0): number => Date.UTC(2031, 4, 9, h, m, s);

export const scenes: Record<string, Component> = {
  ...bookScenes,
  ...cupboardScenes,
  ...cutScenes,
  ...dayScenes,
  ...earScenes,
  ...letterScenes,
  ...riseScenes,
  ...stageScenes,
  states: States,
  act: () => (
    <BenchFrame
      label="Bench"
      further="Read on"
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
  target: () => (
    <BenchFrame
      label="Bench"
      further="Read on"
      edge={edge(6)}
      times={
        <Target value="27 °C" label="for dough at 25 °C" range="or 24 to 29 °C">
          <Control label="Why this?" onPress={press('why')} />
        </Target>
      }
      words={
        <Words
          headline="978 g water"
          detail="A guess: flour and levain as warm as the kitchen."
          care="Raw flour is raw food: no tasting. Wash hands and bench after."
        />
      }
      controls={controls('New reading')}
      ear={ear()}
      slab={<Slab label="It’s in" then="then levain" onPress={press('slab')} />}
    />
  ),
  tiles: () => (
    <BenchFrame
      label="Bench"
      further="Read on"
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
      further="Read on"
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
  wait: () => (
    <>
      <RehearsalMark text="Rehearsal: fast clock, 60 times as fast" />
      <BenchFrame
        label="Bench"
        further="Read on"
        edge={edge(14)}
        times={
          <Countdown
            name="Bulk"
            label="to the next look"
            ends="at 12:32"
            deadline={hour(12, 32)}
            now={hour(11, 20)}
          >
            <Control label="It’s ready now" onPress={press('ready')} />
          </Countdown>
        }
        words={
          <Words headline="Leave the dough to rise" detail="Keep it covered.">
            <ReadyWindow
              earliest={hour(12, 55)}
              likely={hour(13, 25)}
              latest={hour(13, 50)}
              now={hour(11, 20)}
              hour={(at) => new Date(at).toISOString().slice(11, 16)}
              words={{
                now: 'now',
                earliest: 'earliest',
                likely: 'likely',
                latest: 'latest',
                alt: 'Ready between 12:55 and 13:50, likely about 13:25.',
              }}
            />
          </Words>
        }
        controls={controls('New reading')}
        ear={ear()}
        slab={<Slab label="Look now" then="and say what you see" onPress={press('slab')} />}
        over={<Caption text="Seventy-two minutes to the next look." seen />}
      />
    </>
  ),
  hot: () => (
    <BenchFrame
      label="Bench"
      further="Read on"
      tone="hot"
      edge={edge(24)}
      times={
        <Countdown
          name="Oven, load 1 of 3"
          label="to the lid"
          labelPast="past the lid"
          deadline={hour(11, 20)}
          now={hour(11, 20, 20)}
        />
      }
      words={
        <Words
          headline="Lift the lid, left pot"
          care="Away from you: steam. Dry mitts. Children, stand back."
          picture={<CallMark kind="hot" word="Hot: now" />}
        />
      }
      controls={controls('Not now, why?')}
      ear={ear()}
      slab={<Slab label="Lid is off" then="press when the pot is down" onPress={press('slab')} />}
    />
  ),
  weigh: () => (
    <BenchFrame
      label="Bench"
      further="Read on"
      edge={edge(7)}
      words={
        <Words
          headline="620 g water"
          detail="At 27 °C."
          picture={<CallMark kind="act" word="It’s time" />}
        >
          <Lines
            label="To weigh"
            lines={[
              { label: '780 g strong wheat flour', state: 'done' },
              { label: '620 g water', state: 'now' },
              { label: '180 g levain', state: 'next' },
            ]}
          />
        </Words>
      }
      controls={controls('How much longer?')}
      ear={ear()}
      slab={<Slab label="It’s in" then="then levain" onPress={press('slab')} />}
    />
  ),
  gate: () => (
    <BenchFrame
      label="Bench"
      further="Read on"
      edge={edge(23)}
      words={
        <Words
          headline="A grown-up does this"
          detail="Hot pot, hot steam."
          picture={<StandBack alt="Stand back" />}
        />
      }
      controls={
        <TwoTaps
          label="Without holding"
          first="First here"
          second="then here"
          onBoth={press('open')}
          between={<Control label="Take that back" onPress={press('back')} />}
        />
      }
      ear={ear()}
      slab={
        <HoldSlab
          label="Hold to open"
          holding="Keep holding"
          then="Lift the lid"
          onHeld={press('open')}
        />
      }
    />
  ),
  away: () => (
    <BenchFrame
      label="Bench"
      further="Read on"
      edge={edge(14)}
      times={
        <Countdown
          name="Bulk"
          label="to the next look"
          ends="at 12:32"
          deadline={hour(12, 32)}
          now={hour(11, 20)}
        >
          <Control label="It’s ready now" onPress={press('early')} />
        </Countdown>
      }
      words={<Words headline="Leave the dough to rise" />}
      controls={controls('New reading')}
      ear={ear()}
      slab={<Slab label="Look now" then="and say what you see" onPress={press('slab')} />}
      over={
        <ReturnCard
          title="While you were away"
          lines={['Fold 2 is 5 min over.', 'Fold 1 done at 10:20.', 'Next look at 12:32.']}
          close="I’ve read it"
          onClose={press('read')}
        />
      }
    />
  ),
};
