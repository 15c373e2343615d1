/** Places whose words are the same in English and in another tongue, and why. */
const SAME: readonly (readonly [RegExp, string])[] = [
  [/^allergens\.allergenNames\.(gluten|lupin)$/, 'the same word'],
  [/^share\.share\.(xlsxKind|csvKind|json|takeInKind)$/, 'names of file formats'],
  [/^sheets\.sheetWords\./, 'what a sheet is written with and read by'],
  [/^ways\.ways\.tongue\./, 'each tongue by its own name'],
  [/^(kitchen-fields\.kitchenFields\.units\.minutes|timers\.timer\.unit)$/, 'a sign of a unit'],
  [/^measures\.between\.minus$/, 'the same word'],
  [/^(circle\.neighbourWords\.name|label\.labelPage\.papers\.letter)$/, 'the same word'],
  [/^(live\.cameUp\.in(Ten|Length)|readings\.reading\.inPercent)$/, 'the same word'],
  [/^(log-sheet\.logSheet\.hand|steps\.stepChoices\.proof\.warm)$/, 'the same word'],
  [/[lL]evain(Now)?$/, 'the trade’s own word, in French first'],
  [
    /^(book\.book(More|Versions)|log-bake\.logBake|log-sheet\.logSheet)\.(versions|versionOf|version|old|title|line)$/,
    'the French word is version',
  ],
  [
    /^(book\.bookMore|keepsakes\.(keepsakes|spokenWords)|log-bake\.logBake\.first|log-plots\.logPlots|log-share\.logShare|names\.bakeNames)\.(notes?|photos|one|date|cool\.note)$/,
    'note, photo and date are French too',
  ],
  [
    /^(live\.printed\.hands|steps\.bookSteps\.ask|measures\.counted\.minute)/,
    'minute is French too',
  ],
  [/^(label\.listNames\.eu\.lupin|label\.labelPage\.lists\.canada)$/, 'the same word'],
  [/^care-page\.carePage\.parts\.\d+\.by$/, 'names of those who published it'],
  [
    /^letter-pad\.letter(Pad|Names)\.(letters|capital|plus|apostrophe)$/,
    'letters, or the same word',
  ],
  [
    /^small\.readings4\.lane\.answers\.(right|one|two|three)$/,
    'train, bus, tram and ferry are French too',
  ],
  [/^lessons\.lessons\.levain\.feed\.word\.name$/, 'the trade’s own word'],
  [/^ways\.ways\.theme\.name$/, 'page is French too'],
  [/^log-bake\.logBake\.keepsakes$/, 'album is French and German too'],
  [/^ear-kitchen\.earPhrases\.six$/, 'six is French too'],
];

export const isSame = (where: string): boolean => SAME.some(([place]) => place.test(where));
