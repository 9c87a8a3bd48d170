/** Where everything in the preview strip goes, in pixels. Pure: a plan and a width in, boxes out. */
import { LIFTS, type Kind, type Lift, type Phase, type Plan } from "../../../engine/index";
import { dayText } from "../../sheets/words";
import { monthOf, shortDay } from "../state/days";

export const STRIP = {
  labels: 50,
  month: 18,
  mesocycle: 18,
  kinds: 16,
  lane: 24,
  gap: 4,
  bottom: 2,
} as const;

/** Average widths of a character at the strip's two text sizes. */
const SMALL_CHARACTER = 5.8;
const PHASE_CHARACTER = 6.3;
const TEXT_MARGIN = 5;

export interface Span {
  readonly x: number;
  readonly width: number;
}

export interface WeekBox extends Span {
  readonly kind: Kind;
  readonly tip: string;
}

export interface PhaseRun extends Span {
  readonly phase: Phase;
  /** The phase as a word, or its first letter where the word is too wide. */
  readonly label: string;
}

export interface StripLayout {
  readonly width: number;
  readonly height: number;
  readonly months: readonly { readonly x: number; readonly label: string }[];
  /** The meet's day, at the right end of the month line. */
  readonly meetLabel: string;
  readonly mesocycles: readonly (Span & { readonly label: string })[];
  readonly weeks: readonly WeekBox[];
  readonly lanes: readonly { readonly lift: Lift; readonly y: number; readonly runs: readonly PhaseRun[] }[];
  readonly tops: { readonly mesocycle: number; readonly kinds: number; readonly lanes: number };
}

export function layOutStrip(plan: Plan, width: number): StripLayout {
  const weekWidth = (width - STRIP.labels) / plan.weeks.length;
  const at = (index: number): number => STRIP.labels + index * weekWidth;
  const tops = {
    mesocycle: STRIP.month,
    kinds: STRIP.month + STRIP.mesocycle,
    lanes: STRIP.month + STRIP.mesocycle + STRIP.kinds + STRIP.gap,
  };
  const meetLabel = `meet ${shortDay(plan.meetDate)}`;
  return {
    width,
    height: tops.lanes + LIFTS.length * (STRIP.lane + STRIP.gap) + STRIP.bottom,
    months: layOutMonths(plan, at, width - meetLabel.length * SMALL_CHARACTER - TEXT_MARGIN),
    meetLabel,
    mesocycles: layOutMesocycles(plan, at),
    weeks: plan.weeks.map((week, index) => ({
      x: at(index),
      width: weekWidth,
      kind: week.kind,
      tip: `Week ${week.week}, from ${dayText(week.startDate)}: ${week.kind}, ${weeksToMeet(week.weeksToMeet)}`,
    })),
    lanes: LIFTS.map((lift, index) => ({
      lift,
      y: tops.lanes + index * (STRIP.lane + STRIP.gap),
      runs: layOutRuns(plan, lift, at),
    })),
    tops,
  };
}

const weeksToMeet = (weeks: number): string =>
  weeks === 0 ? "meet week" : `${weeks} ${weeks === 1 ? "week" : "weeks"} to the meet`;

/** A label where each month's first week starts; from the right, so that a crowded opening month gives way. */
function layOutMonths(plan: Plan, at: (index: number) => number, end: number) {
  const months: { x: number; label: string }[] = [];
  let free = end;
  for (let index = plan.weeks.length - 1; index >= 0; index--) {
    const label = monthOf(plan.weeks[index]!.startDate);
    const before = plan.weeks[index - 1];
    if (before && monthOf(before.startDate) === label) continue;
    if (at(index) + label.length * SMALL_CHARACTER + TEXT_MARGIN > free) continue;
    months.unshift({ x: at(index), label });
    free = at(index);
  }
  return months;
}

function layOutMesocycles(plan: Plan, at: (index: number) => number) {
  return plan.mesocycles.map(({ number, hardWeeks }, index) => {
    const first = plan.weeks.findIndex((week) => week.mesocycle === number);
    const count = plan.weeks.filter((week) => week.mesocycle === number).length;
    const span = { x: at(first), width: at(first + count) - at(first) };
    const end = index === plan.mesocycles.length - 1 ? "meet" : "1";
    const long = `${hardWeeks} + ${end}`;
    return { ...span, label: fits(long, span.width, SMALL_CHARACTER) ? long : String(hardWeeks) };
  });
}

function layOutRuns(plan: Plan, lift: Lift, at: (index: number) => number): readonly PhaseRun[] {
  const runs: { phase: Phase; first: number; end: number }[] = [];
  plan.weeks.forEach(({ phase }, index) => {
    if (phase === null) return;
    const last = runs.at(-1);
    if (last && last.phase === phase[lift]) last.end = index + 1;
    else runs.push({ phase: phase[lift], first: index, end: index + 1 });
  });
  return runs.map(({ phase, first, end }) => {
    const width = at(end) - at(first);
    const word = phase.charAt(0).toUpperCase() + phase.slice(1);
    return { phase, x: at(first), width, label: fits(word, width, PHASE_CHARACTER) ? word : word.charAt(0) };
  });
}

const fits = (text: string, width: number, character: number): boolean =>
  text.length * character + TEXT_MARGIN <= width;
