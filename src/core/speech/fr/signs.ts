import type * as english from '../words/signs.ts';
import type { InTongue } from '../tongue.ts';

const notSure = { value: 'notSure', label: 'Pas sûr' };
const FINGER = 'Doigt fariné, enfoncé de 1 cm. Pâte froide : simple indice.';
const grown = { value: 'grown', label: 'Nettement' };
const slowly = { value: 'slowly', label: 'Il revient lentement' };
const springs = { value: 'springs', label: 'Il revient d’un coup' };
const stays = { value: 'stays', label: 'Il reste' };

export const levainSigns: InTongue<typeof english.levainSigns> = [
  {
    item: 'colour',
    ask: 'De quelle couleur est-il ?',
    detail: 'Rose, orange ou moisi : jetez tout.',
    slab: { value: 'creamy', label: 'Crème' },
    tiles: [{ value: 'pinkOrMould', label: 'Rose ou moisi' }, notSure],
  },
  {
    item: 'rise',
    ask: 'De combien a-t-il levé ?',
    slab: { value: 'doubled', label: 'Doublé' },
    tiles: [{ value: 'some', label: 'De moitié' }, { value: 'little', label: 'Un peu' }, notSure],
  },
  {
    item: 'top',
    ask: 'Quelle forme a le dessus ?',
    slab: { value: 'domed', label: 'Bombé' },
    tiles: [{ value: 'flat', label: 'Plat' }, { value: 'dipped', label: 'Creusé' }, notSure],
  },
  {
    item: 'bubbles',
    ask: 'Combien de bulles y a-t-il ?',
    slab: { value: 'many', label: 'Beaucoup' },
    tiles: [{ value: 'few', label: 'Peu' }, { value: 'none', label: 'Aucune' }, notSure],
  },
  {
    item: 'smell',
    ask: 'Que sent-il ?',
    slab: { value: 'fresh', label: 'Frais, le yaourt' },
    tiles: [{ value: 'sharp', label: 'Aigre' }, { value: 'flour', label: 'La farine' }, notSure],
  },
];

export const bulkSigns: InTongue<typeof english.bulkSigns> = [
  {
    item: 'rise',
    ask: 'De combien a-t-elle levé ?',
    detail: 'Regardez le repère du bac ou du bocal.',
    slab: { value: '100', label: 'Doublé' },
    tiles: [
      { value: '75', label: 'De trois quarts' },
      { value: '50', label: 'De moitié' },
      { value: '25', label: 'D’un quart' },
      { value: '0', label: 'Pas du tout' },
      notSure,
    ],
  },
  {
    item: 'edge',
    ask: 'Comment est le bord ?',
    detail: 'Là où la pâte touche le saladier.',
    slab: { value: 'domed', label: 'Bombé' },
    tiles: [{ value: 'flat', label: 'Plat' }, { value: 'fallen', label: 'Retombé' }, notSure],
  },
  {
    item: 'bubbles',
    ask: 'Combien de bulles à la paroi ?',
    slab: { value: 'many', label: 'Beaucoup' },
    tiles: [{ value: 'some', label: 'Un peu' }, { value: 'none', label: 'Aucune' }, notSure],
  },
  {
    item: 'wobble',
    ask: 'Comment bouge-t-elle, secouée ?',
    slab: { value: 'jiggles', label: 'Elle tremble' },
    tiles: [
      { value: 'firm', label: 'Ferme' },
      { value: 'strings', label: 'Coulante, filante' },
      notSure,
    ],
  },
  {
    item: 'top',
    ask: 'Comment est le dessus ?',
    slab: { value: 'smooth', label: 'Lisse' },
    tiles: [{ value: 'torn', label: 'Déchiré' }, { value: 'sticky', label: 'Collant' }, notSure],
  },
];

export const loafSigns: InTongue<typeof english.loafSigns> = [
  {
    item: 'grown',
    ask: 'De combien a-t-il poussé ?',
    detail: 'Depuis qu’il est au frigo.',
    slab: grown,
    tiles: [{ value: 'little', label: 'Un peu' }, { value: 'none', label: 'Pas du tout' }, notSure],
  },
  {
    item: 'rim',
    ask: 'Où est-il par rapport au bord ?',
    detail: 'Le bord de son banneton ou de son moule.',
    slab: { value: 'level', label: 'À ras' },
    tiles: [{ value: 'below', label: 'Dessous' }, { value: 'above', label: 'Dessus' }, notSure],
  },
  {
    item: 'wobble',
    ask: 'Comment bouge-t-il, secoué ?',
    slab: { value: 'jiggles', label: 'Il tremble' },
    tiles: [{ value: 'firm', label: 'Ferme' }, notSure],
  },
  {
    item: 'skin',
    ask: 'Comment est la peau ?',
    slab: { value: 'smooth', label: 'Lisse' },
    tiles: [{ value: 'dry', label: 'Sèche' }, { value: 'torn', label: 'Déchirée' }, notSure],
  },
  {
    item: 'dent',
    ask: 'Que fait le creux du doigt ?',
    detail: FINGER,
    slab: slowly,
    tiles: [springs, stays, notSure],
  },
];

export const pokeSigns: InTongue<typeof english.pokeSigns> = [
  {
    item: 'grown',
    ask: 'De combien a-t-il poussé ?',
    slab: grown,
    tiles: [{ value: 'little', label: 'Un peu' }, notSure],
  },
  {
    item: 'dent',
    ask: 'Que fait le creux du doigt ?',
    detail: FINGER,
    slab: slowly,
    tiles: [springs, stays, notSure],
  },
];

export const warmSigns: InTongue<typeof english.warmSigns> = [
  {
    item: 'dent',
    ask: 'Que fait le creux du doigt ?',
    detail: 'Doigt fariné, enfoncé de 1 cm.',
    slab: slowly,
    tiles: [springs, stays, notSure],
  },
  {
    item: 'grown',
    ask: 'De combien a-t-il poussé ?',
    detail: 'Depuis qu’il est dehors.',
    slab: grown,
    tiles: [{ value: 'little', label: 'Un peu' }, { value: 'none', label: 'Pas du tout' }, notSure],
  },
];

export const crustSigns: InTongue<typeof english.crustSigns> = [
  {
    item: 'colour',
    ask: 'De quelle couleur est la croûte ?',
    detail: 'Visez le doré, pas le noir.',
    slab: { value: 'golden', label: 'Dorée' },
    tiles: [{ value: 'pale', label: 'Pâle' }, { value: 'dark', label: 'Foncée' }, notSure],
  },
  {
    item: 'base',
    ask: 'Comment sonne le dessous ?',
    detail: 'Gants secs. Soulevez le pain et toquez.',
    slab: { value: 'hollow', label: 'Creux' },
    tiles: [{ value: 'dull', label: 'Sourd' }, { value: 'dark', label: 'Foncé' }, notSure],
  },
  {
    item: 'core',
    ask: 'Que montre la sonde au cœur ?',
    detail: 'Pas dans une poche de garniture.',
    slab: { value: 'ready', label: '{crumbHeat} ou plus' },
    tiles: [
      { value: 'low', label: 'Moins de {crumbHeat}' },
      { value: 'notSure', label: 'Pas de sonde' },
    ],
  },
];

export const signsLines: InTongue<typeof english.signsLines> = {
  tinBase: 'Gants secs. Démoulez-le et toquez.',
};
