import { Lexer, Name, Word, type PdfDictionary, type PdfValue } from "./Lexer";
import { PdfFile } from "./PdfFile";
import { pdfFont, type PdfFont } from "./PdfFont";

/** A rectangle in points from the upper left corner of the page. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A piece of text as it was drawn, down to its base line; below that stand the tails of letters. */
export interface PrintedText extends Box {
  readonly text: string;
  /** Points. */
  readonly size: number;
  /** Red, green and blue from 0 to 1. */
  readonly colour: readonly number[];
  /** What of the page may show it. */
  readonly shown: Box;
  readonly isUpright: boolean;
}

export interface Painted extends Box {
  readonly colour: readonly number[];
}

export interface PrintedPage {
  /** Points. */
  readonly width: number;
  readonly height: number;
  readonly texts: readonly PrintedText[];
  /** Straight lines drawn with a pen, and areas filled, as the rectangles around them. */
  readonly lines: readonly Painted[];
  readonly fills: readonly Painted[];
}

type Matrix = readonly [number, number, number, number, number, number];
const SAME: Matrix = [1, 0, 0, 1, 0, 0];
/** First the one, then the other (ISO 32000-1, 8.3.4). */
const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j, e * g + f * i + k, e * h + f * j + l]; // prettier-ignore

interface State {
  readonly matrix: Matrix;
  readonly clip: Box;
  readonly fill: readonly number[];
  readonly stroke: readonly number[];
  readonly font: PdfFont | undefined;
  readonly size: number;
  readonly spacing: number;
  readonly wordSpacing: number;
  readonly rise: number;
  readonly stretch: number;
}

/** The pages of a PDF with where each text, line and filled area stands. */
export function readPdf(bytes: Buffer): PrintedPage[] {
  const file = new PdfFile(bytes);
  return file.pages().map((page) => {
    const [left = 0, bottom = 0, right = 0, top = 0] = file.numbers(page.get("MediaBox"));
    const [width, height] = [right - left, top - bottom];
    const drawn = new Drawn(file, height);
    const resources = file.dictionary(page.get("Resources"));
    const whole = { left: 0, top: 0, right: width, bottom: height };
    const start = { fill: [0, 0, 0], stroke: [0, 0, 0], font: undefined, size: 0, spacing: 0, wordSpacing: 0, rise: 0, stretch: 1 };
    drawn.run(file.stream(page.get("Contents")), resources, { ...start, matrix: [1, 0, 0, 1, -left, -bottom], clip: whole });
    return { width, height, texts: drawn.texts, lines: drawn.lines, fills: drawn.fills };
  });
}

const PAINTS = ["S", "s", "f", "F", "f*", "B", "B*", "b", "b*"];
const FILLS = ["f", "F", "f*", "B", "B*", "b", "b*"];
const STROKES = ["S", "s", "B", "B*", "b", "b*"];

// A space is a quarter of the size.
const LETTER_GAP = 0.3;

class Drawn {
  readonly texts: PrintedText[] = [];
  readonly lines: Painted[] = [];
  readonly fills: Painted[] = [];

  constructor(
    private readonly file: PdfFile,
    private readonly height: number,
  ) {}

  /** Follows the operators of a content stream (8.4.4, 8.5, 9.3, 9.4); what they look like else is passed over. */
  run(content: string, resources: PdfDictionary, given: State): void {
    const fonts = this.file.dictionary(resources.get("Font"));
    const read = new Map<string, PdfFont>();
    const kept: State[] = [];
    let state = given;
    let [text, line] = [SAME, SAME];
    let leading = 0;
    let path: Box[] = [];
    let [pen, begun] = [
      { x: 0, y: 0 },
      { x: 0, y: 0 },
    ];
    let clips = false;
    const lexer = new Lexer(content);
    let operands: PdfValue[] = [];
    const draw = (to: { x: number; y: number }): void => {
      path.push(this.around(state.matrix, [pen, to]));
      pen = to;
    };
    const next = (x: number, y: number): void => void (text = line = times([1, 0, 0, 1, x, y], line));
    for (let value = lexer.next(); value !== undefined; value = lexer.next()) {
      if (!(value instanceof Word)) {
        operands.push(value);
        continue;
      }
      const operator = value.text;
      const numbers = operands.map(Number);
      const [one = 0, two = 0, three = 0, four = 0] = numbers;
      if (operator === "q") kept.push(state);
      else if (operator === "Q") state = kept.pop() ?? state;
      else if (operator === "cm") state = { ...state, matrix: times(numbers as unknown as Matrix, state.matrix) };
      else if (operator === "rg" || operator === "scn" || operator === "sc") state = { ...state, fill: numbers };
      else if (operator === "g") state = { ...state, fill: [one, one, one] };
      else if (operator === "RG" || operator === "SCN" || operator === "SC") state = { ...state, stroke: numbers };
      else if (operator === "G") state = { ...state, stroke: [one, one, one] };
      else if (operator === "m") pen = begun = { x: one, y: two };
      else if (operator === "l") draw({ x: one, y: two });
      else if (operator === "c") draw({ x: numbers[4] ?? 0, y: numbers[5] ?? 0 });
      else if (operator === "v" || operator === "y") draw({ x: three, y: four });
      else if (operator === "h") draw(begun);
      else if (operator === "re")
        path.push(this.around(state.matrix, [{ x: one, y: two }, { x: one + three, y: two + four }])); // prettier-ignore
      else if (operator === "W" || operator === "W*") clips = true;
      else if (PAINTS.includes(operator) || operator === "n") {
        if (STROKES.includes(operator)) this.lines.push(...path.map((one) => ({ ...one, colour: state.stroke })));
        if (FILLS.includes(operator) && path.length > 0) this.fills.push({ ...union(path), colour: state.fill });
        if (clips && path.length > 0) state = { ...state, clip: overlap(state.clip, union(path)) };
        path = [];
        clips = false;
      } else if (operator === "BT") text = line = SAME;
      else if (operator === "Tm") text = line = numbers as unknown as Matrix;
      else if (operator === "Td") next(one, two);
      else if (operator === "TD") {
        leading = -two;
        next(one, two);
      } else if (operator === "T*") next(0, -leading);
      else if (operator === "TL") leading = one;
      else if (operator === "Tc") state = { ...state, spacing: one };
      else if (operator === "Tw") state = { ...state, wordSpacing: one };
      else if (operator === "Ts") state = { ...state, rise: one };
      else if (operator === "Tz") state = { ...state, stretch: one / 100 };
      else if (operator === "Tf") {
        const name = (operands[0] as Name).text;
        if (!read.has(name)) read.set(name, pdfFont(this.file, this.file.dictionary(fonts.get(name))));
        state = { ...state, font: read.get(name), size: two };
      } else if (operator === "Tj") text = this.write([operands[0] ?? ""], state, text);
      else if (operator === "TJ") text = this.write(operands[0] as readonly PdfValue[], state, text);
      else if (operator === "Do") this.draw((operands[0] as Name).text, resources, state);
      operands = [];
    }
  }

