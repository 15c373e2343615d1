import { inTongue } from '../tongue.ts';

/**
 * Every caution in one place. It defers to local rules and licensed advice, and it claims nothing
 * about food from the dough clock or from a core temperature.
 * Sources: US FDA, CDC, Health Canada (raw flour); NFPA, Safe Kids (heat and children); UK fire
 * services (burns); USDA home rule (2 h, 1 h above 32 °C); SFBI and trade usage for the rest.
 */
export const carePage = inTongue('care-page', 'carePage', {
  title: 'Take care',
  defer: 'Local rules and licensed advice come before anything said here.',
  say: 'Read aloud',
  sayPart: 'Read aloud: {title}',
  by: 'Source: {by}',
  parts: [
    {
      title: 'Raw flour and dough',
      by: 'US FDA, CDC; Health Canada',
      lines: [
        'They are raw food: no tasting, and no toy.',
        'Wash hands, bench and tools after. Under-fives stay off raw dough.',
      ],
    },
    {
      title: 'Hot iron and steam',
      by: 'NFPA; for burns UK fire services; for pot, knob and paper common practice',
      lines: [
        'Dry mitts, both hands. Lift the lid away from you, face back.',
        'Children stay 1 m away. A grown-up loads and unloads.',
        'Check what heat knob and parchment can take. Much parchment takes only {parchmentHeat}.',
        'Cold dough goes only into bare iron, or where the maker allows it.',
        'A burn? Cool running water for 20 minutes, and get help.',
      ],
    },
    {
      title: 'Children',
      by: 'NFPA, Safe Kids',
      lines: [
        'Oven, hot pot and blade are for grown-ups only.',
        'Give the child a task of its own meanwhile.',
        'No stove, appliance, sharp or hot thing under ten, and no oven before they are grown.',
      ],
    },
    {
      title: 'Fillings that spoil',
      by: 'USDA home rule; for hard cheese Bishop and Smukowski, 2006',
      lines: [
        'Fresh cheese, egg, meat, fish, rice, cooked or oiled vegetables spoil.',
        'None in a long rise, none in a fridge loaf.',
        'Cold at the final shape, in the oven within 2 hours. Above {warmRoom}: 1 hour.',
        'Baking does not undo it. Past the limit, throw it away.',
        'Once baked, chill within 2 hours and label it “keep refrigerated”.',
        'Garlic in oil never stands at room temperature.',
        'Keep the fridge at {fridgeHeat} or colder.',
        'A soaker that takes over 2 hours goes in the fridge.',
        'Sour dough does not keep a filling from spoiling.',
        'Hard, aged cheese may stand a while, no warmer than the kitchen.',
      ],
    },
    {
      title: 'Starter',
      by: 'common practice',
      lines: ['Pink, orange or mould: throw it away.', 'Never let it rise in a sealed jar.'],
    },
    {
      title: 'Allergens and sale',
      by: 'US, EU and Canadian lists; local authorities',
      lines: [
        'Wheat, rye, barley and spelt hold gluten. Sourdough is not gluten-free.',
        'Name every allergen on the label: nuts, sesame, milk, egg and more.',
        'Selling? Some places forbid cheese, meat or fresh herbs: check your local rules.',
      ],
    },
    {
      title: 'Crust',
      by: 'EU 2017/2158; McGee on stale bread',
      lines: [
        'Bake to golden, not black.',
        'Bag bread under {bagHeat}.',
        'Bread goes stale faster in the fridge. What spoils stays there all the same.',
      ],
    },
  ],
} as const);
