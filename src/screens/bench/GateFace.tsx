import { lazy, Show, Suspense, type JSX } from 'solid-js';
import { controls } from '../../core/speech/words/controls.ts';
import { childTasks, gate, gateHazards, type Gated } from '../../core/speech/words/gate.ts';
import { BakeMark } from '../../parts/BakeMark.tsx';
import { Control } from '../../parts/Control.tsx';
import { HoldSlab } from '../../parts/HoldSlab.tsx';
import { StandBack } from '../../parts/StandBack.tsx';
import { TwoTaps } from '../../parts/TwoTaps.tsx';
import { Words } from '../../parts/Words.tsx';
import { takeBackTarget } from '../../../machines/kitchen/take-back.ts';
import type { House } from '../house.ts';
import type { BenchView } from './view.ts';
import './GateFace.css';

const SmallGate = lazy(() => import('./small/SmallGate.tsx'));
const SmallControls = lazy(() =>
  import('./small/SmallPress.tsx').then((m) => ({ default: m.SmallControls })),
);

const agesIn = (house: House) => {
  const { small } = house.ways();
  return small === 'off' ? null : small;
};

interface GateWordsProps {
  readonly house: House;
  readonly view: BenchView;
  /** The bake's mark, where more than one runs. */
  readonly mark: number | undefined;
}

/** Before a hot, sharp or powered step: who does it, where the others stand, what they do meanwhile. */
export function GateWords(props: GateWordsProps): JSX.Element {
  return (
    <Show when={agesIn(props.house)} fallback={<BakerGate {...props} />}>
      {(ages) => (
        <Suspense>
          <SmallGate {...props} ages={ages()} />
        </Suspense>
      )}
    </Show>
  );
}

function BakerGate(props: GateWordsProps): JSX.Element {
  const hazard = (): Gated => props.view.hazard as Gated;
  const task = (): string => {
    const tasks = childTasks[hazard()];
    return tasks[props.view.stage.length % tasks.length] ?? '';
  };
  /** Where both hands are wanted, that sentence tells the children to stand back. */
  const both = (): boolean => ['lift', 'vent'].includes(props.view.stage);
  return (
    <Words
      headline={gate.grownUp}
      detail={`${gateHazards[hazard()]}. ${both() ? gate.bothHands : gate.ring}`}
      picture={
        <>
          <Show when={props.view.whose}>
            {(whose) => (
              <p class="act-place">
                <Show when={props.mark}>{(mark) => <BakeMark mark={mark()} />}</Show>
                <span>{whose()}</span>
              </p>
            )}
          </Show>
          <div class="gate-drawing">
            <StandBack alt={gate.standBack} />
          </div>
        </>
      }
    >
      <Show when={!both()}>
        <p class="act-detail gate-stand">{gate.standBack}</p>
      </Show>
      <div class="gate-task">
        <p>{task()}</p>
      </div>
    </Words>
  );
}

/** The gate itself is in the slab's place: it opens by a hold, never by a press or a voice. */
export function GateSlab(props: {
  readonly view: BenchView;
  readonly onOpen: () => void;
}): JSX.Element {
  return (
    <HoldSlab
      label={gate.hold}
      holding={gate.holding}
      then={props.view.headline}
      onHeld={() => props.onOpen()}
    />
  );
}

interface GateControlsProps {
  readonly house: House;
  readonly bake: string;
  readonly view: BenchView;
  readonly onOpen: () => void;
}

/**
 * Without holding: two taps far apart, with the way back between them. Not beside a child, who could make
 * them: whoever cannot hold turns to the baker's view first.
 */
export function GateControls(props: GateControlsProps): JSX.Element {
  return (
    <Show
      when={agesIn(props.house) === null}
      fallback={
        <Suspense>
          <SmallControls {...props} />
        </Suspense>
      }
    >
      <TwoTaps
        label={gate.twoTaps}
        first={gate.first}
        second={gate.second}
        onBoth={() => props.onOpen()}
        between={
          <Control
            label={controls.takeBack}
            does="takeBack"
            disabled={!props.house.holds || takeBackTarget(props.house.kitchen()) === null}
            onPress={() => void props.house.takeBack()}
          />
        }
      />
    </Show>
  );
}
