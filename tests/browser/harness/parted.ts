import type { Page } from 'playwright-core';

/** A longer one may have no room in a press; what a baker typed is broken anywhere then. */
const LONGEST = 22;

/** Words in what may be pressed that go on in the next line without a hyphen. */
export function parted(page: Page): Promise<readonly string[]> {
  return page.evaluate((longest) => {
    const found: string[] = [];
    for (const el of document.querySelectorAll<HTMLElement>('.pressable')) {
      if (!el.checkVisibility()) continue;
      const texts = document.createTreeWalker(el, NodeFilter.SHOW_TEXT);
      for (let node = texts.nextNode(); node; node = texts.nextNode())
        for (const { 0: word, index } of (node.textContent ?? '').matchAll(/\p{L}+/gu)) {
          if (word.length > longest) continue;
          const range = document.createRange();
          // The hyphen that is drawn at a line's end counts as the next word's.
          range.setStart(node, node.textContent![index - 1] === '\u00AD' ? index + 1 : index);
          range.setEnd(node, index + word.length);
          const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
          if (lines.size > 1) found.push(word);
        }
    }
    return found;
  }, LONGEST);
}
