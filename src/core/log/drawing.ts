/** Told apart by shape, never by colour alone. */
export type MarkShape = 'dot' | 'ring' | 'square' | 'triangle' | 'cross' | 'diamond';

export type Spot = readonly [x: number, y: number];

/** One stroke of a drawing, in mm from its left and top. Later parts lie over earlier ones. */
export type DrawnPart =
  | {
      readonly kind: 'line';
      readonly at: readonly Spot[];
      readonly weight: 'hair' | 'plain' | 'bold';
      readonly dashed?: boolean;
    }
  /** Hatched: a closed shape. */
  | { readonly kind: 'area'; readonly at: readonly Spot[] }
  | { readonly kind: 'mark'; readonly shape: MarkShape; readonly at: Spot }
  | {
      readonly kind: 'text';
      readonly at: Spot;
      readonly text: string;
      readonly anchor: 'start' | 'middle' | 'end';
      /** On its own ground: over hatching and lines. */
      readonly onGround?: boolean;
    };

/** mm. */
export interface DrawingRoom {
  readonly width: number;
  readonly height: number;
  /** Cap height and a letter's mean width, as the text will be drawn. */
  readonly cap: number;
  readonly letter: number;
}

/** A picture made of a bake's numbers: drawn alike on the glass, on paper and in a file. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly parts: readonly DrawnPart[];
}

/** The same values in rows. */
export interface ChartTable {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface Chart {
  draw(room: DrawingRoom): Drawing;
  readonly table: ChartTable;
  /** The whole of it in a sentence or two: for ears, and to be said. */
  readonly says: string;
}
