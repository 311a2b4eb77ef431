export type Font = 'regular' | 'semibold' | 'italic';
export type Ink = 'ink' | 'soft' | 'accent' | 'rule' | 'wash';

/** How a line of text is set; sizes in points. */
export interface TextStyle {
  readonly font: Font;
  readonly size: number;
  /** From one baseline to the next. */
  readonly lead: number;
  readonly ink: Ink;
}

export interface TextMark {
  readonly is: 'text';
  readonly x: number;
  /** Of the baseline. */
  readonly y: number;
  readonly text: string;
  readonly style: TextStyle;
}

/** What is put on paper, in points from the upper left corner of the room that it stands in. */
export type Mark =
  | TextMark
  | {
      readonly is: 'line';
      readonly from: readonly [x: number, y: number];
      readonly to: readonly [x: number, y: number];
      readonly weight: number;
      readonly ink: Ink;
    }
  | {
      readonly is: 'box';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly ink: Ink;
    };

/** How wide a line of text is, points. */
export type Measure = (text: string, style: TextStyle) => number;

export function moved(mark: Mark, dx: number, dy: number): Mark {
  switch (mark.is) {
    case 'text':
    case 'box':
      return { ...mark, x: mark.x + dx, y: mark.y + dy };
    case 'line':
      return {
        ...mark,
        from: [mark.from[0] + dx, mark.from[1] + dy],
        to: [mark.to[0] + dx, mark.to[1] + dy],
      };
  }
}

export function text(x: number, y: number, words: string, style: TextStyle): TextMark {
  return { is: 'text', x, y, text: words, style };
}

export function line(x1: number, y1: number, x2: number, y2: number, weight: number, ink: Ink): Mark {
  return { is: 'line', from: [x1, y1], to: [x2, y2], weight, ink };
}
