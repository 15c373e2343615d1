/** What the learned engine weighs before it is here: its net, its ears and what runs them, bytes, as they are fetched. */
export const EAR_WEIGHT = 6_000_000;
