import { createSignal, For, lazy, Show, Suspense, type JSX } from 'solid-js';
import { bench } from '../core/speech/words/bench.ts';
import { ways as words } from '../core/speech/words/ways.ts';
import { heatSign } from '../core/speech/heats.ts';
import { weightSign } from '../core/speech/weights.ts';
import { Control } from '../parts/Control.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import type { House, Ways } from './house.ts';
import './WaysPage.css';

const BankCard = lazy(() => import('./BankCard.tsx'));
const TonguePage = lazy(() => import('./TonguePage.tsx'));

interface Choice {
  readonly label: string;
  readonly way: Partial<Ways>;
}
interface Group {
  readonly name: string;
  readonly choices: readonly Choice[];
}

const unit = { heat: 'C', weight: 'g' } as const;
const group = <K extends keyof Ways>(
  key: K,
  name: string,
  choices: readonly (readonly [Ways[K], string])[],
): Group => ({
  name,
  choices: choices.map(([value, label]) => ({ label, way: { [key]: value } })),
});

const groups = (): readonly Group[] => [
  group('heat', words.heat.name, [
    ['C', heatSign(unit)],
    ['F', heatSign({ ...unit, heat: 'F' })],
  ]),
  group('weight', words.weight.name, [
    ['g', weightSign(unit)],
    ['oz', weightSign({ ...unit, weight: 'oz' })],
  ]),
  group('clock', words.clock.name, [
    ['24', words.clock['24']],
    ['12', words.clock['12']],
  ]),
  group('theme', words.theme.name, [
    ['light', words.theme.light],
    ['dark', words.theme.dark],
  ]),
  group('text', words.text.name, [
    ['plain', words.text.plain],
    ['bigger', words.text.bigger],
  ]),
  group('hands', words.hands.name, [
    ['left', words.hands.left],
    ['right', words.hands.right],
  ]),
  group('night', words.night.name, [
    ['off', words.night.off],
    ['hours', words.night.hours],
    ['dim', words.night.dim],
  ]),
];

/** Every way of showing on one page: what stands now is filled and ticked. */
export default function WaysPage(props: {
  readonly house: House;
  readonly onClose: () => void;
}): JSX.Element {
  const [card, setCard] = createSignal(false);
  const [tongues, setTongues] = createSignal(false);
  const stands = ({ way }: Choice): boolean =>
    Object.entries(way).every(([key, value]) => props.house.ways()[key as keyof Ways] === value);
  return (
    <>
      <Sheet title={words.title}>
        <div class="ways">
          <For each={groups()}>
            {({ name, choices }) => (
              <div class="ways-group" role="group" aria-label={name}>
                <p class="ways-name">{name}</p>
                <div class="ways-choices">
                  <For each={choices}>
                    {(choice) => (
                      <Control
                        label={choice.label}
                        chosen={stands(choice)}
                        onPress={() => props.house.choose(choice.way)}
                      />
                    )}
                  </For>
                </div>
              </div>
            )}
          </For>
          <div class="ways-group ways-last">
            <div class="ways-choices">
              <Control label={words.tongue.name} onPress={() => setTongues(true)} />
              <Control label={words.card} onPress={() => setCard(true)} />
              <Control label={bench.close} onPress={() => props.onClose()} />
            </div>
          </div>
        </div>
      </Sheet>
      {/* Beside the sheet, not in it: what is shown of long words clips what stands among them. */}
      <Suspense>
        <Show when={card()}>
          <BankCard house={props.house} onClose={() => setCard(false)} />
        </Show>
        <Show when={tongues()}>
          <TonguePage house={props.house} onClose={() => setTongues(false)} />
        </Show>
      </Suspense>
    </>
  );
}
