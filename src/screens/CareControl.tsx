import { createSignal, For, Show, type JSX } from 'solid-js';
import { bench } from '../core/speech/words/bench.ts';
import { carePage } from '../core/speech/words/care-page.ts';
import { noPromise } from '../core/speech/words/kitchen.ts';
import { said as heard, shown } from '../core/speech/facts.ts';
import { fill } from '../core/speech/fill.ts';
import { Control } from '../parts/Control.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import type { House } from './house.ts';

/** Every caution in one place, behind one press. */
export function CareControl(props: { readonly house: House }): JSX.Element {
  const words = (line: string): string => fill(line, shown({}, props.house.ways()));
  const said = (line: string): string => fill(line, heard({}, props.house.ways()));
  const [open, setOpen] = createSignal(false);
  return (
    <>
      <Control label={bench.care} onPress={() => setOpen(true)} />
      <Show when={open()}>
        <Sheet title={carePage.title}>
          <Control label={bench.close} onPress={() => setOpen(false)} />
          <section>
            <h2 class="sheet-part">{noPromise.title}</h2>
            <p>{noPromise.text}</p>
          </section>
          <p>{carePage.defer}</p>
          <For each={carePage.parts}>
            {(part) => (
              <section>
                <h2 class="sheet-part">{part.title}</h2>
                <ul>
                  <For each={part.lines}>{(line) => <li>{words(line)}</li>}</For>
                </ul>
                <p>{fill(carePage.by, { by: part.by })}</p>
                <Control
                  label={carePage.say}
                  name={fill(carePage.sayPart, { title: part.title })}
                  does="sayAgain"
                  onPress={() => props.house.say(part.lines.map(said).join(' '))}
                />
              </section>
            )}
          </For>
        </Sheet>
      </Show>
    </>
  );
}
