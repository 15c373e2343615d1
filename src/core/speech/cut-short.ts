/** So much of a cut text is left out at most for the sake of a whole word. */
const WORD = 0.4;

/**
 * A text of one line that is as long as its place lets it be: cut behind a whole word, where that leaves
 * most of it.
 *
 * @param most letters, the dots with them
 * @example cutShort('Less water next time', 13) // 'Less water…'
 * @example cutShort('Less', 13) // 'Less'
 */
export function cutShort(text: string, most: number): string {
  const line = text.trim().replace(/\s+/g, ' ');
  if ([...line].length <= most) return line;
  const room = [...line].slice(0, most - 1).join('');
  const at = line[room.length] === ' ' ? room.length : room.lastIndexOf(' ');
  const cut = at >= room.length * (1 - WORD) ? room.slice(0, at) : room;
  return `${cut.replace(/[\s,.;:–-]+$/, '')}…`;
}
