import type * as english from '../words/care-page.ts';
import type { InTongue } from '../tongue.ts';

export const carePage: InTongue<typeof english.carePage> = {
  title: 'Prudence',
  defer:
    'Les règles locales et les conseils de professionnels passent avant tout ce qui est dit ici.',
  parts: [
    {
      title: 'Farine et pâte crues',
      lines: [
        'Ce sont des aliments crus : on n’y goûte pas, on n’y joue pas.',
        'Lavez ensuite mains, plan et outils. Pas de pâte crue pour les moins de cinq ans.',
      ],
    },
    {
      title: 'Fonte brûlante et vapeur',
      lines: [
        'Gants secs, deux mains. Ôtez le couvercle loin de vous, visage en arrière.',
        'Les enfants restent à 1 m. Un adulte enfourne et défourne.',
        'Vérifiez la chaleur que tiennent bouton et papier. Souvent le papier cuisson ne tient que {parchmentHeat}.',
        'La pâte froide ne va que dans la fonte nue, ou si le fabricant le permet.',
        'Une brûlure ? Eau courante fraîche pendant 20 minutes, et de l’aide.',
      ],
    },
    {
      title: 'Enfants',
      lines: [
        'Four, cocotte brûlante et lame : adultes seulement.',
        'Donnez pendant ce temps à l’enfant une tâche à lui.',
      ],
    },
    {
      title: 'Garnitures qui se gâtent',
      lines: [
        'Fromage frais, œuf, viande, poisson, riz, légumes cuits ou à l’huile se gâtent.',
        'Jamais dans une longue pousse, jamais dans un pain mis au frigo.',
        'Froides au façonnage, au four dans les 2 heures. Au-dessus de {warmRoom} : 1 heure.',
        'La cuisson ne répare rien. Passé la limite, jetez.',
        'Une fois cuit, au frais dans les 2 heures, étiqueté « à garder au frigo ».',
        'L’ail à l’huile ne reste jamais à température ambiante.',
        'Gardez le frigo à {fridgeHeat} ou plus froid.',
      ],
    },
    {
      title: 'Levain-chef',
      lines: ['Rose, orange ou moisi : jetez-le.', 'Ne le laissez jamais lever en bocal fermé.'],
    },
    {
      title: 'Allergènes et vente',
      lines: [
        'Blé, seigle, orge et épeautre contiennent du gluten. Le pain au levain n’est pas sans gluten.',
        'Nommez chaque allergène sur l’étiquette : noix, sésame, lait, œuf et autres.',
        'Vous vendez ? Certains lieux interdisent fromage, viande ou herbes fraîches : voyez les règles locales.',
      ],
    },
    {
      title: 'Croûte',
      lines: ['Cuisez doré, pas noir.', 'Mettez en sac sous {bagHeat}.'],
    },
  ],
};
