import {
  changeUnit,
  choosePlan,
  conversionHint,
  openForm,
  typeInto,
  type FormState,
} from "../../../addin/taskpane/state/form-state";

const opened = openForm("2026-11-25");
const typed = (texts: Partial<FormState["typed"]>): FormState => ({
  ...opened,
  typed: { ...opened.typed, ...texts },
});

test("typing keeps the text as typed and touches nothing else", () => {
  const after = typeInto(opened, "squatKg", "142,5");
  expect(after.typed).toEqual({ ...opened.typed, squatKg: "142,5" });
  expect(after.choice).toBeNull();
});

test("a change of unit converts masses by the exact pound and leaves the rest", () => {
  // 1 lb = 0.45359237 kg, so 100 kg = 220.462 lb and 83 kg = 182.983 lb.
  const lb = changeUnit(typed({ squatKg: "100", bodyweightKg: "83", trainingYears: "4" }), "lb");
  expect(lb.unit).toBe("lb");
  expect(lb.typed).toMatchObject({ squatKg: "220.5", bodyweightKg: "182.98", trainingYears: "4" });
  expect(changeUnit(typed({ classLimitKg: "120+" }), "lb").typed.classLimitKg).toBe("264.55+");
});

test.each(["66", "74", "83", "93", "105", "47", "52", "57", "63", "69", "76", "84"])(
  "a bodyweight of %s kg at its class limit never converts to more",
  (limit) => {
    const lb = changeUnit(typed({ bodyweightKg: limit }), "lb").typed.bodyweightKg;
    expect(Number(lb) * 0.45359237).toBeLessThanOrEqual(Number(limit));
    expect(Number(lb) * 0.45359237).toBeGreaterThan(Number(limit) - 0.01);
  },
);

test("changing straight back restores what was typed, but for what was typed since", () => {
  const lb = changeUnit(typed({ squatKg: "142.50", benchKg: "77.5" }), "lb");
  expect(changeUnit(lb, "kg").typed.squatKg).toBe("142.50");
  const edited = typeInto(lb, "benchKg", "200");
  expect(changeUnit(edited, "kg").typed).toMatchObject({ squatKg: "142.50", benchKg: "90.7" });
});

test("text that is no number is never converted", () => {
  const lb = changeUnit(typed({ squatKg: "142,5", benchKg: "", deadliftKg: "heavy" }), "lb");
  expect(lb.typed).toMatchObject({ squatKg: "142,5", benchKg: "", deadliftKg: "heavy" });
});

test("a conversion is said, and only while a converted number stands", () => {
  expect(conversionHint(opened)).toBeNull();
  const lb = changeUnit(typed({ bodyweightKg: "", benchKg: "", deadliftKg: "", squatKg: "100" }), "lb");
  expect(conversionHint(lb)).toMatch(/from kg to lb/);
  expect(conversionHint(typeInto(lb, "squatKg", "225"))).toBeNull();
  expect(changeUnit(lb, "lb")).toBe(lb);
});

test("a choice of plan stays while the form changes", () => {
  expect(typeInto(choosePlan(opened, "0-4-4"), "lifter", "Ines").choice).toBe("0-4-4");
});
