/** How long the browser may take to begin the download before its file is let go, ms. */
const LET_GO = 60_000;

/**
 * Hands a saved file to the baker as a download: a copy to keep, or when the disk is full and the bake goes on
 * in memory. Call it inside a tap, or the browser may refuse the download.
 */
export function exportFile(text: string, name = 'loafward-log.jsonl'): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'application/jsonl' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), LET_GO);
}
