declare module 'fast-formula-parser' {
  interface Place {
    readonly row: number;
    readonly col: number;
  }
  export default class FormulaParser {
    constructor(ways: {
      onCell(place: Place): number;
      onRange(range: { readonly from: Place; readonly to: Place }): number[][];
    });
    parse(formula: string, at: Place & { readonly sheet: string }): unknown;
  }
}
