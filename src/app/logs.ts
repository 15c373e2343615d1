/** A rehearsal has a log of its own, so that nothing of it reaches the real one. */
export const LOGS = { earnest: 'loafward', rehearsal: 'loafward-rehearsal' } as const;
