import type * as english from '../words/before.ts';
import type { InTongue } from '../tongue.ts';
import { WASH_AGAIN } from './care.ts';

export const beforeStart: InTongue<typeof english.beforeStart> = [
  {
    item: 'starter',
    ask: 'Wo ist das Anstellgut?',
    slab: { value: 'fridge', label: 'Im Kühl\u00adschrank' },
    tiles: [
      { value: 'counter', label: 'Es steht draußen' },
      { value: 'fedToday', label: 'Heute gefüttert' },
    ],
  },
  {
    item: 'flour',
    ask: 'Reicht das Mehl für alles?',
    detail: 'Auch zum Bestäuben.',
    slab: { value: 'enough', label: 'Genug' },
    tiles: [{ value: 'short', label: 'Zu wenig' }],
  },
  {
    item: 'filling',
    ask: 'Wie weit ist die Einlage?',
    detail: 'Nüsse geröstet und kühl, Früchte abgetropft und trocken.',
    slab: { value: 'toastedDry', label: 'Geröstet, trocken' },
    tiles: [
      { value: 'toPrepare', label: 'Noch zu tun' },
      { value: 'none', label: 'Keine Einlage' },
    ],
  },
  {
    item: 'pot',
    ask: 'Woraus ist der Topf?',
    detail: 'Kalter Teig kann heißen Ton, Glas oder Emaille springen lassen.',
    slab: { value: 'bareIron', label: 'Blankes Gusseisen' },
    tiles: [
      { value: 'metalKnob', label: 'Emaille, Metallknauf' },
      { value: 'plasticKnob', label: 'Plastik\u00adknauf' },
      { value: 'clayOrGlass', label: 'Ton oder Glas' },
      { value: 'noPot', label: 'Ohne Topf' },
    ],
  },
  {
    item: 'scale',
    ask: 'Was zeigt die leere Waage?',
    slab: { value: 'zeroed', label: 'Sie zeigt null' },
    tiles: [
      { value: 'notZero', label: 'Nicht null' },
      { value: 'noScale', label: 'Keine Waage' },
    ],
  },
  {
    item: 'hands',
    ask: 'Wie sind deine Hände?',
    detail: WASH_AGAIN,
    slab: { value: 'washed', label: 'Gewaschen' },
    tiles: [{ value: 'notYet', label: 'Noch nicht' }],
  },
  {
    item: 'fridge',
    ask: 'Ist Platz im Kühl\u00adschrank?',
    detail: 'Ein freies Fach, {fridgeHeat} oder kälter.',
    slab: { value: 'cleared', label: 'Fach ist frei' },
    tiles: [
      { value: 'full', label: 'Er ist voll' },
      { value: 'warm', label: 'Über {fridgeHeat}' },
    ],
  },
];
export const beforeOven: InTongue<typeof english.beforeOven> = [
  {
    item: 'child',
    ask: 'Wo sind die Kinder?',
    detail: 'Sie bleiben 1 m weg, mit einer eigenen Aufgabe.',
    slab: { value: 'away', label: 'Weit genug weg' },
    tiles: [
      { value: 'withGrownUp', label: 'Bei Erwachsenen' },
      { value: 'none', label: 'Keine hier' },
      { value: 'close', label: 'Zu nah' },
    ],
  },
  {
    item: 'floor',
    ask: 'Wie ist der Boden am Ofen?',
    slab: { value: 'clear', label: 'Frei und trocken' },
    tiles: [
      { value: 'cluttered', label: 'Da liegt etwas' },
      { value: 'wet', label: 'Nass' },
    ],
  },
  {
    item: 'mitts',
    ask: 'Wie sind die Ofenhandschuhe?',
    detail: 'Nasse Handschuhe lassen Hitze sofort durch.',
    slab: { value: 'dry', label: 'Beide trocken' },
    tiles: [
      { value: 'wet', label: 'Nass' },
      { value: 'missing', label: 'Nicht hier' },
    ],
  },
  {
    item: 'landing',
    ask: 'Wohin kommen die heißen Sachen?',
    detail: 'Topf und Deckel, Wasserschale oder Formen: zwei Plätze.',
    slab: { value: 'ready', label: 'Beide Plätze frei' },
    tiles: [{ value: 'notYet', label: 'Noch nicht' }],
  },
  {
    item: 'parchment',
    ask: 'Wie viel Hitze hält das Backpapier aus?',
    detail: 'Vieles hält nur {parchmentHeat} aus.',
    slab: { value: 'rated', label: 'Es hält das aus' },
    tiles: [
      { value: 'noParchment', label: 'Ohne Papier' },
      { value: 'unknown', label: 'Weiß ich nicht' },
    ],
  },
  {
    item: 'knob',
    ask: 'Woraus ist der Deckelknauf?',
    detail: 'Plastik? Schraub ihn vor dem Ofen ab.',
    slab: { value: 'metal', label: 'Metall' },
    tiles: [
      { value: 'plasticOff', label: 'Plastik, ist ab' },
      { value: 'plastic', label: 'Plastik, noch dran' },
      { value: 'noLid', label: 'Kein Deckel' },
    ],
  },
  {
    item: 'blade',
    ask: 'Wo ist die Klinge?',
    detail: 'Abgedeckt, und weg von Kinderhänden.',
    slab: { value: 'ready', label: 'Abgedeckt, zur Hand' },
    tiles: [{ value: 'notYet', label: 'Noch nicht' }],
  },
];
