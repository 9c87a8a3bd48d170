import { KIND_COLOURS, PHASE_COLOURS } from "../../../addin/sheets/colours";
import { GRID_LOOKS, KIND_LOOKS } from "../../../addin/sheets/looks";
import type { Look } from "../../../addin/sheets/model";
import { PHASES } from "../../../engine";

type Rgb = readonly [number, number, number];
type Matrix = readonly [Rgb, Rgb, Rgb];

/**
 * Full deficiency over linear RGB, from memory and unchecked against the print, after Machado, Oliveira and Fernandes 2009,
 * "A Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE TVCG 15(6):1291-1298.
 */
const DEFICIENCIES: Readonly<Record<string, Matrix>> = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};
const ORDINARY: Matrix = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** sRGB to linear light, as WCAG 2 defines relative luminance. */
function linear(hex: string): Rgb {
  const channel = (at: number): number => {
    const value = parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}

const luminance = ([r, g, b]: Rgb): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;

function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(linear(a)), luminance(linear(b))].sort((x, y) => x - y);
  return (light! + 0.05) / (dark! + 0.05);
}

function seen(matrix: Matrix, [r, g, b]: Rgb): Rgb {
  const channel = ([x, y, z]: Rgb): number => Math.min(1, Math.max(0, x * r + y * g + z * b));
  return [channel(matrix[0]), channel(matrix[1]), channel(matrix[2])];
}

/** CIE L*a*b* under D65. */
function lab([r, g, b]: Rgb): Rgb {
  const x = (0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.95047;
  const y = 0.2126 * r + 0.7152 * g + 0.0722 * b;
  const z = (0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.08883;
  const f = (t: number): number => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
  return [116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))];
}

const distance = (a: Rgb, b: Rgb): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
const pairs = PHASES.flatMap((a, index) => PHASES.slice(index + 1).map((b) => [a, b] as const));

test("the yardsticks themselves: black on white, red and green to a deuteranope", () => {
  expect(contrast("#000000", "#FFFFFF")).toBeCloseTo(21);
  expect(distance(lab(linear("#FFFFFF")), lab(linear("#000000")))).toBeCloseTo(100, 0);
  const apart = (matrix: Matrix) =>
    distance(lab(seen(matrix, linear("#7A9A01"))), lab(seen(matrix, linear("#C77B30"))));
  expect(apart(DEFICIENCIES.deuteranopia!)).toBeLessThan(apart(ORDINARY) / 2);
});

test("phases are clear steps of lightness, so that grey print tells them apart", () => {
  expect(pairs).toHaveLength(3);
  for (const [a, b] of pairs) {
    expect(contrast(PHASE_COLOURS[a].fill, PHASE_COLOURS[b].fill)).toBeGreaterThan(2);
    const lightness = (phase: (typeof PHASES)[number]) => lab(linear(PHASE_COLOURS[phase].fill))[0];
    expect(lightness(a) - lightness(b)).toBeGreaterThan(25);
  }
});

test.each(Object.entries({ ...DEFICIENCIES, ordinary: ORDINARY }))(
  "phases stay apart for %s eyes",
  (_name, matrix) => {
    for (const [a, b] of pairs) {
      const [first, second] = [PHASE_COLOURS[a].fill, PHASE_COLOURS[b].fill].map((fill) =>
        lab(seen(matrix, linear(fill))),
      );
      expect(distance(first!, second!)).toBeGreaterThan(30);
    }
  },
);

test("every text stands out from its fill", () => {
  const white = "#FFFFFF";
  const looks: readonly Look[] = [...Object.values(GRID_LOOKS), ...Object.values(KIND_LOOKS)];
  const laid = [
    ...[...Object.values(PHASE_COLOURS), ...Object.values(KIND_COLOURS)].map(({ fill, text }) => [
      text,
      fill,
    ]),
    ...looks.flatMap(({ colour, fill }) => (colour === undefined ? [] : [[colour, fill ?? white]])),
  ] as const;
  expect(laid.length).toBeGreaterThan(20);
  for (const [text, fill] of laid) expect(contrast(text!, fill!)).toBeGreaterThanOrEqual(4.5);
});
