/**
 * The engine's door: unknown input to a PlanRequest, or every problem at once. The only file that imports zod;
 * nothing behind it checks input again. All masses leave here in kilograms.
 */
import { z } from "zod";
import { addDays, daysBetween, type Day } from "./calendar/day";
import { WEEKDAYS, type Weekday } from "./calendar/week";
import {
  checkClassLimit,
  checkDay,
  checkLifter,
  checkNumber,
  checkWord,
  checkYesNo,
  isBlank,
  type Checked,
} from "./fields";
import type { Allowed, Outcome, Problem } from "./outcome";
import { M1 } from "./rules/model";
import { LIMITS, UNUSUAL_ABOVE, UNUSUAL_SHARE } from "./rules/limits";
import { parsePins, type Pins } from "./pins";
import { kgFromLb, lbFromKg } from "./units";
import { ARRANGEMENTS, LEVELS, RECOVERIES, ROOMS, SEXES, UNITS } from "./words";
import type { Arrangement, Level, Lift, PerLift, Recovery, RoomInClass, Sex, Unit } from "./words";

z.config({ jitless: true });

/** A weight class the coach set: its limit, or the open class above a limit. */
export interface ClassChoice {
  readonly limitKg: number;
  readonly open: boolean;
}

export interface PlanRequest {
  readonly lifter: string | null;
  readonly sex: Sex;
  readonly bodyweightKg: number;
  /** Null: the class follows from bodyweight and the federation's table. */
  readonly classChoice: ClassChoice | null;
  readonly trainingYears: number;
  /** Best competition lifts; null where unknown. */
  readonly bestsKg: PerLift<number | null>;
  readonly recovery: Recovery;
  readonly roomInClass: RoomInClass;
  readonly explosive: boolean;
  readonly startDate: Day;
  readonly meetDate: Day;
  /** Set by the coach in place of the assessment; null to assess. */
  readonly level: Level | null;
  readonly hardWeeks: number | null;
  readonly prepWeeks: number | null;
  /** The unit the input came in. */
  readonly unit: Unit;
  readonly weekStart: Weekday;
  readonly arrangement: Arrangement;
  /** How far a mesocycle may be from the lifter's hard weeks. */
  readonly mesocycleTolerance: number;
  readonly pins: Pins;
}

/** The request's keys in their standard order, which is also a roster's column order. */
export const REQUEST_FIELDS = [
  "lifter",
  "sex",
  "bodyweightKg",
  "classLimitKg",
  "trainingYears",
  "squatKg",
  "benchKg",
  "deadliftKg",
  "recovery",
  "roomInClass",
  "explosive",
  "startDate",
  "meetDate",
  "level",
  "hardWeeks",
  "prepWeeks",
  "unit",
  "weekStart",
  "arrangement",
] as const;
export type RequestField = (typeof REQUEST_FIELDS)[number];

const OTHER_FIELDS = ["mesocycleTolerance", "pins"];

/** Wraps a field's check as a zod type: a blank takes `blank`, or is a problem where there is none. */
function field<T, B = never>(
  path: string,
  allowed: Allowed,
  check: (given: unknown) => Checked<T>,
  blank?: { value: B },
) {
  return z.unknown().transform((given, context): T | B => {
    const fail = (problem: Problem): never => {
      context.addIssue({ code: "custom", params: { problem } });
      return z.NEVER;
    };
    if (isBlank(given)) {
      return blank
        ? blank.value
        : fail({ code: "missing", severity: "refused", path, given: null, allowed, fix: null });
    }
    const checked = check(given);
    if ("problem" in checked) return fail({ severity: "refused", path, given, allowed, ...checked.problem });
    return checked.value;
  });
}

const word = <T extends string, B = never>(path: string, values: readonly T[], blank?: { value: B }) =>
  field(path, { kind: "oneOf", values }, (given) => checkWord(given, values), blank);

const number = <B = never>(
  path: string,
  range: { min: number; max: number },
  unit: string,
  whole: boolean,
  blank?: { value: B },
) => {
  const allowed = { kind: "number", min: range.min, max: range.max, unit, whole } as const;
  return field(path, allowed, (given) => checkNumber(given, allowed), blank);
};

const round1 = (value: number): number => Math.round(value * 10) / 10;

