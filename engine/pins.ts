/** What the coach pinned: parts of a plan that may not move. */
import { checkNumber, checkWord, isBlank } from "./fields";
import type { Outcome, Problem } from "./outcome";
import { M1, M3, M4, M5, type ModelRuleId } from "./rules/model";
import { LIMITS } from "./rules/limits";
import { KINDS, LIFTS, PHASES, type Kind, type Lift, type Phase } from "./words";

/** The length of one mesocycle, counted from the first of the directed preparation. */
export interface MesocyclePin {
  readonly number: number;
  readonly hardWeeks: number;
}

/** How long one lift stays in one phase. */
export interface PhaseWeeksPin {
  readonly lift: Lift;
  readonly phase: Phase;
  readonly weeks: number;
}

/** One lift's phase in one week, which is then a directed week. */
export interface WeekPhasePin {
  readonly weeksToMeet: number;
  readonly lift: Lift;
  readonly phase: Phase;
}

/** What one week is for. */
export interface WeekKindPin {
  readonly weeksToMeet: number;
  readonly kind: Exclude<Kind, "meet">;
}

export interface Pins {
  readonly mesocycles: readonly MesocyclePin[];
  readonly phaseWeeks: readonly PhaseWeeksPin[];
  readonly weekPhases: readonly WeekPhasePin[];
  readonly weekKinds: readonly WeekKindPin[];
}

const LISTS = ["mesocycles", "phaseWeeks", "weekPhases", "weekKinds"] as const;
const PINNED_KINDS = KINDS.filter((kind): kind is Exclude<Kind, "meet"> => kind !== "meet");

/** Reads pins: `{ mesocycles, phaseWeeks, weekPhases, weekKinds }`, each a list and each optional. */
export function parsePins(given: unknown): Outcome<Pins> {
  const problems: Problem[] = [];
  const object = (value: unknown, path: string): Record<string, unknown> => {
    if (typeof value === "object" && value !== null && !Array.isArray(value))
      return value as Record<string, unknown>;
    problems.push({
      code: "notAnObject",
      severity: "refused",
      path,
      given: value,
      allowed: { kind: "object" },
      fix: null,
    });
    return {};
  };
  const raw = isBlank(given) ? {} : object(given, "pins");
  for (const key of Object.keys(raw).filter((name) => !(LISTS as readonly string[]).includes(name))) {
    problems.push({
      code: "unknownField",
      severity: "refused",
      path: `pins.${key}`,
      given: key,
      allowed: { kind: "fields", names: LISTS },
      fix: null,
    });
  }
  const rows = <T>(
    list: (typeof LISTS)[number],
    read: (row: Record<string, unknown>, path: string) => T,
  ): T[] => {
    const value = raw[list];
    if (isBlank(value)) return [];
    if (!Array.isArray(value)) {
      object(null, `pins.${list}`);
      return [];
    }
    return value.map((row, index) => read(object(row, `pins.${list}.${index}`), `pins.${list}.${index}`));
  };
  const whole = (
    row: Record<string, unknown>,
    key: string,
    path: string,
    min: number,
    max: number,
  ): number => {
    const allowed = { kind: "number", min, max, unit: "weeks", whole: true } as const;
    const checked = checkNumber(row[key], allowed);
    if ("value" in checked) return checked.value;
    problems.push({
      severity: "refused",
      path: `${path}.${key}`,
      given: row[key] ?? null,
      allowed,
      ...checked.problem,
    });
    return min;
  };
  const word = <T extends string>(
    row: Record<string, unknown>,
    key: string,
    path: string,
    values: readonly [T, ...T[]] | readonly T[],
  ): T => {
    const checked = checkWord(row[key], values);
    if ("value" in checked) return checked.value;
    problems.push({
      severity: "refused",
      path: `${path}.${key}`,
      given: row[key] ?? null,
      allowed: { kind: "oneOf", values },
      ...checked.problem,
    });
    return values[0] as T;
  };
  const longest = LIMITS.phaseWeeks.max;
  const pins: Pins = {
    mesocycles: rows("mesocycles", (row, path) => ({
      number: whole(row, "number", path, 1, longest),
      hardWeeks: whole(row, "hardWeeks", path, 1, longest),
    })),
    phaseWeeks: rows("phaseWeeks", (row, path) => ({
      lift: word(row, "lift", path, LIFTS),
      phase: word(row, "phase", path, PHASES),
      weeks: whole(row, "weeks", path, LIMITS.phaseWeeks.min, longest),
    })),
    weekPhases: rows("weekPhases", (row, path) => ({
      weeksToMeet: whole(row, "weeksToMeet", path, 0, longest - 1),
      lift: word(row, "lift", path, LIFTS),
      phase: word(row, "phase", path, PHASES),
    })),
    weekKinds: rows("weekKinds", (row, path) => ({
      weeksToMeet: whole(row, "weeksToMeet", path, 1, LIMITS.horizonWeeks.max),
      kind: word(row, "kind", path, PINNED_KINDS),
    })),
  };
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: pins, problems };
}

/** The rules that each kind of pin may break: what the coach pinned goes before them. */
export function relaxedByPins(pins: Pins): readonly ModelRuleId[] {
  const rules: ModelRuleId[] = [];
  if (pins.mesocycles.length > 0 || pins.weekKinds.length > 0) rules.push(M1.id);
  if (pins.phaseWeeks.length > 0 || pins.weekPhases.length > 0) rules.push(M3.id, M4.id, M5.id);
  return rules;
}
