import type { Minutes } from '../units.ts';
import type { Order, OrderLine } from './circle.ts';
import { dayRoom, type RoomAsk } from './day-room.ts';
import { ovenBatches, sameBatch } from './oven-batch.ts';
import { runsOf } from './oven-day.ts';

/**
 * Orders of a day that are fetched before all of their bread is cool (what is sliced: before it can be);
 * none where the oven's hours are not said. Each bread and size is reckoned once, however many have it.
 */
export function earlyOrders(ask: RoomAsk): readonly Order[] {
  const { taken, from, orders } = dayRoom(ask);
  if (from === null) return [];
  const runs = runsOf(taken);
  const known = new Map<string, Minutes>();
  const readyAfter = (line: OrderLine): Minutes => {
    const key = `${line.grams ?? ''} ${line.cut} ${line.bread}`;
    const had = known.get(key);
    if (had !== undefined) return had;
    const [own] = ovenBatches([line], ask.breads, ask.kitchen, ask.weighIns).batches;
    const run = own && runs.find(({ batch }) => sameBatch(batch, own));
    // Of what bakes nowhere there is no hour to be early for.
    const after = run ? run.out + (line.cut ? run.batch.slice : run.batch.cool) : 0;
    known.set(key, after);
    return after;
  };
  return orders.filter(
    ({ at, lines }) => at !== null && lines.some((line) => at < from + readyAfter(line)),
  );
}