function schemaFor(unit: Unit) {
  const mass = (row: { min: number; max: number }) =>
    unit === "kg" ? row : { min: round1(lbFromKg(row.min)), max: round1(lbFromKg(row.max)) };
  const day = (path: string) => field(path, { kind: "day" }, checkDay);
  const classRange = mass(LIMITS.classLimitKg);
  return z.object({
    lifter: field("lifter", { kind: "text", maxLength: LIMITS.lifterLength.max }, checkLifter, {
      value: null,
    }),
    sex: word("sex", SEXES),
    bodyweightKg: number("bodyweightKg", mass(LIMITS.bodyweightKg), unit, false),
    classLimitKg: field(
      "classLimitKg",
      { kind: "number", min: classRange.min, max: classRange.max, unit, whole: false },
      (given) => checkClassLimit(given, { kind: "number", ...classRange, unit, whole: false }),
      { value: null },
    ),
    trainingYears: number("trainingYears", LIMITS.trainingYears, "years", false),
    squatKg: number("squatKg", mass(LIMITS.liftKg), unit, false, { value: null }),
    benchKg: number("benchKg", mass(LIMITS.liftKg), unit, false, { value: null }),
    deadliftKg: number("deadliftKg", mass(LIMITS.liftKg), unit, false, { value: null }),
    recovery: word("recovery", RECOVERIES, { value: "normal" as const }),
    roomInClass: word("roomInClass", ROOMS, { value: "some" as const }),
    explosive: field("explosive", { kind: "oneOf", values: ["yes", "no"] }, checkYesNo, { value: false }),
    startDate: day("startDate"),
    meetDate: day("meetDate"),
    level: word("level", LEVELS, { value: null }),
    hardWeeks: number("hardWeeks", LIMITS.hardWeeks, "weeks", true, { value: null }),
    prepWeeks: number("prepWeeks", LIMITS.prepWeeks, "weeks", true, { value: null }),
    weekStart: word("weekStart", WEEKDAYS, { value: "monday" as const }),
    arrangement: word("arrangement", ARRANGEMENTS, { value: "as needed" as const }),
    mesocycleTolerance: number("mesocycleTolerance", LIMITS.mesocycleTolerance, "weeks", true, {
      value: null,
    }),
  });
}

const SCHEMAS = { kg: schemaFor("kg"), lb: schemaFor("lb") } as const;
const UNIT_FIELD = word("unit", UNITS, { value: "kg" as const });
type Fields = z.output<(typeof SCHEMAS)["kg"]>;

/**
 * Reads a request.
 * @param input a plain object with the keys of REQUEST_FIELDS; masses in `unit`, days as yyyy-mm-dd.
 * @returns the request in kilograms, with questioned input as problems; or every refused and questioned problem.
 */
export function parseRequest(input: unknown): Outcome<PlanRequest> {
  if (typeof input !== "object" || input === null || Array.isArray(input)) {
    const problem: Problem = {
      code: "notAnObject",
      severity: "refused",
      path: "",
      given: input,
      allowed: { kind: "object" },
      fix: null,
    };
    return { ok: false, problems: [problem] };
  }
  const raw = input as Record<string, unknown>;
  const problems: Problem[] = [];
  const unit = UNIT_FIELD.safeParse(raw["unit"] ?? null);
  if (!unit.success) problems.push(...problemsOf(unit.error));
  const fields = SCHEMAS[unit.success ? unit.data : "kg"].safeParse(withEveryKey(raw));
  if (!fields.success) problems.push(...problemsOf(fields.error));
  const pins = parsePins(raw["pins"]);
  problems.push(...pins.problems, ...findUnknownFields(raw));
  if (unit.success && fields.success) problems.push(...questionFields(fields.data, raw, unit.data));
  if (!unit.success || !fields.success || !pins.ok || problems.some((p) => p.severity === "refused")) {
    return { ok: false, problems };
  }
  return { ok: true, value: toRequest(fields.data, unit.data, pins.value), problems };
}

/** Absent keys as blanks: zod reports an absent key by itself before a field's own check could. */
function withEveryKey(raw: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(Object.keys(SCHEMAS.kg.shape).map((key) => [key, raw[key] ?? null]));
}

function problemsOf(error: z.ZodError): Problem[] {
  return error.issues.map((issue) => (issue as unknown as { params: { problem: Problem } }).params.problem);
}

function findUnknownFields(raw: Record<string, unknown>): Problem[] {
  const known: readonly string[] = [...REQUEST_FIELDS, ...OTHER_FIELDS];
  return Object.keys(raw)
    .filter((key) => !known.includes(key))
    .map((key) => ({
      code: "unknownField",
      severity: "questioned",
      path: key,
      given: key,
      allowed: { kind: "fields", names: known },
      fix: known.find((name) => name.toLowerCase() === key.toLowerCase()) ?? null,
    }));
}

