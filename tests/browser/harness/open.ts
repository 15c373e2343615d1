/** What a test file has open: closed in reverse order when the file is over. */
const open: (() => Promise<void>)[] = [];

/** Has `close` called at the end of the file at the latest. */
export function closeLater(close: () => Promise<void>): void {
  open.push(close);
}

export async function closeAll(): Promise<void> {
  for (const close of open.splice(0).reverse()) await close();
}
