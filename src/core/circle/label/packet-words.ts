/**
 * Words by which packets give an allergen away, of all tongues at once: a baker of one may have a packet
 * of another. They are looked for and never shown, so that they stand in no catalogue. Keys: the texts
 * that are kept (core/formula/allergen-texts.ts). All from memory.
 */

/** Tongues whose words are looked for, in the way each makes them. */
export type PacketTongue = 'en' | 'fr' | 'de';

/** A word, or one that is no word of it before or behind others. */
export type PacketWord =
  | string
  | {
      readonly word: string;
      /** Behind these it is another thing: patterns that end where it begins. */
      readonly notAfter?: string;
      /** Before these it is another thing: patterns that begin where it ends. */
      readonly notBefore?: string;
      /** German: only where a word begins. */
      readonly begins?: true;
      /** German: only as a word by itself. */
      readonly alone?: true;
    };

export type PacketWords = Readonly<Record<PacketTongue, readonly PacketWord[]>>;

const words = (
  en: readonly PacketWord[],
  fr: readonly PacketWord[],
  de: readonly PacketWord[],
): PacketWords => ({ en, fr, de });

const OTHER_NOIX =
  " (?:d[eu] |d[’'])(?:cajou|p[ée]can|br[ée]sil|macadamia|coco|muscade|saint|karit[ée]|kola)";
/** Before “milk”: then it comes of no cow. */
const PLANTS_EN = '(?:almond|cashew|coconut|oat|rice|soy|soya)[ -]';
const PLANTS_FR =
  " (?:d[e’'] ?|de )(?:coco|amande|noisette|cajou|avoine|riz|soja|[ée]peautre|chanvre)";
const PLANTS_DE = '(?:kokos|kokosnuss|mandel|cashew|hafer|reis|soja|haselnuss|dinkel|hanf)-?';

/** What names an allergen: where it stands it is set apart. */
export const NAMED: Readonly<Record<string, PacketWords>> = {
  // Without saying which grain, or which nut.
  gluten: words(['gluten'], ['gluten'], ['gluten']),
  'tree nuts': words(
    ['tree nut'],
    ['fruits à coque', 'fruit à coque'],
    ['schalenfrücht', 'schalenfrucht', 'schalenobst', { word: 'nüsse', begins: true }],
  ),
  wheat: words(
    ['wheat'],
    [{ word: 'blé', notBefore: ' (?:noir|sarrasin)' }, 'froment'],
    [{ word: 'weizen', notAfter: 'buch' }],
  ),
  rye: words(['rye'], ['seigle'], ['roggen']),
  barley: words(['barley'], ['orge'], ['gerste']),
  oats: words(['oats'], ['avoine'], ['hafer']),
  'spelt wheat': words(['spelt wheat'], ['blé épeautre', 'épeautre (blé)'], ['dinkelweizen']),
  hazelnut: words(['hazelnut'], ['noisette'], ['haselnuss', 'haselnüss']),
  walnut: words(['walnut'], [{ word: 'noix', notBefore: OTHER_NOIX }], ['walnuss', 'walnüss']),
  almond: words(['almond'], ['amande'], [{ word: 'mandel', notAfter: 'erd' }]),
  cashew: words(['cashew'], ['noix de cajou', 'cajou', 'anacarde'], ['cashew']),
  pecan: words(['pecan'], ['noix de pécan', 'pécan', 'pacane'], ['pekan', 'pecan']),
  pistachio: words(['pistachio'], ['pistache'], ['pistazie']),
  'brazil nut': words(['Brazil nut'], ['noix du Brésil'], ['paranuss', 'paranüss']),
  macadamia: words(['macadamia'], ['noix de macadamia', 'macadamia'], ['macadamia']),
  sesame: words(['sesame'], ['sésame'], ['sesam']),
  milk: words(
    [{ word: 'milk', notAfter: PLANTS_EN }],
    [{ word: 'lait', notBefore: PLANTS_FR }],
    [{ word: 'milch', notAfter: PLANTS_DE, notBefore: 'säure' }],
  ),
  egg: words(
    ['egg'],
    ['œuf'],
    [
      { word: 'ei', alone: true },
      ...['eier', 'eigelb', 'eiweiß', 'eipulver', 'eidotter', 'eiklar'].map((word) => ({
        word,
        begins: true as const,
      })),
      ...['vollei', 'hühnerei', 'freilandei', 'bodenhaltungsei', 'trockenei', 'wachtelei'],
    ],
  ),
  soya: words(['soya', 'soy', 'soybean'], ['soja'], ['soja']),
  peanuts: words(['peanuts'], ['arachide', 'cacahuète', 'cacahouète'], ['erdnuss', 'erdnüss']),
  sulphites: words(
    ['sulphites', 'sulfites', 'sulphur dioxide', 'sulfur dioxide'],
    ['sulfite', 'bisulfite', 'métabisulfite', 'anhydride sulfureux', 'dioxyde de soufre'],
    ['sulfit', 'schwefeldioxid'],
  ),
  mustard: words(['mustard'], ['moutarde'], ['senf']),
  celery: words(['celery'], ['céleri'], ['sellerie']),
  lupin: words(['lupin'], ['lupin'], ['lupin']),
  fish: words(['fish'], ['poisson'], [{ word: 'fisch', notAfter: 'tinten' }]),
  crustaceans: words(['crustaceans'], ['crustacé'], ['krebstier', 'krustentier']),
  molluscs: words(['molluscs'], ['mollusque'], ['weichtier']),
};

const NO_WHEAT_MEAL = '(?:mais|reis|hirse|dinkel|buchweizen|kichererbsen)-?';

/** What holds an allergen without naming it: its name has to stand beside it. */
export const HIDDEN: Readonly<Record<string, PacketWords>> = {
  wheat: words(
    ['semolina', 'durum'],
    [{ word: 'semoule', notBefore: ' de (?:maïs|riz)' }, 'boulgour'],
    [{ word: 'grieß', notAfter: NO_WHEAT_MEAL }],
  ),
  'spelt wheat': words(['spelt'], ['épeautre'], ['dinkel', 'grünkern']),
  oats: words(['oatmeal'], [], []),
  milk: words(
    ['whey', 'casein', 'caseinate', 'lactose'],
    ['lactosérum', 'caséine', 'caséinate', 'lactose'],
    ['molke', 'kasein', 'casein', 'laktose', 'lactose'],
  ),
  sesame: words(['tahini'], ['tahini', 'tahin', 'tahiné'], ['tahin']),
  fish: words(['anchovy', 'anchovie'], ['anchois'], ['sardelle', 'anchovis']),
  crustaceans: words(
    ['prawn', 'shrimp'],
    ['crevette', 'homard', 'langoustine'],
    ['garnele', 'krabbe', 'hummer'],
  ),
  molluscs: words(
    [],
    ['noix de saint-jacques', 'calamar', 'huître'],
    ['tintenfisch', 'miesmuschel', 'jakobsmuschel'],
  ),
};
