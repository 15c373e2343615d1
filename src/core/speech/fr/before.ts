import type * as english from '../words/before.ts';
import type { InTongue } from '../tongue.ts';
import { WASH_AGAIN } from './care.ts';

export const beforeStart: InTongue<typeof english.beforeStart> = [
  {
    item: 'starter',
    ask: 'Où est le levain-chef ?',
    slab: { value: 'fridge', label: 'Au frigo' },
    tiles: [
      { value: 'counter', label: 'Hors du frigo' },
      { value: 'fedToday', label: 'Rafraîchi ce jour' },
    ],
  },
  {
    item: 'flour',
    ask: 'Y a-t-il assez de farine ?',
    detail: 'Celle pour fleurer aussi.',
    slab: { value: 'enough', label: 'Assez' },
    tiles: [{ value: 'short', label: 'Trop peu' }],
  },
  {
    item: 'filling',
    ask: 'Où en est la garniture ?',
    detail: 'Noix grillées et froides, fruits égouttés et secs.',
    slab: { value: 'toastedDry', label: 'Grillée, sèche' },
    tiles: [
      { value: 'toPrepare', label: 'À préparer' },
      { value: 'none', label: 'Pas de garniture' },
    ],
  },
  {
    item: 'pot',
    ask: 'En quoi est la cocotte ?',
    detail: 'La pâte froide peut fendre terre, verre ou émail chauds.',
    slab: { value: 'bareIron', label: 'Fonte nue' },
    tiles: [
      { value: 'metalKnob', label: 'Émail, bouton métal' },
      { value: 'plasticKnob', label: 'Bouton plastique' },
      { value: 'clayOrGlass', label: 'Terre ou verre' },
      { value: 'noPot', label: 'Sans cocotte' },
    ],
  },
  {
    item: 'scale',
    ask: 'Qu’affiche la balance à vide ?',
    slab: { value: 'zeroed', label: 'Elle affiche zéro' },
    tiles: [
      { value: 'notZero', label: 'Pas zéro' },
      { value: 'noScale', label: 'Pas de balance' },
    ],
  },
  {
    item: 'hands',
    ask: 'Comment sont vos mains ?',
    detail: WASH_AGAIN,
    slab: { value: 'washed', label: 'Lavées' },
    tiles: [{ value: 'notYet', label: 'Pas encore' }],
  },
  {
    item: 'fridge',
    ask: 'Y a-t-il de la place au frigo ?',
    detail: 'Une étagère libre, à {fridgeHeat} ou plus froid.',
    slab: { value: 'cleared', label: 'Étagère libre' },
    tiles: [
      { value: 'full', label: 'Il est plein' },
      { value: 'warm', label: 'Plus de {fridgeHeat}' },
    ],
  },
];

export const beforeOven: InTongue<typeof english.beforeOven> = [
  {
    item: 'child',
    ask: 'Où sont les enfants ?',
    detail: 'Ils restent à 1 m, avec une tâche à eux.',
    slab: { value: 'away', label: 'Hors de portée' },
    tiles: [
      { value: 'withGrownUp', label: 'Avec un adulte' },
      { value: 'none', label: 'Aucun ici' },
      { value: 'close', label: 'Trop près' },
    ],
  },
  {
    item: 'floor',
    ask: 'Comment est le sol devant le four ?',
    slab: { value: 'clear', label: 'Libre et sec' },
    tiles: [
      { value: 'cluttered', label: 'Encombré' },
      { value: 'wet', label: 'Mouillé' },
    ],
  },
  {
    item: 'mitts',
    ask: 'Comment sont les gants de four ?',
    detail: 'La chaleur traverse tout de suite un gant mouillé.',
    slab: { value: 'dry', label: 'Secs' },
    tiles: [
      { value: 'wet', label: 'Mouillés' },
      { value: 'missing', label: 'Pas ici' },
    ],
  },
  {
    item: 'landing',
    ask: 'Où iront les choses brûlantes ?',
    detail: 'Cocotte et couvercle, plaque d’eau ou moules : deux places.',
    slab: { value: 'ready', label: 'Deux places libres' },
    tiles: [{ value: 'notYet', label: 'Pas encore' }],
  },
  {
    item: 'parchment',
    ask: 'Quelle chaleur le papier supporte-t-il ?',
    detail: 'Souvent, le papier cuisson ne tient que {parchmentHeat}.',
    slab: { value: 'rated', label: 'Il la supporte' },
    tiles: [
      { value: 'noParchment', label: 'Sans papier' },
      { value: 'unknown', label: 'Je ne sais pas' },
    ],
  },
  {
    item: 'knob',
    ask: 'En quoi est le bouton du couvercle ?',
    detail: 'En plastique ? Ôtez-le avant le four.',
    slab: { value: 'metal', label: 'Métal' },
    tiles: [
      { value: 'plasticOff', label: 'Plastique, ôté' },
      { value: 'plastic', label: 'Plastique, en place' },
      { value: 'noLid', label: 'Sans couvercle' },
    ],
  },
  {
    item: 'blade',
    ask: 'Où est la lame ?',
    detail: 'Couverte, et hors de portée d’un enfant.',
    slab: { value: 'ready', label: 'Couverte, à portée' },
    tiles: [{ value: 'notYet', label: 'Pas encore' }],
  },
];
