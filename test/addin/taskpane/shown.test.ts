import { announce, whyNotWrite } from "../../../addin/taskpane/state/announcement";
import { choosePlan, openForm, typeInto, type FormState } from "../../../addin/taskpane/state/form-state";
import { keyOf } from "../../../addin/taskpane/state/offers";
import { refusedFields } from "../../../addin/taskpane/state/problems";
import { showPlan, type Shown } from "../../../addin/taskpane/state/shown";

const opened = openForm("2026-11-25");

function shownAs<K extends Shown["kind"]>(form: FormState, kind: K): Extract<Shown, { kind: K }> {
  const shown = showPlan(form);
  if (shown.kind !== kind) throw new Error(`Shown as ${shown.kind}: ${announce(shown)}`);
  return shown as Extract<Shown, { kind: K }>;
}

test("a first-time user sees a plan of sixteen weeks without a problem", () => {
  const shown = shownAs(opened, "planned");
  expect(shown.answer.plan.weeks).toHaveLength(16);
  expect(shown.answer.plan.weeks.at(-1)).toMatchObject({ kind: "meet", startDate: "2027-03-15" });
  expect(shown.problems).toEqual({ byField: {}, other: [] });
  expect(shown.words.every((line) => line.length > 20)).toBe(true);
  expect(whyNotWrite(shown)).toBeNull();
});

test("the training caution is always among the cautions", () => {
  const cautions = shownAs(opened, "planned").cautions;
  expect(cautions.length).toBeGreaterThan(0);
  expect(cautions.every((text) => text.length > 20)).toBe(true);
});

test("every reason has a title and a because, and every source without print its standing", () => {
  const { reasons, answer } = shownAs(opened, "planned");
  expect(reasons).toHaveLength(answer.decisions.length);
  for (const reason of reasons) {
    expect(reason.title).not.toBe("");
    expect(reason.because.length).toBeGreaterThan(0);
  }
  const sources = reasons.flatMap((reason) => reason.sources);
  expect(sources).toContain("common practice");
  expect(sources.some((source) => source.startsWith("our choice: "))).toBe(true);
});

test("a runner-up chosen becomes the plan shown; one that is gone gives way to the first", () => {
  const first = shownAs(opened, "planned");
  expect(first.offers.length).toBeGreaterThan(1);
  expect(first.offers.map((offer) => offer.chosen).indexOf(true)).toBe(0);
  const other = first.offers[1]!;
  const shown = shownAs(choosePlan(opened, other.key), "planned");
  expect(keyOf(shown.answer.plan)).toBe(other.key);
  expect(keyOf(shown.answer.plan)).not.toBe(keyOf(first.answer.plan));
  expect(shown.offers.map((offer) => offer.chosen).indexOf(true)).toBe(1);
  const gone = shownAs(choosePlan(opened, "no such plan"), "planned");
  expect(gone.answer.plan).toEqual(first.answer.plan);
});

test("offers of one answer have keys of their own", () => {
  const keys = shownAs(opened, "planned").offers.map((offer) => keyOf(offer.plan));
  expect(new Set(keys).size).toBe(keys.length);
});

test("problems stand beside their fields and block writing, all at once", () => {
  const bad = typeInto(typeInto(typeInto(opened, "squatKg", "142,5"), "sex", ""), "bodyweightKg", "-3");
  const shown = shownAs(bad, "invalid");
  expect(refusedFields(shown.problems)).toEqual(["sex", "bodyweightKg", "squatKg"]);
  expect(shown.problems.byField.squatKg![0]!.text).toMatch(/142,5.*142\.5/);
  expect(whyNotWrite(shown)).toBe("Mend first: Sex, Bodyweight, Squat.");
  expect(announce(shown)).toBe("No plan yet. Mend first: Sex, Bodyweight, Squat.");
});

test("an absurd best is questioned beside its field and still planned", () => {
  const shown = shownAs(typeInto(opened, "deadliftKg", "620"), "planned");
  expect(shown.problems.byField.deadliftKg).toMatchObject([{ severity: "questioned" }]);
  expect(refusedFields(shown.problems)).toEqual([]);
});

test("too few weeks do not fit, and the days offered do", () => {
  const tight = typeInto(opened, "meetDate", "2026-12-12");
  const shown = shownAs(tight, "doesNotFit");
  const { earliestMeetDate, latestStartDate } = shown.answer.nearest;
  expect(shown.words.length).toBeGreaterThan(0);
  expect(whyNotWrite(shown)).toMatch(/No plan fits/);
  shownAs(typeInto(tight, "meetDate", earliestMeetDate!), "planned");
  shownAs(typeInto(tight, "startDate", latestStartDate!), "planned");
});

test("a fault of ours is shown as ours, with what to do", () => {
  const shown = shownAs({ ...opened, typed: null as never }, "fault");
  expect(shown.fault.title).toMatch(/Meetward itself failed/);
  expect(shown.fault.advice).toMatch(/fault of the add-in, not of what you typed/);
  expect(shown.fault.details).not.toBe("");
  expect(whyNotWrite(shown)).toMatch(/fault of the add-in/);
});
