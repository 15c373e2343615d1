/** A lane's name begins so; no bake may be named like one. */
const LANE = 'lane.';

/** The lane of tins, of a stone, and of loads from before pots were told apart. */
export const ONE_LANE = 'lane.pot';

/** The lane of a loaf that went over and bakes flat, in a tray beside the pots. */
export const TRAY_LANE = 'lane.tray';

/**
 * The name of the lane that a pot is.
 *
 * @param pot the pot's own name
 * @example
 * laneOf('left') // → 'lane.left'
 */
export const laneOf = (pot: string): string => `${LANE}${pot}`;

/**
 * The pot that is a lane; null where `who` is none.
 *
 * @example
 * potOf('lane.left') // → 'left'
 */
export const potOf = (who: string): string | null =>
  who.startsWith(LANE) ? who.slice(LANE.length) : null;

/**
 * Whether a name is a lane's.
 *
 * @example
 * isLane('oven') // → false
 */
export const isLane = (who: string): boolean => who.startsWith(LANE);
