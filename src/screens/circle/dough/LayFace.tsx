import { Show, type JSX } from 'solid-js';
import { doughPage, layAsk } from '../../../core/speech/words/circle-dough.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showPart } from '../../../core/speech/show-part.ts';
import { Control } from '../../../parts/Control.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { CirclePage } from '../CirclePage.tsx';
import { batchName } from './dough-day.ts';
import type { LayNote } from './lay-day.ts';

interface Told {
  readonly headline: string;
  readonly detail: string;
  readonly yes: string;
}

/** One thing that is to be known before a day is laid; any answer but back goes on. */
export function LayFace(props: {
  readonly house: House;
  readonly note: LayNote;
  readonly onGo: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const isRules = (): boolean => props.note.kind === 'rules';
  const told = (): Told => {
    const { note } = props;
    if (note.kind === 'many') {
      const name = note.left.map((batch) => batchName(batch, props.house.ways())).join(' · ');
      return {
        headline: fill(layAsk.many, { most: note.most }),
        detail: fill(layAsk.manyDetail, { name }),
        yes: layAsk.manyYes,
      };
    }
    if (note.kind === 'stands') {
      return { headline: layAsk.stands, detail: layAsk.standsDetail, yes: layAsk.standsYes };
    }
    const { filling } = note;
    return {
      headline: layAsk.rules,
      detail: fill(layAsk.rulesDetail, { filling: showPart(filling) }),
      yes: layAsk.rulesYes,
    };
  };
  return (
    <CirclePage
      back={doughPage.title}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={told().headline}
          detail={told().detail}
          care={isRules() ? layAsk.rulesCare : undefined}
        />
      }
      slab={<Slab label={told().yes} fresh={told().detail} onPress={() => props.onGo()} />}
      controls={
        <>
          <Show when={isRules()}>
            <Control label={layAsk.notYet} fresh={told().detail} onPress={() => props.onGo()} />
          </Show>
          <Control label={doughPage.title} fresh={told().detail} onPress={() => props.onBack()} />
        </>
      }
    />
  );
}
