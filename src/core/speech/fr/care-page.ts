import type * as english from '../words/care-page.ts';
import type { InTongue } from '../tongue.ts';

export const carePage: InTongue<typeof english.carePage> = {
  title: 'Prudence',
  defer:
    'Les règles locales et les conseils de professionnels passent avant tout ce qui est dit ici.',
  say: 'Lire à voix haute',
  sayPart: 'Lire à voix haute : {title}',
  by: 'Selon : {by}',
  parts: [
    {
      title: 'Farine et pâte crues',
      by: 'US FDA, CDC ; Santé Canada',
      lines: [
        'Ce sont des aliments crus : on n’y goûte pas, on n’y joue pas.',
        'Lavez ensuite mains, plan et outils. Pas de pâte crue pour les moins de cinq ans.',
      ],
    },
    {
      title: 'Fonte brûlante et vapeur',
      by: 'NFPA ; pour les brûlures, pompiers britanniques ; pour cocotte, bouton et papier, usage courant',
      lines: [
        'Gants secs, deux mains. Ôtez le couvercle loin de vous, visage en arrière.',
        'Les enfants restent à 1 m. Un adulte enfourne et défourne.',
        'Vérifiez la chaleur que tiennent bouton et papier. Souvent le papier cuisson ne tient que {parchmentHeat}.',
        'La pâte froide ne va que dans la fonte nue, ou si le fabricant le permet.',
        'Une brûlure ? Eau courante fraîche pendant 20 minutes, appelez à l’aide.',
      ],
    },
    {
      title: 'Enfants',
      by: 'NFPA, Safe Kids',
      lines: [
        'Four, cocotte brûlante et lame : adultes seulement.',
        'Donnez pendant ce temps à l’enfant une tâche à lui.',
        'Avant dix ans : ni cuisinière, ni appareil, ni objet coupant ou brûlant. Le four, adultes seulement.',
      ],
    },
    {
      title: 'Garnitures qui se gâtent',
      by: 'règle USDA à la maison ; pour le fromage dur, Bishop et Smukowski, 2006',
      lines: [
        'Fromage frais, œuf, viande, poisson, riz, légumes cuits ou à l’huile se gâtent.',
        'Jamais dans une longue pousse, jamais dans un pain mis au frigo.',
        'Froides au façonnage, au four dans les 2 heures. Au-dessus de {warmRoom} : 1 heure.',
        'La cuisson ne répare rien. Passé la limite, jetez.',
        'Une fois cuit, au frais dans les 2 heures, étiqueté « à garder au frigo ».',
        'L’ail à l’huile ne reste jamais à température ambiante.',
        'Gardez le frigo à {fridgeHeat} ou plus froid.',
        'Un trempage de plus de 2 heures se fait au frigo.',
        'Une pâte acide n’empêche pas une garniture de se gâter.',
        'Un fromage dur affiné peut attendre un peu, pas plus chaud que la cuisine.',
      ],
    },
    {
      title: 'Levain-chef',
      by: 'usage courant',
      lines: ['Rose, orange ou moisi : jetez-le.', 'Ne le laissez jamais lever en bocal fermé.'],
    },
    {
      title: 'Allergènes et vente',
      by: 'listes des États-Unis, de l’UE et du Canada ; autorités locales',
      lines: [
        'Blé, seigle, orge et épeautre contiennent du gluten. Le pain au levain n’est pas sans gluten.',
        'Nommez chaque allergène sur l’étiquette : fruits à coque, sésame, lait, œuf et autres.',
        'Vous vendez ? Certains lieux interdisent fromage, viande ou herbes fraîches : voyez les règles locales.',
      ],
    },
    {
      title: 'Croûte',
      by: 'UE 2017/2158 ; McGee sur le pain rassis',
      lines: [
        'Cuisez doré, pas noir.',
        'Mettez en sac sous {bagHeat}.',
        'Le pain rassit plus vite au frigo. Ce qui se gâte y reste quand même.',
      ],
    },
  ],
};
