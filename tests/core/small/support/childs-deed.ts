/** Deeds of eyes, ears, voice and pen: nothing is in the hands but paper. */
const AWAY =
  'Stand Stay Sit Count Draw Sketch Watch Look See Listen Hear Say Tell Guess Write Read Smell Clap Wave Hum Sing Puff Colour Shade Choose Let Leave'.split(
    ' ',
  );
/** The same, once done. */
const WAS_AWAY =
  'stood stayed sat counted drew sketched watched looked listened heard said told guessed wrote read smelled clapped waved hummed sang puffed coloured shaded chose'.split(
    ' ',
  );
/** Deeds without a thing in hand, beside a step that is not dangerous. */
const EMPTY_HANDED =
  'Show Point Think Whisper Wiggle Find Plan Design Name Compare Check Note Trace'.split(' ');

const DANGER =
  /\b(oven|stove|knife|knives|blades?|razor|scissors|kettle|pots?|lids?|mitts?|trays?|steam|heat|hot|plug|mixer|toaster)\b/i;
const CLOSE =
  /\b(near\w*|clos\w+|beside|next|lean|reach|touch)\b|\b(by|in|into|inside|on|over|at|through) the (hot )?(oven|stove|pot|lid|kettle|rack|tray|steam|door|blade|knife)\b/i;

/** Raw, or what some may not touch; a word that may stand for it too. */
const OFF_LIMITS =
  /\b(dough|flour|starter|jars?|tubs?|bowls?|loaf|loaves|pieces?|balls?|nuts?|seeds?|cheese|filling|scraps?|tins?|baskets?|table|salt|water|egg|it)\b/i;

/** What a child is asked to do, one deed each: every one begins with its verb. */
export const deedsOf = (text: string): readonly string[] =>
  text
    .split(/[.?;,:]\s*|\s+and\s+|\s+then\s+/)
    .map((deed) => deed.replace(/^(and|then)\s+/i, '').trim())
    .filter((deed) => deed !== '');

const verbOf = (deed: string): string => {
  const [verb = ''] = deed.split(/\s/);
  return verb.charAt(0).toUpperCase() + verb.slice(1);
};

/** Deeds with a thing in hand. */
export const handsOn = (text: string): readonly string[] =>
  deedsOf(text).filter((deed) => ![...AWAY, ...EMPTY_HANDED].includes(verbOf(deed)));

/** Deeds that are nothing for a child beside what is hot, sharp or powered. */
export const tooClose = (text: string): readonly string[] =>
  deedsOf(text).filter((deed) => !AWAY.includes(verbOf(deed)) || CLOSE.test(deed));

/** Deeds that lay hands on what is hot, sharp or powered, wherever they stand. */
export const dangerous = (text: string): readonly string[] =>
  handsOn(text).filter((deed) => DANGER.test(deed));

/** Deeds that lay hands on what is raw, or what some may not touch. */
export const offLimits = (text: string): readonly string[] =>
  handsOn(text).filter((deed) => OFF_LIMITS.test(deed));

/** Whether what was done was done from far away. */
export const wasAway = (praise: string): boolean =>
  /^You (\w+) ?/.test(praise) &&
  deedsOf(praise.replace(/^You /, ''))
    .map((deed) => deed.split(/\s/)[0] ?? '')
    .every((verb) => WAS_AWAY.includes(verb));

/** Whether it says where the child is meanwhile. */
export const saysWhere = (task: string): boolean =>
  /\bstand back\b|\bsit far\b|\baway\b/i.test(task);
