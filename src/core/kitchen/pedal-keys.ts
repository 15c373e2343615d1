/** What a pedal, a clicker or a key may be taught to do: the slab, the next answer, and four more. */
export const PEDAL_DOES = ['done', 'next', 'takeBack', 'sayAgain', 'longer', 'hush'] as const;
export type PedalDoes = (typeof PEDAL_DOES)[number];

/** By deed, the key that does it, by its name in UI Events (W3C): "PageDown", "b"; the bar is "Space". */
export type PedalKeys = Readonly<Partial<Record<PedalDoes, string>>>;

/** Held with others, never pressed for itself. */
const MODIFIERS = ['Shift', 'Control', 'Alt', 'AltGraph', 'Meta', 'CapsLock', 'Fn', 'NumLock'];
/** They go round the screen, or were not read by the browser at all. */
const KEPT = ['Tab', 'Unidentified', 'Dead', 'Process', ''];
/** They type a number. */
const TYPES = /^[\d.,]$|^(Backspace|Delete)$/;

/** One letter with or without its capital is one key. */
export const keyOf = (key: string): string => {
  if (key === ' ') return 'Space';
  return key.length === 1 ? key.toLowerCase() : key;
};

/** Whether a key may be taught: what types numbers or goes round the screen stays as it is. */
export const mayTeach = (key: string): boolean =>
  key.length <= 40 && ![...MODIFIERS, ...KEPT].includes(key) && !TYPES.test(key);

/** Teaches one deed its key, or null to forget it. One key does one thing: it leaves the other. */
export function teach(keys: PedalKeys, does: PedalDoes, key: string | null): PedalKeys {
  const named = key === null ? null : keyOf(key);
  const others = PEDAL_DOES.filter((other) => other !== does && keys[other] !== named);
  const kept = others.flatMap((other) => (keys[other] ? [[other, keys[other]] as const] : []));
  return Object.fromEntries([...kept, ...(named === null ? [] : [[does, named] as const])]);
}

/** What a pressed key was taught to do. */
export const doneBy = (keys: PedalKeys, key: string): PedalDoes | null =>
  PEDAL_DOES.find((does) => keys[does] === keyOf(key)) ?? null;

/** What the keys of headphones and speakers do where they are wanted, by their names in UI Events (W3C). */
export const MEDIA_DOES = {
  MediaPlayPause: 'done',
  MediaTrackNext: 'sayAgain',
  MediaTrackPrevious: 'hush',
} as const satisfies Readonly<Record<string, PedalDoes>>;

/** The same of a key that a browser did not keep for itself. */
export const mediaDoes = (key: string): PedalDoes | null =>
  Object.hasOwn(MEDIA_DOES, key) ? MEDIA_DOES[key as keyof typeof MEDIA_DOES] : null;

/** "Page down", "B", "Space": a key as it is written on the screen. */
export const keyName = (key: string): string => {
  if (key.length === 1) return key.toUpperCase();
  const words = key.replace(/(?<=[a-z])(?=[A-Z])/g, ' ');
  return words.charAt(0) + words.slice(1).toLowerCase();
};
