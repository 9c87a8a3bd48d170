import { readFileSync, readdirSync } from "node:fs";
import path from "node:path";
import * as classes from "../../../engine/rules/classes";
import * as counterWeights from "../../../engine/rules/counter-weights";
import * as exposures from "../../../engine/rules/exposures";
import * as hardWeeks from "../../../engine/rules/hard-weeks";
import * as levels from "../../../engine/rules/levels";
import * as limits from "../../../engine/rules/limits";
import * as model from "../../../engine/rules/model";
import * as percentiles from "../../../engine/rules/percentiles";
import * as phases from "../../../engine/rules/phases";
import * as points from "../../../engine/rules/points";
import * as preparation from "../../../engine/rules/preparation";
import { STANDINGS, type RuleRow } from "../../../engine/rules/sources";
import { LEVELS, ROOMS, SIZES } from "../../../engine/words";

const TABLES: Record<string, object> = {
  classes,
  counterWeights,
  exposures,
  hardWeeks,
  levels,
  limits,
  model,
  percentiles,
  phases,
  points,
  preparation,
};
const ROOM = path.join(__dirname, "../../../engine/rules");

/** Every row anywhere inside a table's exports. */
function rowsIn(value: unknown): RuleRow[] {
  if (typeof value !== "object" || value === null) return [];
  const own = "id" in value ? [value as RuleRow] : [];
  return [...own, ...Object.values(value).flatMap(rowsIn)];
}
const rows = Object.values(TABLES).flatMap(rowsIn);

test("every file of the room is looked at", () => {
  const files = readdirSync(ROOM).filter((file) => file !== "sources.ts");
  expect(files.length).toBe(Object.keys(TABLES).length);
});

test("every row says where it comes from", () => {
  expect(rows.length).toBeGreaterThan(80);
  for (const row of rows) {
    expect([row.id, STANDINGS.includes(row.standing), (row.from ?? "").length > 3]).toEqual([
      row.id,
      true,
      true,
    ]);
  }
});

test("no two rows share a name", () => {
  const seen = new Map<string, RuleRow>();
  for (const row of rows) {
    const other = seen.get(row.id);
    expect(other === undefined || other === row ? "" : row.id).toBe("");
    seen.set(row.id, row);
  }
});

test("least is never above most, anywhere in a row", () => {
  const check = (value: unknown): void => {
    if (typeof value !== "object" || value === null) return;
    const { min, max } = value as { min?: number; max?: number };
    if (min !== undefined && max !== undefined) expect(min).toBeLessThanOrEqual(max);
    Object.values(value).forEach(check);
  };
  rows.forEach(check);
  for (const row of phases.PHASE_ROWS) {
    for (const [low, high] of [row.hypertrophy, row.strength, row.peaking])
      expect(low).toBeLessThanOrEqual(high);
  }
});

test.each([
  ["years", levels.YEARS, 0],
  ["strength", levels.STRENGTH, 0],
])("the bands of %s have no gap and no overlap", (_name, bands, from) => {
  let at = from;
  for (const band of bands) {
    expect(band.min).toBe(at);
    expect(band.below).toBeGreaterThan(at);
    at = band.below;
  }
  expect(at).toBe(Infinity);
});

test("each kind of lifter has one preparation row and one phase row", () => {
  for (const level of LEVELS) {
    for (const size of SIZES) {
      expect(preparation.PREP_RANGE.filter((row) => row.level === level && row.size === size).length).toBe(1);
    }
    for (const room of ROOMS) {
      expect(phases.PHASE_ROWS.filter((row) => row.level === level && row.room === room).length).toBe(1);
    }
  }
});

test("every cost's weight is a whole number of parts, so that costs add up exactly", () => {
  for (const row of Object.values(model.COSTS))
    expect(Number.isInteger(row.weight * model.COST_PARTS)).toBe(true);
});

test("every exported table is used by a stage", () => {
  const sources: string[] = [];
  const walk = (folder: string): void => {
    for (const entry of readdirSync(folder, { withFileTypes: true })) {
      const at = path.join(folder, entry.name);
      if (entry.isDirectory()) walk(at);
      else if (entry.name.endsWith(".ts") && path.dirname(at) !== ROOM)
        sources.push(readFileSync(at, "utf8"));
    }
  };
  walk(path.join(ROOM, ".."));
  const text = sources.join("\n");
  const names = Object.values(TABLES).flatMap((table) => Object.keys(table));
  expect(names.length).toBeGreaterThan(25);
  expect(names.filter((name) => !new RegExp(`\\b${name}\\b`).test(text))).toEqual([]);
});
