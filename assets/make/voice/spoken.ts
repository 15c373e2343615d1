/**
 * What of the catalogue is ever said, by the path it is found under, and the file its clips go into:
 * a bake's start does not wait for the oven's words. `tests/core/speech/clips.test.ts` walks bakes
 * and holds whatever they say against this.
 */
export const PACKS = [
  'start',
  'dough',
  'proof',
  'oven',
  'log',
  'lessons',
  'ages4to6',
  'ages7to9',
  'ages10to12',
  'numbers',
] as const;
export type Pack = (typeof PACKS)[number];

const START = [
  /^(read|levain|before|heed|feed|starter)\..*\.(spoken|care|ask)$/,
  /^heed\./,
  /^signs\.levainSigns\..*\.ask$/,
  /^verdicts\.(verdicts\.levain\.because\.|discardLevain\.spoken)/,
  /^feed\.feed\.spoken$/,
  /^starter\.starterWords\.(care|feedSaid|strongNotFed|strongFirst|strongUnclear|strongUnclearWhy)$/,
  /^starter\.starterWords\.(sures|strengths)\./,
  /^starter\.starterWords\.call\.subject$/,
  /^left\.left\..*\.spoken$/,
  /^left\.clockAsk\.(care|said)$/,
  /^kitchen-warnings\./,
  /^last-time\.(lastTimeLooked|lastTimeNoted|thisTime|lastTimeLines\.theSameWay)\b/,
  /^live\.today\.said\./,
  /^kitchen\.night\.(plug|phone)$/,
  /^trouble\.trouble\.(pressRefused|nothingToTakeBack)$/,
  // What a pedal comes to is said as it is chosen: every press of an act, below too.
  /^pedal\.pedal\.byHand$/,
  /^controls\.controls\./,
  /^(read|before)\..*\.label$/,
  /^(read|levain|feed|left)\..*\.slab$/,
  /^left\.clockAsk\.press$/,
  /^verdicts\.verdicts\.levain\.acts\..*\.label$/,
  /^signs\.levainSigns\..*\.label$/,
];

const DOUGH = [
  /^(mix|bulk|shape|weigh)\..*\.(spoken|care)$/,
  /^weigh\.weighLines\.weighRough$/,
  /^(mix|bulk|shape|weigh)\..*\.slab$/,
  /^verdicts\.verdicts\.bulk\.(despite$|acts\..*\.label$)/,
  /^tasks\.(tasks\..*\.done|taskPress\.leave)$/,
  /^bulk\.bulkLines\.fillingSlows$/,
  /^bowls\.(bowlClock\.later|bowlWeigh\.(spoken|more))$/,
  /^doubts\.doubtsLines\.warmPlace$/,
  /^signs\.bulkSigns\..*\.(ask|label)$/,
  /^verdicts\.(verdicts\.bulk\.because\.|verdictsLines\.readyForCold)/,
  /^tasks\.tasks\..*\.(headline|detail|care)$/,
  /^tasks\.tasksLines\.spoilsToo$/,
  /^water\.water\.(spoken|moved|ice|hot|warmer|cooler)$/,
  /^water\.water\.guess\./,
  /^water\.mixTaught\./,
  /^moved\./,
  /^readings\.readingNames\./,
  /^readings\.reading\.(odd|otherScale|impossible|taken|takenOdd|hot)$/,
  /^readings\.readingList\.corrected$/,
  /^readings\.readingPictures\.(edge|bubbles|growth|poke|crust)\.tiles\./,
  /^rise\.rise\.spoken\./,
  /^ear-bench\.earSays\./,
  /^small\.(small\.raw|handMark\.(shape|find))$/,
];

const PROOF = [
  /^proof\..*\.(spoken|care)$/,
  /^proof\..*\.slab$/,
  /^verdicts\.(verdicts\.(loaf|warm|poke)\.(despite$|acts\..*\.label$)|moreActs\..*\.label$)/,
  /^signs\.(loafSigns|pokeSigns|warmSigns|crustSigns)\..*\.(ask|label)$/,
  /^crust\.crust\.(because|stays|more|asks)\./,
  /^door\.doorBecause\./,
  /^verdicts\.(verdicts\.(loaf|warm|poke)\.because\.|verdictsLines\.(standOut(Because|For)|standOnFor))/,
  /^names\.(bakeNames|ovenNames|ovenNamesIn)\./,
];

const OVEN = [
  /^(oven|oven-many|oven-rack|oven-stone|oven-tin|oven-tray|cool)\..*\.(spoken|care)$/,
  /^(oven|oven-many|oven-rack|oven-stone|oven-tin|oven-tray|cool)\..*\.slab$/,
  /^(crust\.crustActs|door\.doorWords|note\.(notes|noNote))\b.*\.?label$/,
  /^gate\.gate\.(spoken|bothHands)$/,
  /^calls\.calls\.(look|act|hot|lid|then|both|also|alsoLook|reminder|snooze)$/,
  /^calls\.calls\.(snoozesLeft|putOff)\./,
  /^calls\.callSubjects\./,
  /^heads-up\./,
  /^tasks\.tasks\..*\.subject$/,
  /^timers\.timerWords\..*\.(name|subject|care)$/,
  /^timers\.timer\.(began|said)$/,
  /^several\.several\.(said|twinSaid|sentence|subject|moved)$/,
  /^names\.pots\./,
  /^pots-page\.potsPage\.(spoken|spokenLong|slow)$/,
  /^running\.countdown\..*\.ask$/,
  /^running\.runningLines\.nothingRuns$/,
];

/** A cut loaf, and what is done about a sign. */
const LOG = [
  /^cut-loaf\.cutLoaf\..*\.ask$/,
  /^cut-loaf\.cutLoafSays\.(well|done)$/,
  /^cut-loaf\.howSure\.(likely|mayBe)$/,
  /^cut-loaf\.cutPage\.also$/,
  /^cut-loaf\.loafChanges\./,
  /^causes\.causes\.(under|short|over|cutHot|notBaked|skin|benchFlour|ovenLow|ovenHot|wetFilling)$/,
  /^remedies\.remedies\..*\.care$/,
];

/** Lessons, and cautions read aloud on their page. */
const LESSONS = [
  /^lessons\.lessons\..*\.(title|why|name|means)$/,
  /^care-page\.carePage\.parts\..*\.lines\b/,
];

/** A child's words, by its age: one child hears one of these files. */
const ofAges = (ages: string): readonly RegExp[] => [
  new RegExp(`^small-${ages}-(dough|oven|tasks)\\..*\\.(say|task|praise)$`),
];

const SPOKEN: Readonly<Record<Exclude<Pack, 'numbers'>, readonly RegExp[]>> = {
  start: START,
  dough: DOUGH,
  proof: PROOF,
  oven: OVEN,
  log: LOG,
  lessons: LESSONS,
  ages4to6: ofAges('4-6'),
  ages7to9: ofAges('7-9'),
  ages10to12: ofAges('10-12'),
};

/** The file that holds the clips of a text; null where it is read and never said. */
export const packOf = (where: string): Pack | null =>
  (Object.entries(SPOKEN) as [Pack, readonly RegExp[]][]).find(([, patterns]) =>
    patterns.some((pattern) => pattern.test(where)),
  )?.[0] ?? null;
