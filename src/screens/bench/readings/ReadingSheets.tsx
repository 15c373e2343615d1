import { createMemo, lazy, Match, Suspense, Switch, type JSX } from 'solid-js';
import type { House } from '../../house.ts';
import KindsSheet from './KindsSheet.tsx';
import NewReadingSheet from './NewReadingSheet.tsx';
import PastSheet from './PastSheet.tsx';
import type { PicturePage, ReadingPage } from './page.ts';
import PicturesSheet from './PicturesSheet.tsx';

const AheadSheet = lazy(() => import('../AheadSheet.tsx'));
const FeedHour = lazy(() => import('../FeedHour.tsx'));
const RiseFace = lazy(() => import('../rise/RiseFace.tsx'));
const PotsFace = lazy(() => import('../pots/PotsFace.tsx'));
const WhyWater = lazy(() => import('../WhyWater.tsx'));
const SheetFace = lazy(() => import('../SheetFace.tsx'));

/**
 * The pages of the readings that lie over the bench; the keypad stands in its place on it. The
 * drawing of the sheet and the chart of the rise are laid over it the same way.
 */
export default function ReadingSheets(props: {
  readonly house: House;
  readonly bake: string;
  readonly stage: string;
  readonly page: ReadingPage;
  readonly act: string;
  readonly onTurn: (page: ReadingPage | null) => void;
}): JSX.Element {
  // Each fact makes the bench's view anew; what may be read here follows the stage alone.
  const stage = createMemo(() => props.stage);
  const pictures = (): PicturePage | null => (props.page.at === 'pictures' ? props.page : null);
  return (
    <Switch>
      <Match when={props.page.at === 'new'}>
        <NewReadingSheet
          house={props.house}
          bake={props.bake}
          stage={stage()}
          act={props.act}
          onTurn={(page) => props.onTurn(page)}
        />
      </Match>
      <Match when={props.page.at === 'kinds'}>
        <KindsSheet stage={stage()} onTurn={(page) => props.onTurn(page)} />
      </Match>
      <Match when={props.page.at === 'past'}>
        <PastSheet house={props.house} bake={props.bake} onTurn={(page) => props.onTurn(page)} />
      </Match>
      <Match when={props.page.at === 'sheet'}>
        <SheetFace house={props.house} bake={props.bake} onClose={() => props.onTurn(null)} />
      </Match>
      <Match when={props.page.at === 'feedHour'}>
        <FeedHour house={props.house} bake={props.bake} onTurn={(page) => props.onTurn(page)} />
      </Match>
      <Match when={props.page.at === 'why'}>
        <WhyWater house={props.house} bake={props.bake} onTurn={(page) => props.onTurn(page)} />
      </Match>
      <Match when={props.page.at === 'ahead'}>
        <AheadSheet house={props.house} bake={props.bake} onTurn={(page) => props.onTurn(page)} />
      </Match>
      <Match when={props.page.at === 'rise'}>
        {/* Its own boundary: while it loads the bench must not blink away. */}
        <Suspense>
          <RiseFace house={props.house} bake={props.bake} onTurn={(page) => props.onTurn(page)} />
        </Suspense>
      </Match>
      <Match when={props.page.at === 'pots'}>
        <Suspense>
          <PotsFace house={props.house} onTurn={(page) => props.onTurn(page)} />
        </Suspense>
      </Match>
      <Match when={pictures()}>
        {(page) => (
          <PicturesSheet
            house={props.house}
            bake={props.bake}
            page={page()}
            onTurn={(next) => props.onTurn(next)}
          />
        )}
      </Match>
    </Switch>
  );
}
