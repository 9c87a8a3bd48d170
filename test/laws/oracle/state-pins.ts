/** A coach's pins as further constraints of a programme; of mesocycles, pins of the first two. */
import type { Pins } from "../../../engine/pins";
import { sumOf, type Programme, type Sum } from "./programme";
import { arcName } from "./state";

/** Adds the pins to a programme stated for `length` weeks. */
export function statePins(programme: Programme, length: number, pins: Pins): void {
  const named = (pattern: RegExp, value: (...numbers: number[]) => number): Sum => {
    const sum = new Map<string, number>();
    for (const name of programme.variables.keys()) {
      const match = pattern.exec(name);
      if (match) sum.set(name, value(...match.slice(1).map(Number)));
    }
    return sum;
  };
  const never = (): void => programme.hold(sumOf([1, "prepared"]), 0, 0);
  const arc = (left: number, hardWeeks: number): Sum => {
    const name = arcName(left, hardWeeks + 1);
    return programme.variables.has(name) ? sumOf([1, name]) : sumOf();
  };
  const peaking = (lift: string) => named(new RegExp(`^${lift}_peaking_(\\d+)$`), (weeks) => weeks);
  const strengthOn = (lift: string) => named(new RegExp(`^${lift}_strength_(\\d+)$`), (left) => left);

  for (const { lift, phase, weeks } of pins.phaseWeeks) {
    if (phase === "hypertrophy") programme.hold(strengthOn(lift), length - weeks, length - weeks);
    if (phase === "strength") programme.hold(sumOf([1, strengthOn(lift)], [-1, peaking(lift)]), weeks, weeks);
    if (phase === "peaking") programme.hold(peaking(lift), weeks, weeks);
  }
  for (const { lift, phase, weeksToMeet } of pins.weekPhases) {
    if (weeksToMeet >= length) never();
    const reached: readonly [number, number] = [weeksToMeet + 1, Infinity];
    const notYet: readonly [number, number] = [-Infinity, weeksToMeet];
    programme.hold(peaking(lift), ...(phase === "peaking" ? reached : notYet));
    programme.hold(strengthOn(lift), ...(phase === "hypertrophy" ? notYet : reached));
  }
  for (const { weeksToMeet, kind } of pins.weekKinds) {
    const isDirected = weeksToMeet < length;
    if (isDirected === (kind === "bridge")) never();
    if (kind === "bridge") continue;
    const endsHere = named(/^meso_(\d+)_(\d+)$/, (left, weeks) => (left - weeks === weeksToMeet ? 1 : 0));
    programme.hold(endsHere, kind === "deload" ? 1 : 0, kind === "deload" ? 1 : 0);
  }
  for (const { number, hardWeeks } of pins.mesocycles) {
    if (number === 1) programme.hold(arc(length, hardWeeks), 1, 1);
    else if (number === 2) {
      for (let first = 1; first < length; first++) {
        programme.hold(sumOf([1, arc(length - first - 1, hardWeeks)], [-1, arc(length, first)]), 0, Infinity);
      }
    } else throw new Error(`Not stated here: a pin of mesocycle ${number}`);
  }
}
