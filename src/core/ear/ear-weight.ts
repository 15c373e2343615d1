/** What the learned engine weighs before it is here: its net, its ears and what runs them, bytes, packed as gzip. */
export const EAR_WEIGHT = 5_550_000;
