/**
 * Where labels go so that each is as near its place as it can be, none overlaps its neighbour and none
 * leaves the line. Places, widths, gap and line are one unit; places ascend; the answer is each label's
 * left edge. Labels that cannot fit at all still keep their order and run over the end.
 *
 * @example
 * spread([0, 50, 52], [20, 20, 20], 4, 100) // → [0, 29, 53]
 */
export function spread(
  places: readonly number[],
  widths: readonly number[],
  gap: number,
  line: number,
): number[] {
  // Labels that touch move as one block, whose best left edge is the mean of what its labels want.
  const blocks: { wants: number; count: number; width: number }[] = [];
  const leftOf = ({ wants, count, width }: (typeof blocks)[number]): number =>
    Math.max(0, Math.min(wants / count, line - width));
  places.forEach((place, i) => {
    const width = widths[i] ?? 0;
    let block = { wants: place - width / 2, count: 1, width };
    let before = blocks.at(-1);
    while (before && leftOf(before) + before.width + gap > leftOf(block)) {
      const shift = before.width + gap;
      block = {
        wants: before.wants + block.wants - shift * block.count,
        count: before.count + block.count,
        width: shift + block.width,
      };
      blocks.pop();
      before = blocks.at(-1);
    }
    blocks.push(block);
  });
  const lefts: number[] = [];
  for (const block of blocks) {
    let left = leftOf(block);
    for (let n = 0; n < block.count; n++) {
      left += n === 0 ? 0 : gap + (widths[lefts.length - 1] ?? 0);
      lefts.push(left);
    }
  }
  return lefts;
}
