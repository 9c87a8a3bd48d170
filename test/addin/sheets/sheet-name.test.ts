import { freeSheetNames } from "../../../addin/sheets/sheet-name";

const one = (lifter: string | null, taken: readonly string[] = []) =>
  freeSheetNames(["Plan"], lifter, taken)[0]!;

test.each([
  ["Ada Brook", "Plan Ada Brook"],
  [null, "Plan"],
  ["   ", "Plan"],
  ["a:b\\c/d?e*f[g]h", "Plan a b c d e f g h"],
  ["=SUM(A1)", "Plan =SUM(A1)"],
  ["O'Brook'", "Plan O'Brook"],
  ["tab\tline\nnull\u0000end", "Plan tab line null end"],
  ["half \ud83d character", "Plan half character"],
  ["x".repeat(300), `Plan ${"x".repeat(26)}`],
])("%j becomes %j", (lifter, name) => {
  expect(one(lifter)).toBe(name);
});

test("a long name is cut between characters, never inside one", () => {
  const family = "👩‍👩‍👧";
  const name = one(family.repeat(20));
  expect(name.length).toBeLessThanOrEqual(31);
  expect(name).toBe(`Plan ${family.repeat(3)}`);
});

test("names in use are passed over, whatever their case, with one number for both sheets", () => {
  const kinds = ["Plan", "Reasons"];
  expect(freeSheetNames(kinds, "Ada", [])).toEqual(["Plan Ada", "Reasons Ada"]);
  expect(freeSheetNames(kinds, "Ada", ["PLAN ADA"])).toEqual(["Plan Ada (2)", "Reasons Ada (2)"]);
  expect(freeSheetNames(kinds, "Ada", ["plan ada", "Reasons Ada (2)"])).toEqual([
    "Plan Ada (3)",
    "Reasons Ada (3)",
  ]);
});

test("the number is kept when a long name is cut for it", () => {
  const long = "y".repeat(60);
  const names = Array.from({ length: 12 }).reduce<string[]>((taken) => [...taken, one(long, taken)], []);
  expect(new Set(names).size).toBe(12);
  expect(names.at(-1)).toMatch(/ \(12\)$/);
  for (const name of names) expect(name.length).toBeLessThanOrEqual(31);
});