/** What holds between fields, and values that are possible but unlikely. */
function questionFields(fields: Fields, raw: Record<string, unknown>, unit: Unit): Problem[] {
  const problems: Problem[] = [];
  const kg = (value: number) => (unit === "kg" ? value : kgFromLb(value));
  const shown = (valueKg: number) => (unit === "kg" ? valueKg : round1(lbFromKg(valueKg)));
  const choice = fields.classLimitKg;
  if (choice && !choice.open && fields.bodyweightKg > choice.limitKg) {
    problems.push({
      code: "classBelowBodyweight",
      severity: "refused",
      path: "classLimitKg",
      given: raw["classLimitKg"],
      allowed: { kind: "classLimit", min: fields.bodyweightKg, unit },
      fix: null,
    });
  }
  const days = daysBetween(fields.startDate, fields.meetDate);
  const span = {
    kind: "dayFrom",
    from: fields.startDate,
    to: addDays(fields.startDate, LIMITS.horizonWeeks.max * 7),
  } as const;
  if (days < 0 || days > LIMITS.horizonWeeks.max * 7) {
    const code = days < 0 ? "meetBeforeStart" : "meetTooFar";
    problems.push({
      code,
      severity: "refused",
      path: "meetDate",
      given: fields.meetDate,
      allowed: span,
      fix: null,
    });
  }
  const text = fields.lifter;
  if (text !== null && /^[=+\-@]/.test(text)) {
    const allowed = { kind: "text", maxLength: LIMITS.lifterLength.max } as const;
    problems.push({
      code: "formulaSign",
      severity: "questioned",
      path: "lifter",
      given: text,
      allowed,
      fix: null,
    });
  }
  if (text !== null && [...text].length > LIMITS.lifterLength.max) {
    const allowed = { kind: "text", maxLength: LIMITS.lifterLength.max } as const;
    problems.push({
      code: "tooLong",
      severity: "questioned",
      path: "lifter",
      given: text,
      allowed,
      fix: null,
    });
  }
  const bests = { squatKg: fields.squatKg, benchKg: fields.benchKg, deadliftKg: fields.deadliftKg };
  const unusual = new Set<string>();
  for (const [path, best] of Object.entries(bests)) {
    const row = UNUSUAL_ABOVE[path as keyof typeof UNUSUAL_ABOVE];
    if (best === null || kg(best) <= row.kg) continue;
    unusual.add(path);
    const allowed = {
      kind: "number",
      min: shown(LIMITS.liftKg.min),
      max: shown(row.kg),
      unit,
      whole: false,
    } as const;
    problems.push({ code: "unusual", severity: "questioned", path, given: raw[path], allowed, fix: null });
  }
  const { squatKg, benchKg, deadliftKg } = bests;
  if (squatKg !== null && benchKg !== null && deadliftKg !== null && unusual.size === 0) {
    const total = squatKg + benchKg + deadliftKg;
    for (const [path, best] of Object.entries(bests)) {
      const sharePct = ((best as number) / total) * 100;
      if (sharePct >= UNUSUAL_SHARE.minPct && sharePct <= UNUSUAL_SHARE.maxPct) continue;
      const allowed = {
        kind: "number",
        min: UNUSUAL_SHARE.minPct,
        max: UNUSUAL_SHARE.maxPct,
        unit: "% of the total",
        whole: false,
      } as const;
      problems.push({
        code: "unusualShare",
        severity: "questioned",
        path,
        given: raw[path],
        allowed,
        fix: null,
      });
    }
  }
  return problems;
}

function toRequest(fields: Fields, unit: Unit, pins: Pins): PlanRequest {
  const kg = (value: number) => (unit === "kg" ? value : kgFromLb(value));
  const best = (value: number | null) => (value === null ? null : kg(value));
  const bestsKg: Record<Lift, number | null> = {
    squat: best(fields.squatKg),
    bench: best(fields.benchKg),
    deadlift: best(fields.deadliftKg),
  };
  return {
    lifter: fields.lifter,
    sex: fields.sex,
    bodyweightKg: kg(fields.bodyweightKg),
    classChoice: fields.classLimitKg && {
      // An open class is a name, and its name is in kilograms whatever the rest of the input is in.
      limitKg: fields.classLimitKg.open ? fields.classLimitKg.limitKg : kg(fields.classLimitKg.limitKg),
      open: fields.classLimitKg.open,
    },
    trainingYears: fields.trainingYears,
    bestsKg,
    recovery: fields.recovery,
    roomInClass: fields.roomInClass,
    explosive: fields.explosive,
    startDate: fields.startDate,
    meetDate: fields.meetDate,
    level: fields.level,
    hardWeeks: fields.hardWeeks,
    prepWeeks: fields.prepWeeks,
    unit,
    weekStart: fields.weekStart,
    arrangement: fields.arrangement,
    mesocycleTolerance: fields.mesocycleTolerance ?? M1.tolerance,
    pins,
  };
}
