/** A preparation laid on the calendar, back from meet day. */
import type { Day } from "../calendar/day";
import type { Mesocycle, PlanWeek } from "../answer";
import { perLift, type PerLift } from "../words";
import { phaseAt } from "../phases/phase-at";
import type { PhaseWeeks } from "../why";

export interface ToLay {
  /** First day of every week from the first training week to meet week. */
  readonly weekStarts: readonly Day[];
  readonly hardWeeks: readonly number[];
  readonly lifts: PerLift<PhaseWeeks>;
}

export interface Laid {
  readonly mesocycles: readonly Mesocycle[];
  readonly weeks: readonly PlanWeek[];
}

/** Dates every week; bridge weeks come before the directed ones. */
export function layWeeks({ weekStarts, hardWeeks, lifts }: ToLay): Laid {
  const directedWeeks = hardWeeks.reduce((sum, length) => sum + length + 1, 0);
  const availableWeeks = weekStarts.length;
  const bridgeWeeks = availableWeeks - directedWeeks;
  const startOf = (week: number): Day => weekStarts[week - 1]!;
  const mesocycles: Mesocycle[] = [];
  const weeks: PlanWeek[] = Array.from({ length: bridgeWeeks }, (_, index) => ({
    week: index + 1,
    startDate: startOf(index + 1),
    weeksToMeet: availableWeeks - index - 1,
    kind: "bridge",
    mesocycle: null,
    phase: null,
  }));
  hardWeeks.forEach((length, index) => {
    const first = weeks.length + 1;
    const isFinal = index === hardWeeks.length - 1;
    mesocycles.push({ number: index + 1, hardWeeks: length, weeks: length + 1, startDate: startOf(first) });
    for (let i = 0; i <= length; i++) {
      const week = first + i;
      weeks.push({
        week,
        startDate: startOf(week),
        weeksToMeet: availableWeeks - week,
        kind: i < length ? "hard" : isFinal ? "meet" : "deload",
        mesocycle: index + 1,
        phase: perLift((lift) => phaseAt(lifts[lift], week - bridgeWeeks)),
      });
    }
  });
  return { mesocycles, weeks };
}
