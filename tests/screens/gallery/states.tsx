import type { JSX } from 'solid-js';
import { CallMark } from '../../../src/parts/CallMark.tsx';
import { Caption } from '../../../src/parts/Caption.tsx';
import { Control } from '../../../src/parts/Control.tsx';
import { EarPanel } from '../../../src/parts/EarPanel.tsx';
import { HoldSlab } from '../../../src/parts/HoldSlab.tsx';
import { Lines } from '../../../src/parts/Lines.tsx';
import { Notice } from '../../../src/parts/Notice.tsx';
import { Slab } from '../../../src/parts/Slab.tsx';
import { Stepper } from '../../../src/parts/Stepper.tsx';
import { Tiles } from '../../../src/parts/Tiles.tsx';
import './states.css';

const nothing = (): void => {};

const State = (props: { readonly name: string; readonly children: JSX.Element }): JSX.Element => (
  <figure class="state">
    <div data-state-of={props.name}>{props.children}</div>
    <figcaption>{props.name}</figcaption>
  </figure>
);

/** Each part by itself in each of its states, hot ones on their own ground. */
export const States = (): JSX.Element => (
  <main class="bench states" aria-label="All states">
    <State name="slab">
      <Slab label="That’s done" then="then divide" onPress={nothing} />
    </State>
    <State name="slab-disabled">
      <Slab label="That’s done" then="then divide" disabled onPress={nothing} />
    </State>
    <State name="slab-gate">
      <HoldSlab label="Hold to open" holding="Keep holding" then="Lift the lid" onHeld={nothing} />
    </State>
    <div data-tone="hot" class="states-hot">
      <State name="slab-hot">
        <Slab label="Lid is off" then="then 25 min" onPress={nothing} />
      </State>
    </div>
    <State name="control">
      <Control label="New reading" onPress={nothing} />
    </State>
    <State name="control-chosen">
      <Control label="New reading" chosen onPress={nothing} />
    </State>
    <State name="control-disabled">
      <Control label="New reading" disabled onPress={nothing} />
    </State>
    <State name="control-value">
      <Control label="How warm is it?" value="22 °C" onPress={nothing} />
    </State>
    <State name="call-look">
      <CallMark kind="look" word="Come and look" />
    </State>
    <State name="call-act">
      <CallMark kind="act" word="It’s time" />
    </State>
    <State name="call-hot">
      <CallMark kind="hot" word="Hot: now" />
    </State>
    <State name="tiles">
      <Tiles
        label="Rise"
        chosen="b"
        options={[
          { value: 'a', label: 'A little' },
          { value: 'b', label: 'A half' },
        ]}
        onChoose={nothing}
      />
    </State>
    <State name="lines">
      <Lines
        label="To weigh"
        lines={[
          { label: '780 g strong wheat flour', state: 'done' },
          { label: '620 g water', state: 'now' },
          { label: '180 g levain', state: 'next' },
        ]}
      />
    </State>
    <State name="stepper">
      <Stepper
        label="Loaves"
        value={1}
        least={1}
        most={8}
        fewer="One fewer"
        more="One more"
        onChange={nothing}
      />
    </State>
    <State name="ear">
      <EarPanel sound="Sound is on" lit="" />
    </State>
    <State name="ear-locked">
      <EarPanel sound="Tap to arm sound" lit="Screen may go dark" onArm={nothing} />
    </State>
    <State name="ear-put-off">
      <EarPanel
        sound="Sound is on"
        lit=""
        putOff={{ label: 'In 2 minutes', left: '2 left', onPress: nothing }}
      />
    </State>
    <State name="notice">
      <Notice
        text="The disk is full. Save a copy now."
        action={{ label: 'Save a copy', press: nothing }}
      />
    </State>
    <State name="caption">
      <Caption text="Seventy-two minutes to the next look." seen />
    </State>
  </main>
);
