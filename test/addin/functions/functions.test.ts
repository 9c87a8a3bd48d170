import { planLifter, PHASES, type Planned } from "../../../engine/index";
import {
  check,
  hardWeeks,
  level,
  phaseOn,
  phaseWeeks,
  prepWeeks,
  weekGrid,
} from "../../../addin/functions/functions";
import { lateStarter, LIFTER_NAMES, longHorizon, smallMan, tiredGiant } from "../../lifters/index";
import { HEADINGS_ROW, REQUESTS, ROWS, serial, toCells } from "./roster";

const ANSWERS = REQUESTS.map((request) => planLifter(request));
const LATE = LIFTER_NAMES.indexOf("lateStarter");
const headed = (rows: unknown[][]) => [HEADINGS_ROW, ...rows];
/** The same lifters with their columns in the opposite order. */
const reversed = (rows: unknown[][]) => rows.map((row) => [...row].reverse());

const isRectangle = (cells: unknown[][]) =>
  cells.length > 0 && cells.every((row) => row.length === cells[0]!.length && row.length > 0);

test("the fixture lifters are what these tests take them for", () => {
  expect(ROWS.length).toBeGreaterThanOrEqual(8);
  expect(ANSWERS.filter(({ status }) => status === "planned").length).toBe(ROWS.length - 1);
  expect(ANSWERS[LATE]!.status).toBe("doesNotFit");
});

test("hard weeks of the lifters the trade's rules name", () => {
  const given = Object.fromEntries(hardWeeks(ROWS).map(([count], index) => [LIFTER_NAMES[index], count]));
  expect(given).toMatchObject({ tiredGiant: 2, heavyMan: 3, beginnerMan: 5, newLightWoman: 6 });
  expect([3, 4]).toContain(given["middleweightWoman"]);
  expect([4, 5]).toContain(given["smallMan"]);
});

describe("one result row a lifter", () => {
  const FORMS: readonly (readonly [string, unknown[][], unknown[][] | null])[] = [
    ["without headings", ROWS, null],
    ["with a heading row", headed(ROWS), null],
    ["with its columns in another order", reversed(headed(ROWS)), null],
    ["with separate headings", reversed(ROWS), reversed([HEADINGS_ROW])],
    [
      "with dates as text",
      REQUESTS.map((r) => toCells(r).map((c, i) => (i === 11 ? r["startDate"] : c))),
      null,
    ],
  ];

  test.each(FORMS)("%s", (_, rows, headings) => {
    const given = headings as unknown[][];
    const counts = { squat: phaseWeeks(rows, "squat", given), bench: phaseWeeks(rows, "bench", given) };
    const [levels, hard, weeks, checked] = [level, hardWeeks, prepWeeks, check].map((each) =>
      each(rows, given),
    );
    for (const cells of [levels, hard, weeks, checked, counts.squat, counts.bench]) {
      expect(cells).toHaveLength(ROWS.length);
    }
    ANSWERS.forEach((answer, index) => {
      if (answer.status === "invalid") throw new Error("a fixture lifter is invalid");
      const { assessment } = answer;
      expect(levels![index]).toEqual([assessment.level]);
      expect(hard![index]).toEqual([assessment.hardWeeks]);
      const { least, most } = assessment.prepRange;
      expect(weeks![index]!.slice(0, 2)).toEqual([least, most]);
      if (answer.status !== "planned") return;
      expect(weeks![index]![2]).toBe(answer.plan.directedWeeks);
      for (const lift of ["squat", "bench"] as const) {
        expect(counts[lift][index]).toEqual(PHASES.map((phase) => answer.plan.lifts[lift][phase]));
      }
    });
  });
});

test("phase weeks are the squat's where no lift is named, and a lift may be written in any case", () => {
  const rows = [ROWS[1]!, ROWS[2]!];
  const omitted = null as unknown as string;
  expect(phaseWeeks(rows, omitted)).toEqual(phaseWeeks(rows, "squat"));
  expect(phaseWeeks(rows, " Deadlift ")).toEqual(phaseWeeks(rows, "deadlift"));
  expect(phaseWeeks(rows, [["BENCH"]] as unknown as string)).toEqual(phaseWeeks(rows, "bench"));
  expect(phaseWeeks(rows, "deadlift")).not.toEqual(phaseWeeks(rows, "squat"));
});

test("an unknown lift is told in every row", () => {
  for (const cells of [phaseWeeks(ROWS, "row"), phaseOn(ROWS, [["2027-04-01"]], "row")]) {
    expect(cells).toHaveLength(ROWS.length);
    for (const [first] of cells) expect(first).toBe('Lift: given "row"; allowed: squat, bench or deadlift.');
    expect(isRectangle(cells)).toBe(true);
  }
});

describe("where no plan fits", () => {
  const rows = [toCells(lateStarter)];
  const answer = planLifter(lateStarter);
  if (answer.status !== "doesNotFit") throw new Error("the late starter fits");

  test("the assessment stands all the same", () => {
    expect(level(rows)).toEqual([[answer.assessment.level]]);
    expect(prepWeeks(rows)[0]![2]).toBe("does not fit");
  });

  test("plan functions say so with the earliest meet day", () => {
    // 2027-05-24 is a Monday.
    expect(answer.nearest.earliestMeetDate).toBe("2027-05-24");
    const reason = "Does not fit: the earliest meet day that does is Mon 24 May 2027.";
    expect(phaseWeeks(rows)).toEqual([[reason, "", ""]]);
    expect(phaseOn(rows, [["2027-05-01"]])).toEqual([[reason]]);
    expect(weekGrid(rows)).toEqual([[reason]]);
    expect(check(rows)[0]![0]).toMatch(/^No plan fits in the 3 weeks/);
  });
});

