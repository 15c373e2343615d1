/** A short list to choose a currency from, ISO 4217; all others come by another page. Judgement. */
export const SHORT_CURRENCIES = ['EUR', 'GBP', 'USD', 'CAD', 'AUD', 'CHF'] as const;
