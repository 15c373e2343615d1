import { createMemo, type JSX } from 'solid-js';
import { stageOf } from '../../../../machines/kitchen/stage-of.ts';
import { POKES } from '../../../core/ear/phrases.ts';
import type { Reading } from '../../../core/records/fact.ts';
import { riseByEye } from '../../../core/records/seen.ts';
import { controls } from '../../../core/speech/words/controls.ts';
import { careLines } from '../../../core/speech/words/care.ts';
import {
  reading as words,
  readingList,
  readingNames,
  readingPictures,
  riseInJar,
} from '../../../core/speech/words/readings.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import {
  BubblesPicture,
  CrustPicture,
  EdgePicture,
  GrowthPicture,
  PokePicture,
  RisePicture,
} from '../../../parts/ReadingPictures.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import { Tiles, type TileOption } from '../../../parts/Tiles.tsx';
import type { House } from '../../house.ts';
import type { PicturePage, ReadingPage } from './page.ts';
import { record } from './record.ts';
import './readings.css';

const { rise, edge, bubbles, growth, poke, crust } = readingPictures;

interface Asked {
  readonly ask: string;
  readonly detail: string;
  readonly options: readonly TileOption[];
  /** What an answer stands for: a whole reading, or the next page of it. */
  readonly take: (value: never) => Reading | PicturePage;
}

/** What a page asks: its tiles with their drawings, and what each of them means. */
const askedOn = (page: PicturePage): Asked => {
  const { slot } = page;
  if (slot === 'poke') {
    return {
      ...poke,
      options: poke.tiles.map((tile) => ({
        ...tile,
        picture: <PokePicture dent={tile.value} />,
        // What mends a reading is not taken back by one press.
        does: page.mends ? undefined : POKES.find((said) => said === tile.value),
      })),
      take: (dent: (typeof poke.tiles)[number]['value']) => ({ what: 'poke', dent }),
    };
  }
  if (slot === 'growth') {
    return {
      ...growth,
      options: growth.tiles.map((t) => ({ ...t, picture: <GrowthPicture grown={t.value} /> })),
      take: (grown: (typeof growth.tiles)[number]['value']) => ({ what: 'growth', grown }),
    };
  }
  if (slot === 'crust') {
    return {
      ...crust,
      options: crust.tiles.map((t) => ({ ...t, picture: <CrustPicture colour={t.value} /> })),
      take: (colour: (typeof crust.tiles)[number]['value']) => ({ what: 'crust', colour }),
    };
  }
  if (slot !== 'edge') {
    const of = slot === 'rise.dough' ? 'dough' : 'levain';
    return {
      ...rise,
      ...(page.jar ? { ask: riseInJar.ask, detail: riseInJar.detail } : {}),
      options: rise.tiles.map((t) => ({ ...t, picture: <RisePicture percent={+t.value} /> })),
      take: (percent: string) => riseByEye(Number(percent), of, page.jar),
    };
  }
  const stands = page.edge;
  if (stands === null) {
    return {
      ...edge,
      options: edge.tiles.map((t) => ({ ...t, picture: <EdgePicture edge={t.value} /> })),
      take: (value: (typeof edge.tiles)[number]['value']) => ({ ...page, edge: value }),
    };
  }
  return {
    ...bubbles,
    options: bubbles.tiles.map((t) => ({ ...t, picture: <BubblesPicture bubbles={t.value} /> })),
    take: (value: (typeof bubbles.tiles)[number]['value']) => ({
      what: 'edge',
      edge: stands,
      bubbles: value,
    }),
  };
};

/** The usual caution beside the pictures: heat at the oven, raw dough under a finger. */
const careOf = (house: House, { slot }: PicturePage): string | null => {
  if (slot === 'crust') return stageOf(house.kitchen().oven) === 'off' ? null : words.hot;
  return slot === 'poke' ? careLines.RAW_DOUGH : null;
};

/** A sign, answered by its picture. */
export default function PicturesSheet(props: {
  readonly house: House;
  readonly bake: string;
  readonly page: PicturePage;
  readonly onTurn: (page: ReadingPage | null) => void;
}): JSX.Element {
  const asked = createMemo(() => askedOn(props.page));
  const care = () => careOf(props.house, props.page);
  const detail = (): string =>
    props.page.mends
      ? fill(readingList.correctPictures, {
          name: readingNames[props.page.slot],
          time: props.page.mends.time,
          got: props.page.mends.says,
        })
      : asked().detail;
  const choose = (value: string): void => {
    const taken = asked().take(value as never);
    if ('at' in taken) props.onTurn(taken);
    else void record(props, taken).then(() => props.onTurn(null));
  };
  return (
    <Sheet title={asked().ask}>
      <p class="reading-detail">{detail()}</p>
      {care() && <p class="reading-care">{care()}</p>}
      <div class="reading-pictures">
        <Tiles label={asked().ask} options={asked().options} onChoose={choose} />
      </div>
      <div class="sheet-grid">
        <Control label={controls.backToBench} onPress={() => props.onTurn(null)} />
        <Control
          label={props.page.mends ? controls.readingsSoFar : words.back}
          onPress={() => props.onTurn({ at: props.page.mends ? 'past' : 'kinds' })}
        />
      </div>
    </Sheet>
  );
}