  private draw(name: string, resources: PdfDictionary, state: State): void {
    const at = this.file.dictionary(resources.get("XObject")).get(name);
    const about = this.file.dictionary(at);
    if (!(about.get("Subtype") instanceof Name) || (about.get("Subtype") as Name).text !== "Form") return;
    const matrix = this.file.numbers(about.get("Matrix"));
    const own = matrix.length === SAME.length ? (matrix as unknown as Matrix) : SAME;
    this.run(this.file.stream(at), this.file.dictionary(about.get("Resources")), { ...state, matrix: times(own, state.matrix) });
  }

  private write(pieces: readonly PdfValue[], state: State, from: Matrix): Matrix {
    let at = from;
    let said = "";
    const moveOn = (across: number): void => void (at = times([1, 0, 0, 1, across * state.stretch, 0], at));
    for (const piece of pieces) {
      if (typeof piece === "number") moveOn((-piece / 1000) * state.size);
      else
        for (const { text, width } of state.font?.read(String(piece)) ?? []) {
          said += text;
          moveOn(width * state.size + state.spacing + (text === " " ? state.wordSpacing : 0));
        }
    }
    const whole = times(from, state.matrix);
    const [a, b, c, d] = whole;
    const size = state.size * Math.sqrt(Math.abs(a * d - b * c));
    const ends = [[0, state.rise], [0, state.rise + state.size]].flatMap(([, y = 0]) => [from, at].map((matrix) => ({ x: matrix[0] * 0 + matrix[2] * y + matrix[4], y: matrix[3] * y + matrix[5] + matrix[1] * 0 }))); // prettier-ignore
    if (said.trim() !== "") this.add({ ...this.around(state.matrix, ends), text: said, size, colour: state.fill, shown: state.clip, isUpright: Math.abs(b) < Math.abs(a) / 100 }); // prettier-ignore
    return at;
  }

  /** Some programs draw letter by letter: what goes on where the last text ended is one with it. */
  private add(text: PrintedText): void {
    const last = this.texts.at(-1);
    const gap = last === undefined ? Infinity : text.left - last.right;
    const isOne = last?.isUpright && text.isUpright && last.size === text.size && Math.abs(last.bottom - text.bottom) < 0.1 && gap > -1 && gap < LETTER_GAP * text.size; // prettier-ignore
    if (isOne && last !== undefined) this.texts[this.texts.length - 1] = { ...last, text: last.text + text.text, right: text.right };
    else this.texts.push(text);
  }

  private around(matrix: Matrix, points: readonly { x: number; y: number }[]): Box {
    const [a, b, c, d, e, f] = matrix;
    const across = points.map(({ x, y }) => a * x + c * y + e);
    const down = points.map(({ x, y }) => this.height - (b * x + d * y + f));
    return { left: Math.min(...across), right: Math.max(...across), top: Math.min(...down), bottom: Math.max(...down) };
  }
}

const union = (boxes: readonly Box[]): Box => ({
  left: Math.min(...boxes.map(({ left }) => left)),
  top: Math.min(...boxes.map(({ top }) => top)),
  right: Math.max(...boxes.map(({ right }) => right)),
  bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
});

const overlap = (one: Box, other: Box): Box => ({
  left: Math.max(one.left, other.left),
  top: Math.max(one.top, other.top),
  right: Math.min(one.right, other.right),
  bottom: Math.min(one.bottom, other.bottom),
});
