import { localeOf } from './measures.ts';

const MEGABYTE = 1_000_000;

/** What comes over the network, as the tongue writes it: '6.1 MB'. */
export const showMegabytes = (bytes: number): string =>
  new Intl.NumberFormat(localeOf(), {
    style: 'unit',
    unit: 'megabyte',
    maximumFractionDigits: 1,
  })
    .format(bytes / MEGABYTE)
    .replace(/\s/g, '\u00a0');
