import { askRoom, breadRoom, dayRoom } from '../../../core/circle/day-room.ts';
import { tellBreadRoom, tellEarly, tellFull, tellRefusal } from '../../../core/speech/tell-room.ts';
import type { HouseCircle } from '../../house-circle.ts';
import type { House } from '../../house.ts';
import type { CapSays } from '../orders/cap-says.ts';
import { breadName } from '../orders/order-words.ts';
import { listedBreads, roomAskOf } from './room-ask.ts';

/** Breads named in the line of a day: those it has most of. */
const NAMED = 2;

/** What a day still takes, for the pages on which orders are taken. */
export function roomSays(house: House, circle: Pick<HouseCircle, 'circle'>): CapSays {
  const nameOf = (bread: string): string => breadName(house, bread);
  return {
    line(day) {
      const ask = roomAskOf(house, circle, day);
      const ordered = [...dayRoom(ask).taken].toSorted((a, b) => b.count - a.count);
      const breads = new Set(ordered.map(({ bread }) => bread));
      const some = breads.size > 0 ? [...breads] : listedBreads(house).map(({ id }) => id);
      const rooms = some.slice(0, NAMED).flatMap((bread) => {
        const room = breadRoom(ask, bread, null);
        return room === null || room.more === null ? [] : { name: nameOf(bread), room };
      });
      if (rooms.length === 0) return null;
      if (rooms.every(({ room }) => room.more === 0))
        return tellFull(rooms.map(({ room }) => room));
      return rooms.map(({ name, room }) => tellBreadRoom(name, room)).join(' ');
    },
    asks(order) {
      const answer = askRoom(roomAskOf(house, circle, order.day, order.id), order.lines);
      const { clock } = house.ways();
      const refusal = tellRefusal(answer, order.day, nameOf, clock);
      const early = tellEarly(answer, order.at, order.day, clock);
      return [...(refusal ? [refusal.join(' ')] : []), ...(early === null ? [] : [early])];
    },
  };
}
