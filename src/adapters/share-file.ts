import type { Handed, SharedFile } from '../../machines/ports.ts';

/** What of the browser hands a file on. */
export type Hands = Pick<Navigator, 'canShare' | 'share'>;

/** How long the browser may take to begin a download before its file is let go, ms. */
const LET_GO = 60_000;

function download(file: File): void {
  const url = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), LET_GO);
}

/**
 * Hands a file on by the device's share sheet where there is one that takes it, else as a download. Call
 * it inside a tap, or the browser may refuse. A sheet that fails for another reason than the baker's
 * gives the download instead.
 */
export async function shareFile(
  { name, type, text }: SharedFile,
  hands: Partial<Hands> = navigator,
): Promise<Handed> {
  const file = new File([text], name, { type });
  const data = { files: [file] };
  if (hands.share && hands.canShare?.(data)) {
    try {
      await hands.share(data);
      return 'shared';
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return 'left';
    }
  }
  download(file);
  return 'saved';
}
