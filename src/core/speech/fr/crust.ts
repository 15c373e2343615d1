import type * as english from '../words/crust.ts';
import type { InTongue } from '../tongue.ts';

export const crustActs: InTongue<typeof english.crustActs> = {
  crustReady: { label: 'Le sortir', then: 'puis sur la grille' },
  crustNotYet: { label: '5 minutes de plus', then: 'puis regardez encore' },
  crustOnRack: { label: 'Hors de la cocotte', then: 'grille nue, 5 minutes' },
  crustOver: { label: 'Trop foncé : sortir', then: 'puis sur la grille' },
};

export const crustMore: InTongue<typeof english.crustMore> = {
  label: '{count} minutes de plus',
  then: 'puis sondez encore',
};

export const crust: InTongue<typeof english.crust> = {
  headline: 'Choisissez pour la croûte',
  because: {
    out: 'Doré et cuit : sortez-le.',
    dark: 'Assez foncé : sortez-le maintenant.',
    trayBelowNextTime:
      'Foncé dessous : sortez. La prochaine fois : plaque dessous, grille plus haut.',
    outOfPotOnRack: 'Foncé dessous, pas cuit. Sur la grille nue.',
    onRack: 'Foncé dessous, pas cuit. Cinq minutes de plus.',
  },
  stays: {
    pale: 'Encore pâle. Cinq minutes de plus.',
    tent: 'Foncé, mais cru dedans. Couvrez sans serrer.',
    raw: 'Cru dedans. Cinq minutes de plus.',
    early: 'Trop tôt. Cinq minutes de plus.',
    unsure: 'Les signes en disent trop peu. Cinq minutes de plus.',
  },
  low: 'Cœur à {got} sur {crumbHeat}. Environ {minutes} de plus.',
  more: {
    raw: 'Cru dedans. Environ {minutes} de plus.',
    pale: 'Encore pâle. Environ {minutes} de plus.',
  },
  asks: {
    askColour: 'Regardez aussi la couleur.',
    askBase: 'Toquez sur le dessous.',
    coreSecond: 'Sondez encore, loin de la garniture.',
    coreThird: 'Sondez à un troisième endroit.',
    coreFahrenheit: 'Sondez encore le milieu.',
    coreNotCrumb: 'Sondez encore le milieu.',
  },
};