describe("PHASEON", () => {
  const row = toCells(longHorizon);
  const { plan } = planLifter(longHorizon) as Planned;
  const on = (day: unknown, lift?: string) => phaseOn([row], [[day]], lift)[0]![0];

  test("every day of every week, its kind put aside", () => {
    expect(plan.bridgeWeeks).toBeGreaterThan(0);
    for (const { startDate, phase, weeksToMeet } of plan.weeks) {
      const first = serial(startDate);
      const days = weeksToMeet === 0 ? [first, serial(plan.meetDate)] : [first, first + 6, first + 6.5];
      for (const day of days) {
        expect(on(day)).toBe(phase?.squat ?? "bridge");
        expect(on(day, "bench")).toBe(phase?.bench ?? "bridge");
      }
    }
  });

  test("outside the plan", () => {
    expect(on("2027-01-03")).toBe("before the start");
    expect(on("2027-01-04")).toBe("bridge");
    expect(on("2027-06-26")).toBe("peaking");
    expect(on("2027-06-27")).toBe("after the meet");
  });

  test("a column of days, one a row, its heading allowed", () => {
    const rows = [row, toCells(smallMan), ["", "", ""]];
    const days = [["2027-01-03"], [serial("2027-05-14")], [""]];
    const wanted = [["before the start"], ["peaking"], [""]];
    expect(phaseOn(rows, days)).toEqual(wanted);
    expect(phaseOn([HEADINGS_ROW, ...rows], [["Day"], ...days])).toEqual(wanted);
    expect(phaseOn([HEADINGS_ROW, ...rows], days)).toEqual(wanted);
  });

  test("days that are none, or do not pair up", () => {
    expect(on("soon")).toBe('Day: given "soon"; allowed: a date, as yyyy-mm-dd such as 2027-05-15.');
    expect(on("2027-02-30")).toMatch(/^Day: given "2027-02-30"; allowed/);
    expect(on("")).toMatch(/^Day: blank; allowed/);
    expect(on(2027)).toMatch(/^Day: given 2027; allowed/);
    expect(phaseOn([row, row, row], [["2027-01-01"], ["2027-01-02"]])).toEqual(
      Array(3).fill(["Day: given 2 days for 3 rows; allowed: one day, or one a row."]),
    );
  });
});

describe("WEEKGRID", () => {
  test("one row a week under headings", () => {
    const { plan } = planLifter(longHorizon) as Planned;
    const cells = weekGrid([HEADINGS_ROW, toCells(longHorizon)]);
    expect(cells[0]).toEqual([
      "Week",
      "Starts",
      "Weeks to meet",
      "Mesocycle",
      "Kind",
      "Squat",
      "Bench",
      "Deadlift",
    ]);
    expect(cells).toHaveLength(plan.weeks.length + 1);
    expect(cells[1]).toEqual([1, "2027-01-04", 24, "", "bridge", "", "", ""]);
    expect(cells.at(-1)).toEqual([25, "2027-06-21", 0, 3, "meet", "peaking", "peaking", "peaking"]);
    expect(isRectangle(cells)).toBe(true);
  });

  test("one lifter only", () => {
    expect(weekGrid(ROWS.slice(0, 3))).toEqual([["Row: given 3 lifters; allowed: one lifter's row."]]);
    expect(weekGrid([HEADINGS_ROW])).toEqual([[expect.stringMatching(/^No lifters/)]]);
    expect(weekGrid([["", ""], toCells(tiredGiant)])[0]![0]).toBe("Week");
  });
});

test("no rows: a message in a rectangle", () => {
  for (const rows of [[], [HEADINGS_ROW], null as unknown as unknown[][]]) {
    for (const cells of [
      level(rows),
      hardWeeks(rows),
      prepWeeks(rows),
      phaseWeeks(rows),
      phaseOn(rows, [["2027-01-01"]]),
      check(rows),
    ]) {
      expect(cells[0]![0]).toMatch(/^No lifters/);
      expect(isRectangle(cells)).toBe(true);
    }
  }
});

test("arguments as other hosts hand them over: single values, one-cell ranges, zeros for blanks", () => {
  const blanksAsZero = ROWS.map((row) => row.map((cell) => (cell === "" ? 0 : cell)));
  expect(phaseWeeks(blanksAsZero)).toEqual(phaseWeeks(ROWS));
  expect(check(blanksAsZero)).toEqual(check(ROWS));
  expect(level("Ann" as unknown as unknown[][])[0]![0]).toMatch(/^Sex: blank/);
  expect(phaseOn(ROWS, "2027-01-01" as unknown as unknown[][])).toEqual(phaseOn(ROWS, [["2027-01-01"]]));
});

test("10,000 rows at once, a bad one among them", () => {
  const rows = Array.from({ length: 10000 }, (_, index) => (index === 5000 ? ["x"] : ROWS[index % 8]!));
  const cells = phaseWeeks(rows);
  expect(cells).toHaveLength(10000);
  expect(isRectangle(cells)).toBe(true);
  expect(cells[5000]![0]).toMatch(/^Sex: blank/);
  const words = cells.map((row) => row.join());
  const strays = words.filter((word, index) => index !== 5000 && word !== words[index % 8]);
  expect(strays).toEqual([]);
}, 120_000);
