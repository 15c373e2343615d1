import { For } from 'solid-js';
import type { Component } from 'solid-js';
import type { LoafAnswers, LoafSign } from '../../../src/core/log/loaf-names.ts';
import type { LoafDay } from '../../../src/core/log/loaf-day.ts';
import { LOAF_MODEL, readLoaf } from '../../../src/core/log/read-loaf.ts';
import { remediesAt } from '../../../src/core/log/remedy-stages.ts';
import { cutLoaf } from '../../../src/core/speech/words/cut-loaf.ts';
import { tellLoaf } from '../../../src/core/speech/tell-loaf.ts';
import { tellRemedy } from '../../../src/core/speech/tell-remedy.ts';
import { RemedyWords } from '../../../src/parts/RemedyWords.tsx';
import { Sheet } from '../../../src/parts/Sheet.tsx';
import type { House } from '../../../src/screens/house.ts';
import { AskFace } from '../../../src/screens/log/cut/AskFace.tsx';
import { ResultFace } from '../../../src/screens/log/cut/ResultFace.tsx';

const nothing = (): void => {};
const WAYS = { heat: 'C', weight: 'g' } as const;
/** As far as these faces ask of it; `says` is its caption. */
const houseOf = (says: string): House =>
  ({
    caption: () => says,
    say: nothing,
    ways: () => WAYS,
    holds: true,
    date: () => '3 May 2031',
  }) as unknown as House;

const asks =
  (sign: LoafSign, chosen?: string): Component =>
  () => (
    <AskFace
      house={houseOf(cutLoaf[sign].ask)}
      sign={sign}
      filled
      chosen={chosen}
      onChoose={nothing}
      onBefore={chosen === undefined ? null : nothing}
      back="Cherry and hazelnut"
      onBack={nothing}
    />
  );

const tells =
  (answers: LoafAnswers, day: LoafDay, keptAt: number | null = null): Component =>
  () => {
    const { says, causes, change, because } = readLoaf(answers, day);
    const told = tellLoaf({ says, causes, change, because, model: LOAF_MODEL });
    return (
      <ResultFace
        house={houseOf(told.said)}
        told={told}
        answers={answers}
        height={0}
        keptAt={keptAt}
        refused={false}
        onKeep={nothing}
        onBefore={nothing}
        onAgain={nothing}
        back="Cherry and hazelnut"
        onBack={nothing}
      />
    );
  };

const OVER: LoafAnswers = { holes: 'underCrust', spread: 'spread', base: 'even' };

export const cutScenes: Record<string, Component> = {
  'cut-crumb': asks('crumb'),
  'cut-holes': asks('holes', 'underCrust'),
  'cut-base': asks('base', 'tight'),
  'cut-crust': asks('crust'),
  'cut-spread': asks('spread'),
  'cut-sour': asks('sour'),
  'cut-over': tells(OVER, {
    rise: { percent: 100, doubt: 10, wanted: 70 },
    q: 1.5,
    doughCelsius: 27.5,
    poke: { dent: 'stays', cold: false },
  }),
  'cut-kept': tells({ crumb: 'tight', spread: 'burst', base: 'tight' }, {}, 1),
  'cut-well': tells({ crumb: 'even', spread: 'tall', base: 'even' }, {}),
  'cut-unsure': tells({ crumb: 'unsure', spread: 'unsure', base: 'unsure' }, {}),
  'remedy-rows': () => (
    <Sheet title="What to do about it">
      <For each={remediesAt({ bake: 'oven.queued', oven: 'baking', lanes: ['open'] })[0]!}>
        {(row) => <RemedyWords told={tellRemedy(row, WAYS, 0)} named />}
      </For>
    </Sheet>
  ),
};
