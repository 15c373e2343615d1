/** One clip in its file: where its bytes are, how long it speaks, s, and how fast, words a minute. */
export interface Clip {
  readonly file: string;
  readonly start: number;
  readonly bytes: number;
  readonly seconds: number;
  readonly wpm: number;
}

/** Every clip by what it says: `clipId`. */
export type ClipIndex = ReadonlyMap<string, Clip>;

const isCount = (value: unknown): value is number =>
  typeof value === 'number' && Number.isFinite(value) && value >= 0;

const isClip = (value: unknown): value is Clip => {
  if (typeof value !== 'object' || value === null) return false;
  const { file, start, bytes, seconds, wpm } = value as Record<string, unknown>;
  return (
    typeof file === 'string' && [start, bytes, seconds, wpm].every(isCount) && Number(bytes) > 0
  );
};

/** The index as it came over the wire; null where it is not one. */
export function readClipIndex(found: unknown): ClipIndex | null {
  if (typeof found !== 'object' || found === null || Array.isArray(found)) return null;
  const entries = Object.entries(found);
  return entries.length > 0 && entries.every(([, clip]) => isClip(clip))
    ? new Map(entries as [string, Clip][])
    : null;
}
