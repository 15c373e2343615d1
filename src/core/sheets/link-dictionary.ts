/**
 * What most formulas say in the same words, handed to whatever deflates or inflates a link: so a link
 * is some third of its length. It belongs to version 1 of links and never changes: a letter of it
 * changed, and no link of that version can be read any more. Invented, like all formulas here.
 */
export const LINK_DICTIONARY = [
  '{"id":"olive-seed","version":1,"name":"olive and seed","flours":[{"id":"wheat","name":"s',
  'trong wheat flour","grain":"wheat","pct":80},{"id":"whole","name":"wholemeal wheat flour',
  '","grain":"wholeWheat","pct":10},{"id":"rye","name":"whole rye flour","grain":"rye","pct',
  '":10},{"id":"spelt","name":"spelt flour","grain":"spelt","pct":5},{"id":"barley","name":',
  '"barley flour","grain":"barley","pct":5}],"hydration":75,"secondWater":0.08,"levain":{"p',
  'ff":0.09,"hydration":1,"feed":{"seed":1,"flour":5,"water":5},"flours":[{"id":"wheat","pc',
  't":100}]},"salt":1.9,"fillings":[{"id":"seed","name":"sunflower, pumpkin and sesame seed',
  's","pct":12,"keeps":"perishable","allergens":["sesame"],"prepare":["soak","toast","drain',
  '","coat"],"group":"dried fruit","soak":{"water":100},"brings":{"salt":0,"water":0},"from',
  '":"fridge"},{"id":"cheese","name":"hard cheese","pct":15,"keeps":"hardCheese","allergens',
  '":["milk"],"prepare":["cut"],"from":"freezer"},{"id":"hazelnut","name":"toasted hazelnut',
  's","pct":10,"keeps":"shelf","allergens":["tree nuts (hazelnut)"],"prepare":["toast","cut',
  '"]},{"id":"cherry","name":"dried cherries","pct":16,"keeps":"shelf","allergens":[],"prep',
  'are":["cut"]}],"fillingsOf":"dough","convention":"bowl","doughCelsius":26,"piece":900,"p',
  'rocess":{"rest":30,"touches":[{"kind":"fold","after":30},{"kind":"laminate","after":30},',
  '{"kind":"fold","after":30}],"rise":90,"shaping":"scoop","benchRest":20,"counter":20,"ret',
  'ard":840,"warm":0,"fridge":4,"vessel":"stone","preheat":45,"lidded":18,"open":20,"recove',
  'ry":10,"cool":120}}"fillings":[],"piece":900,"process":{"rest":30,"touches":[{"kind":"fo',
  'ld","after":30},{"kind":"fold","after":30},{"kind":"fold","after":30}],"rise":75,"shapin',
  'g":"round","benchRest":20,"counter":0,"retard":0,"warm":160,"fridge":4,"vessel":"pot","p',
  'reheat":45,"lidded":18,"open":20,"recovery":10,"cool":120}}',
].join('');
