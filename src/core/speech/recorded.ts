/**
 * Which of the clips of one utterance are played as they were recorded here. A phrase is, by itself. Numbers
 * are joined of many clips: they are where each of them is recorded, for a number in two voices is misheard.
 */
export function recordedOf(
  clips: readonly string[],
  isRecorded: (id: string) => boolean,
  isNumber: (id: string) => boolean,
): ReadonlySet<string> {
  const numbers = clips.filter(isNumber);
  const isWhole = numbers.every(isRecorded);
  return new Set(clips.filter((id) => isRecorded(id) && (isWhole || !isNumber(id))));
}
