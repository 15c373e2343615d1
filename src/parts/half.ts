/** Where a number is kept while it is half typed. `keep('')`: it was taken, or cleared. */
export interface Half {
  read(): string;
  keep(text: string): void;
}
