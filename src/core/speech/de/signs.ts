import type * as english from '../words/signs.ts';
import type { InTongue } from '../tongue.ts';

const notSure = { value: 'notSure', label: 'Nicht sicher' };

export const levainSigns: InTongue<typeof english.levainSigns> = [
  {
    item: 'colour',
    ask: 'Welche Farbe hat er?',
    detail: 'Rosa, orange oder Schimmel: alles wegwerfen.',
    slab: { value: 'creamy', label: 'Cremig hell' },
    tiles: [{ value: 'pinkOrMould', label: 'Rosa oder Schimmel' }, notSure],
  },
  {
    item: 'rise',
    ask: 'Wie weit ist er gegangen?',
    slab: { value: 'doubled', label: 'Verdoppelt' },
    tiles: [
      { value: 'some', label: 'Um die Hälfte' },
      { value: 'little', label: 'Ein wenig' },
      notSure,
    ],
  },
  {
    item: 'top',
    ask: 'Wie sieht er oben aus?',
    slab: { value: 'domed', label: 'Gewölbt' },
    tiles: [
      { value: 'flat', label: 'Flach' },
      { value: 'dipped', label: 'Ein\u00adgesunken' },
      notSure,
    ],
  },
  {
    item: 'bubbles',
    ask: 'Wie viele Blasen sind da?',
    slab: { value: 'many', label: 'Viele' },
    tiles: [{ value: 'few', label: 'Wenige' }, { value: 'none', label: 'Keine' }, notSure],
  },
  {
    item: 'smell',
    ask: 'Wie riecht er?',
    slab: { value: 'fresh', label: 'Frisch, wie Joghurt' },
    tiles: [{ value: 'sharp', label: 'Scharf' }, { value: 'flour', label: 'Nach Mehl' }, notSure],
  },
];
export const bulkSigns: InTongue<typeof english.bulkSigns> = [
  {
    item: 'rise',
    ask: 'Wie weit ist er gegangen?',
    detail: 'Schau auf die Marke an Wanne oder Glas.',
    slab: { value: '100', label: 'Verdoppelt' },
    tiles: [
      { value: '75', label: 'Um drei Viertel' },
      { value: '50', label: 'Um die Hälfte' },
      { value: '25', label: 'Um ein Viertel' },
      { value: '0', label: 'Gar nicht' },
      notSure,
    ],
  },
  {
    item: 'edge',
    ask: 'Wie steht der Rand?',
    detail: 'Wo der Teig die Schüssel berührt.',
    slab: { value: 'domed', label: 'Gewölbt' },
    tiles: [
      { value: 'flat', label: 'Flach' },
      { value: 'fallen', label: 'Ein\u00adgefallen' },
      notSure,
    ],
  },
  {
    item: 'bubbles',
    ask: 'Wie viele Blasen an der Wand?',
    slab: { value: 'many', label: 'Viele' },
    tiles: [{ value: 'some', label: 'Einige' }, { value: 'none', label: 'Keine' }, notSure],
  },
  {
    item: 'wobble',
    ask: 'Was tut er, wenn du ihn anstupst?',
    slab: { value: 'jiggles', label: 'Er wackelt' },
    tiles: [
      { value: 'firm', label: 'Fest' },
      { value: 'strings', label: 'Läuft, zieht Fäden' },
      notSure,
    ],
  },
  {
    item: 'top',
    ask: 'Wie ist er oben?',
    slab: { value: 'smooth', label: 'Glatt' },
    tiles: [{ value: 'torn', label: 'Gerissen' }, { value: 'sticky', label: 'Klebrig' }, notSure],
  },
];
export const loafSigns: InTongue<typeof english.loafSigns> = [
  {
    item: 'grown',
    ask: 'Wie viel ist er gewachsen?',
    detail: 'Seit er in den Kühl\u00adschrank kam.',
    slab: { value: 'grown', label: 'Deutlich gewachsen' },
    tiles: [
      { value: 'little', label: 'Ein wenig' },
      { value: 'none', label: 'Gar nicht' },
      notSure,
    ],
  },
  {
    item: 'rim',
    ask: 'Wo steht er am Rand?',
    detail: 'Am Rand von Gärkorb oder Form.',
    slab: { value: 'level', label: 'Gleich hoch' },
    tiles: [{ value: 'below', label: 'Darunter' }, { value: 'above', label: 'Darüber' }, notSure],
  },
  {
    item: 'wobble',
    ask: 'Was tut er, wenn du ihn anstupst?',
    slab: { value: 'jiggles', label: 'Er wackelt' },
    tiles: [{ value: 'firm', label: 'Fest' }, notSure],
  },
  {
    item: 'skin',
    ask: 'Wie ist die Haut?',
    slab: { value: 'smooth', label: 'Glatt' },
    tiles: [{ value: 'dry', label: 'Trocken' }, { value: 'torn', label: 'Gerissen' }, notSure],
  },
  {
    item: 'dent',
    ask: 'Was macht die Delle?',
    detail: 'Bemehlter Finger, 1 cm tief. Kalter Teig: nur ein Hinweis.',
    slab: { value: 'slowly', label: 'Kommt langsam zurück' },
    tiles: [
      { value: 'springs', label: 'Springt zurück' },
      { value: 'stays', label: 'Bleibt' },
      notSure,
    ],
  },
];
export const pokeSigns: InTongue<typeof english.pokeSigns> = [
  {
    item: 'grown',
    ask: 'Wie viel ist er gewachsen?',
    slab: { value: 'grown', label: 'Deutlich gewachsen' },
    tiles: [{ value: 'little', label: 'Ein wenig' }, notSure],
  },
  {
    item: 'dent',
    ask: 'Was macht die Delle?',
    detail: 'Bemehlter Finger, 1 cm tief. Kalter Teig: nur ein Hinweis.',
    slab: { value: 'slowly', label: 'Kommt langsam zurück' },
    tiles: [
      { value: 'springs', label: 'Springt zurück' },
      { value: 'stays', label: 'Bleibt' },
      notSure,
    ],
  },
];
export const warmSigns: InTongue<typeof english.warmSigns> = [
  {
    item: 'dent',
    ask: 'Was macht die Delle?',
    detail: 'Bemehlter Finger, 1 cm tief.',
    slab: { value: 'slowly', label: 'Kommt langsam zurück' },
    tiles: [
      { value: 'springs', label: 'Springt zurück' },
      { value: 'stays', label: 'Bleibt' },
      notSure,
    ],
  },
  {
    item: 'grown',
    ask: 'Wie viel ist er gewachsen?',
    detail: 'Seit er draußen steht.',
    slab: { value: 'grown', label: 'Deutlich gewachsen' },
    tiles: [
      { value: 'little', label: 'Ein wenig' },
      { value: 'none', label: 'Gar nicht' },
      notSure,
    ],
  },
];
export const crustSigns: InTongue<typeof english.crustSigns> = [
  {
    item: 'colour',
    ask: 'Welche Farbe hat die Kruste?',
    detail: 'Goldbraun ist das Ziel, nicht schwarz.',
    slab: { value: 'golden', label: 'Goldbraun' },
    tiles: [{ value: 'pale', label: 'Blass' }, { value: 'dark', label: 'Dunkel' }, notSure],
  },
  {
    item: 'base',
    ask: 'Wie klingt der Boden?',
    detail: 'Trockene Handschuhe. Heb den Laib und klopf.',
    slab: { value: 'hollow', label: 'Hohl' },
    tiles: [{ value: 'dull', label: 'Dumpf' }, { value: 'dark', label: 'Dunkel' }, notSure],
  },
  {
    item: 'core',
    ask: 'Was zeigt das Thermo\u00admeter innen?',
    detail: 'Nicht in ein Stück Einlage stechen.',
    slab: { value: 'ready', label: '{crumbHeat} oder mehr' },
    tiles: [
      { value: 'low', label: 'Unter {crumbHeat}' },
      { value: 'notSure', label: 'Kein Fühler' },
    ],
  },
];
export const signsLines: InTongue<typeof english.signsLines> = {
  tinBase: 'Trockene Handschuhe. Stürz ihn aus der Form und klopf.',
};
