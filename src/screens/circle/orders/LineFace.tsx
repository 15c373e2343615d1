import { createSignal, Match, Switch, type JSX } from 'solid-js';
import { LINE } from '../../../core/circle/check-order.ts';
import type { OrderLine } from '../../../core/circle/circle.ts';
import { BREAD } from '../../../core/formula/piece-for-bread.ts';
import { orderFace, orderLine } from '../../../core/speech/words/orders.ts';
import { start } from '../../../core/speech/words/start.ts';
import { fill } from '../../../core/speech/fill.ts';
import { between } from '../../../core/speech/measures.ts';
import { keyedWeight } from '../../../core/speech/keyed.ts';
import { showWeight } from '../../../core/speech/weights.ts';
import { Control } from '../../../parts/Control.tsx';
import { Stepper } from '../../../parts/Stepper.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CirclePage } from '../CirclePage.tsx';
import type { FaceProps } from '../face.ts';
import { KeyFace } from './KeyFace.tsx';
import { breadName } from './order-words.ts';

/** One bread of an order: how many, whole or cut, how heavy; each press is a change by itself. */
export function LineFace(
  props: Pick<FaceProps, 'house' | 'onBack'> & {
    readonly line: OrderLine;
    readonly back: string;
    readonly onChange: (line: OrderLine) => void;
    /** Left out: it is the only one. */
    readonly onOff?: (() => void) | undefined;
  },
): JSX.Element {
  const [keys, setKeys] = createSignal<'count' | 'grams' | null>(null);
  const units = () => props.house.ways();
  const keyed = () => keyedWeight(BREAD, units());
  const name = (): string => breadName(props.house, props.line.bread);
  const set = (part: Partial<OrderLine>): void => {
    setKeys(null);
    props.onChange({ ...props.line, ...part });
  };
  const weight = (short: boolean): string => {
    const { grams } = props.line;
    if (grams !== null) return showWeight(grams, units());
    return short ? orderLine.asPiece : orderLine.asPieceLong;
  };
  return (
    <Switch
      fallback={
        <CirclePage
          back={props.back}
          onBack={() => props.onBack()}
          words={
            <Words headline={name()}>
              <div class="orders-row circle-top">
                <b>{orderLine.count}</b>
                <Stepper
                  label={orderLine.count}
                  value={props.line.count}
                  least={LINE.least}
                  most={LINE.most}
                  fewer={start.fewer}
                  more={start.more}
                  onChange={(count) => set({ count })}
                />
              </div>
              <div class="circle-grid">
                <Control
                  label={orderLine.cutAsk}
                  value={props.line.cut ? orderLine.cut : orderLine.whole}
                  onPress={() => set({ cut: !props.line.cut })}
                />
                <Control
                  label={orderLine.weight}
                  value={weight(true)}
                  onPress={() => setKeys('grams')}
                />
              </div>
            </Words>
          }
          controls={
            <>
              <Control label={orderLine.keyIn} onPress={() => setKeys('count')} />
              {props.onOff && <Control label={orderFace.off} onPress={() => props.onOff!()} />}
            </>
          }
        />
      }
    >
      <Match when={keys() === 'count'}>
        <KeyFace
          ask={orderLine.countAsk}
          unit=""
          least={LINE.least}
          most={LINE.most}
          range={fill(between.to, LINE)}
          now={String(props.line.count)}
          back={name()}
          onTake={(count) => set({ count })}
          onBack={() => setKeys(null)}
        />
      </Match>
      <Match when={keys() === 'grams'}>
        <KeyFace
          ask={orderLine.gramsAsk}
          unit={keyed().unit}
          least={keyed().least}
          most={keyed().most}
          range={keyed().range}
          now={weight(true)}
          back={name()}
          onTake={(typed) => set({ grams: keyed().record(typed) })}
          onBack={() => setKeys(null)}
          controls={<Control label={orderLine.asPieceLong} onPress={() => set({ grams: null })} />}
        />
      </Match>
    </Switch>
  );
}
