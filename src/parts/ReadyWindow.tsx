import { createMemo, createSignal, For, onCleanup, onMount, Show, type JSX } from 'solid-js';
import { spread } from '../core/log/chart/spread.ts';
import './ReadyWindow.css';

export interface ReadyWindowProps {
  /** Instants, ms. No `likely` where nobody reckoned one (a spooned dough in the fridge). */
  readonly earliest: number;
  readonly likely: number | null;
  readonly latest: number;
  readonly now: number;
  /** 'HH:MM' of an instant. */
  readonly hour: (at: number) => string;
  readonly words: {
    readonly now: string;
    readonly earliest: string;
    readonly likely: string;
    readonly latest: string;
    /** The whole of it in a sentence, for ears. */
    readonly alt: string;
  };
}

interface Label {
  readonly kind: 'now' | 'earliest' | 'likely' | 'latest';
  readonly at: number;
}

/** A span with its doubt, never one minute: earliest, likely, latest, and where now stands. */
export function ReadyWindow(props: ReadyWindowProps): JSX.Element {
  const from = (): number => Math.min(props.now, props.earliest);
  const to = (): number => Math.max(props.now, props.latest);
  const share = (at: number): number => (at - from()) / Math.max(1, to() - from());
  const place = (at: number): string => `${100 * share(at)}%`;
  const labels = createMemo((): Label[] => {
    const all: Label[] = [
      { kind: 'now', at: props.now },
      { kind: 'earliest', at: props.earliest },
      ...(props.likely === null ? [] : [{ kind: 'likely', at: props.likely } as const]),
      { kind: 'latest', at: props.latest },
    ];
    // Of two that are told as one hour the likely one stands there, or the one end.
    const told = (label: Label): string => (label.kind === 'now' ? '' : props.hour(label.at));
    const first = ['now', 'likely', 'earliest', 'latest'] as const;
    const rank = ({ kind }: Label): number => first.indexOf(kind);
    return all
      .filter((one) => !all.some((two) => rank(two) < rank(one) && told(two) === told(one)))
      .sort((a, b) => a.at - b.at);
  });

  // Each hour stands under its mark, or as near as its neighbours let it; only the screen knows how near.
  const [box, setBox] = createSignal({ line: 0, widths: {} as Record<string, number> });
  // What is left out where the line is too short: first the words beside an hour, then the likely hour.
  const [spared, setSpared] = createSignal(0);
  const needs: number[] = [];
  let hours!: HTMLDListElement;
  const measure = (): void => {
    const found = [...hours.children] as HTMLElement[];
    const line = hours.clientWidth;
    const widths: Record<string, number> = Object.fromEntries(
      found.map((el) => [el.dataset['kind'] ?? '', el.offsetWidth]),
    );
    setBox({ line, widths });
    let level = spared();
    needs[level] = Object.values(widths).reduce((sum, width) => sum + width + gapOf(widths), 0);
    if (needs[level]! > line) level = Math.min(level + 1, 2);
    while (level > 0 && (needs[level - 1] ?? Infinity) <= line) level -= 1;
    setSpared(level);
  };
  // What is left out takes no room, but its two gaps: they are the smaller for it.
  const gapOf = (widths: Readonly<Record<string, number>>): number =>
    (widths['earliest'] ?? 0) / [4, 8, 28][spared()]!;
  const observer = typeof ResizeObserver === 'undefined' ? null : new ResizeObserver(measure);
  onMount(() => observer?.observe(hours));
  onCleanup(() => observer?.disconnect());
  const lefts = createMemo((): number[] => {
    const { line, widths } = box();
    return spread(
      labels().map((label) => share(label.at) * line),
      labels().map((label) => widths[label.kind] ?? 0),
      gapOf(widths),
      line,
    );
  });

  const isWordSeen = (kind: Label['kind']): boolean =>
    (kind === 'now' || kind === 'likely') && spared() === 0;
  const isHourSeen = (kind: Label['kind']): boolean =>
    kind !== 'now' && (kind !== 'likely' || spared() < 2);

  return (
    <figure class="window">
      <div class="window-line" role="img" aria-label={props.words.alt}>
        <i
          class="window-span"
          style={{
            '--from': place(props.earliest),
            '--to': `calc(100% - ${place(props.latest)})`,
          }}
        />
        <Show when={props.likely}>
          {(likely) => <i class="window-likely" style={{ '--at': place(likely()) }} />}
        </Show>
        <i class="window-now" style={{ '--at': place(props.now) }} />
      </div>
      <dl class="window-hours" ref={hours}>
        <For each={labels().map((label) => label.kind)}>
          {(kind, i) => (
            <div
              data-kind={kind}
              ref={(el) => observer?.observe(el)}
              style={{ '--left': `${lefts()[i()] ?? 0}px` }}
            >
              <dt class={isWordSeen(kind) ? undefined : 'unseen'}>{props.words[kind]}</dt>
              <dd class={isHourSeen(kind) ? undefined : 'unseen'}>
                {props.hour(props[kind] ?? 0)}
              </dd>
            </div>
          )}
        </For>
      </dl>
    </figure>
  );
}
