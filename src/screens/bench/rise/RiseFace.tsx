import { createMemo, Show, type JSX } from 'solid-js';
import { bakeInput } from '../../../../machines/kitchen/pinned.ts';
import { stageOf } from '../../../../machines/kitchen/stage-of.ts';
import { waitInput } from '../../../../machines/kitchen/wait-input.ts';
import { riseCourse, type RiseCourse } from '../../../core/day/rise-course.ts';
import { controls } from '../../../core/speech/words/controls.ts';
import { rise } from '../../../core/speech/words/rise.ts';
import { fill } from '../../../core/speech/fill.ts';
import { MINUTE } from '../../../core/units.ts';
import { Control } from '../../../parts/Control.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import type { House } from '../../house.ts';
import { picturePage, type ReadingPage } from '../readings/page.ts';
import { RisePage } from './RisePage.tsx';
import type { Room } from './place-labels.ts';
import { riseView, type RiseView } from './rise-view.ts';
import { sayRise } from './say-rise.ts';

/** The rise of one bake against time: chart, table, the chart said, and the readings it lives on. */
export default function RiseFace(props: {
  readonly house: House;
  readonly bake: string;
  readonly onTurn: (page: ReadingPage | null) => void;
}): JSX.Element {
  const bake = () => props.house.kitchen().bakes[props.bake];
  // A minute is as fine as anybody reads it.
  const now = createMemo(() => Math.floor(props.house.now() / MINUTE) * MINUTE);
  const course = createMemo((): RiseCourse | null => {
    const kitchen = props.house.kitchen();
    const at = bake();
    const start = at && kitchen.starts[at.context.start];
    if (!at || !start) return null;
    return riseCourse(waitInput(kitchen, at, bakeInput(start).belief), now());
  });
  const marks = () => bake()?.context.marks ?? {};
  const inBowl = (): boolean => {
    const at = bake();
    return at !== undefined && stageOf(at).startsWith('bulk.');
  };
  const back = () => <Control label={controls.backToBench} onPress={() => props.onTurn(null)} />;
  return (
    <Show
      when={course()}
      fallback={
        <Sheet title={rise.title.dough}>
          <p>{rise.none}</p>
          {back()}
        </Sheet>
      }
    >
      {(of) => {
        const viewIn = (room?: Room): RiseView =>
          riseView(
            of(),
            (at) => props.house.hour(at),
            (at) => props.house.day(at),
            room,
          );
        const view = createMemo(() => viewIn());
        const alt = (): string =>
          fill(rise.alt[of().of], {
            percent: `${view().percent} %`,
            goal: `${Math.round(of().goal)} %`,
            count: of().seen.length,
          });
        return (
          <RisePage
            view={viewIn}
            alt={alt()}
            controls={
              <>
                {back()}
                <Control
                  label={rise.say}
                  onPress={() =>
                    props.house.say(
                      sayRise(of(), view().percent, marks(), (at) => props.house.hour(at)),
                    )
                  }
                />
                <Show when={inBowl()}>
                  <Control
                    label={rise.bowl}
                    onPress={() => props.onTurn(picturePage('rise.dough'))}
                  />
                  <Control
                    label={rise.jar}
                    onPress={() => props.onTurn({ ...picturePage('rise.dough'), jar: true })}
                  />
                </Show>
              </>
            }
          />
        );
      }}
    </Show>
  );
}
