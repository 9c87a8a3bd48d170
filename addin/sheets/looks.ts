/** How the sheets' cells look, by style name. */
import { KIND_COLOURS } from "./colours";
import type { Look } from "./model";

const INK = "#24211D";
const FAINT = "#6A645B";
const LINE = "#C9C3B8";
/** Cells for the coach to change. */
const INPUT = { fill: "#FBF7EA", border: "#A69B83", colour: INK } as const;
const DATE = "ddd d mmm yyyy";

export const BASE_LOOKS = {
  title: { bold: true, size: 16, colour: INK, vertical: "middle" },
  heading: { bold: true, size: 12, colour: INK, vertical: "middle" },
  faint: { italic: true, colour: FAINT, wrap: true, vertical: "top" },
  pointer: { colour: "#7A2E1D", wrap: true, vertical: "middle" },
  text: { colour: INK, wrap: true, vertical: "top" },
  textBold: { colour: INK, wrap: true, vertical: "top", bold: true },
  head: {
    bold: true,
    fill: "#4A453D",
    colour: "#FFFFFF",
    border: "#4A453D",
    align: "center",
    vertical: "middle",
    wrap: true,
  },
  headLeft: {
    bold: true,
    fill: "#4A453D",
    colour: "#FFFFFF",
    border: "#4A453D",
    vertical: "middle",
    wrap: true,
  },
  box: { colour: INK, border: LINE, wrap: true, vertical: "top" },
  boxBold: { colour: INK, border: LINE, wrap: true, vertical: "top", bold: true },
  boxNumber: { colour: INK, border: LINE, align: "center", vertical: "top" },
  boxDate: { colour: INK, border: LINE, align: "center", vertical: "top", format: DATE },
  /** A figure, or the reason why there is none, which must not lose its beginning. */
  result: { colour: INK, border: LINE, align: "left", vertical: "middle" },
  resultText: { colour: INK, border: LINE, vertical: "middle" },
  inputText: { ...INPUT, vertical: "middle", wrap: true },
  inputWord: { ...INPUT, align: "center", vertical: "middle" },
  inputNumber: { ...INPUT, align: "center", vertical: "middle" },
  inputDate: { ...INPUT, align: "center", vertical: "middle", format: DATE },
} as const satisfies Record<string, Look>;

export const GRID_LOOKS = {
  ...BASE_LOOKS,
  label: { colour: FAINT, align: "right", vertical: "middle" },
  fact: { colour: INK, bold: true, vertical: "middle" },
  factNumber: { colour: INK, bold: true, align: "left", vertical: "middle" },
  factDate: { colour: INK, bold: true, align: "left", vertical: "middle", format: DATE },
  number: { colour: INK, border: LINE, align: "center", vertical: "middle" },
  date: { colour: INK, border: LINE, align: "center", vertical: "middle", format: DATE },
  /** Rows are one line high: a long check runs on over the notes beside it. */
  check: { colour: "#7A2E1D", border: LINE, bold: true, vertical: "middle" },
  summary: { colour: INK, bold: true, vertical: "middle" },
  totalLabel: { colour: INK, border: LINE, align: "right", vertical: "middle" },
  total: { colour: INK, border: LINE, align: "center", vertical: "middle" },
  totalBold: { colour: INK, border: LINE, bold: true, align: "center", vertical: "middle" },
  share: { colour: INK, border: LINE, align: "center", vertical: "middle", format: "0%" },
} as const satisfies Record<string, Look>;

/** Looks of whole rows by their kind, laid over the looks above. */
export const KIND_LOOKS = {
  bridge: { italic: true, colour: KIND_COLOURS.bridge.text },
  deload: { italic: true, fill: KIND_COLOURS.deload.fill, colour: KIND_COLOURS.deload.text },
  meet: { bold: true, fill: KIND_COLOURS.meet.fill, colour: KIND_COLOURS.meet.text },
} as const satisfies Record<string, Look>;
