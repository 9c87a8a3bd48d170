/** Rosters as .csv files, good and bad. */
import { LIFTERS, smallMan, type RawRequest } from "../../lifters/index";
import { call, callJson, put, removeFolder } from "./call";

afterAll(removeFolder);

const FIELDS = Object.keys(smallMan);
const quoted = (value: unknown) => `"${String(value ?? "").replaceAll('"', '""')}"`;
const line = (request: RawRequest, delimiter = ",") =>
  FIELDS.map((field) => quoted(request[field])).join(delimiter);
const csv = (requests: readonly RawRequest[], head = FIELDS.join(","), ending = "\r\n") =>
  put([head, ...requests.map((each) => line(each)), ""].join(ending), ".csv");
const statuses = (answers: readonly { status: string }[]) => answers.map(({ status }) => status);
/** An answer without what depends on its place. */
const bare = ({ row: _, ...answer }: { row: number }) => answer;

test("a roster answers as the same requests do", async () => {
  const requests = Object.values(LIFTERS).map((each) => Object.fromEntries(FIELDS.map((f) => [f, each[f]])));
  const answers = await callJson(csv(requests as RawRequest[]));
  const wanted = await callJson(put(JSON.stringify(requests), ".json"));
  expect(answers.map(({ row }: { row: number }) => row)).toEqual([2, 3, 4, 5, 6, 7, 8, 9]);
  expect(answers.map(bare)).toEqual(wanted.map(bare));
});

test("semicolons, a byte-order mark, headings in words, dates as serial numbers", async () => {
  // 46412 is 2027-01-25 and 46522 is 2027-05-15.
  const text =
    "\ufeffName;Sex;Bodyweight (kg);Years;Squat;Bench;Deadlift;Start;Meet\r\nTeo Lindqvist;Male;65.2;3.5;150;97.5;185;46412;46522\r\n";
  const [answer] = await callJson(put(text, ".csv"));
  expect(answer).toMatchObject({ status: "planned", row: 2, lifter: "Teo Lindqvist" });
  expect(answer.weeks[0].startDate).toBe("2027-01-25");
  expect(answer.weeks.at(-1).startDate).toBe("2027-05-10");
});

test("pounds by heading", async () => {
  const head = FIELDS.map((field) => (field === "squatKg" ? "Squat (lb)" : field)).join(",");
  const pounds = {
    ...smallMan,
    bodyweightKg: 144,
    classLimitKg: 146,
    squatKg: 330,
    benchKg: 215,
    deadliftKg: 408,
  };
  const [answer] = await callJson(csv([pounds], head));
  expect(answer.status).toBe("planned");
  // 330 + 215 + 408 = 953 lb, at 0.45359237 kg each.
  expect(answer.assessment.totalKg).toBeCloseTo(432.27, 2);
});

test.each([
  ["UTF-16", Buffer.from("\ufeffLifter,Sex\r\nJosé,male\r\n", "utf16le")],
  ["Windows-1252", Buffer.from("Lifter,Sex\r\nJosé,male\r\n", "latin1")],
  ["UTF-8", Buffer.from("Lifter,Sex\r\nJosé,male\r\n", "utf8")],
])("names survive in %s", async (_, bytes) => {
  const [answer] = await callJson(put(bytes, ".csv"));
  expect(answer.lifter).toBe("José");
});

test("a bad row leaves its neighbours alone, and every message names its row", async () => {
  const bad = [
    { ...smallMan, sex: "" },
    { ...smallMan, bodyweightKg: "65,2" },
    { ...smallMan, squatKg: "many" },
    { ...smallMan, meetDate: "2027-02-30" },
    { ...smallMan, meetDate: "2026-12-31" },
    { ...smallMan, benchKg: -5 },
    { ...smallMan, squatKg: 0 },
    { ...smallMan, classLimitKg: 59 },
  ];
  const answers = await callJson(csv([smallMan, ...bad.flatMap((each) => [each, smallMan])]));
  expect(answers).toHaveLength(17);
  answers.forEach(
    (answer: { status: string; problems: { message: string; field: string }[] }, index: number) => {
      if (index % 2 === 0) return expect(bare(answer as never)).toEqual(bare(answers[0]));
      expect(answer.status).toBe("invalid");
      expect(answer.problems).toHaveLength(1);
      expect(answer.problems[0]!.message).toMatch(new RegExp(`^Row ${index + 2}: [A-Z].*allowed: .`));
    },
  );
  const fields = answers.flatMap(({ problems }: { problems: { field: string }[] }) =>
    problems.map((p) => p.field),
  );
  expect(fields).toEqual([
    "sex",
    "bodyweightKg",
    "squatKg",
    "meetDate",
    "meetDate",
    "benchKg",
    "squatKg",
    "classLimitKg",
  ]);
});

test("names with formulas, quotes, emoji, 300 characters and line breaks come back as they are", async () => {
  const names = [
    '=HYPERLINK("x")',
    'Ann "the bar" O\'Neil',
    "🏋️ Zoë",
    "x".repeat(300),
    "two\nlines",
    "+1",
    "007",
  ];
  const answers = await callJson(csv(names.map((lifter) => ({ ...smallMan, lifter }))));
  expect(answers.map(({ lifter }: { lifter: string }) => lifter)).toEqual(names);
  expect(statuses(answers)).toEqual(names.map(() => "planned"));
});

test("an escape sequence in a name does not reach the terminal", async () => {
  const { out } = await call([csv([{ ...smallMan, lifter: "\u001b[31mred" }])]);
  expect(out).not.toContain("\u001b");
  expect(out).toContain("[31mred");
});

test("blank lines are passed over and counted", async () => {
  const file = put(`${FIELDS.join(",")}\n\n${line(smallMan)}\n,,,\n${line(smallMan)}\n\n`, ".csv");
  const answers = await callJson(file);
  expect(answers.map(({ row }: { row: number }) => row)).toEqual([3, 5]);
});

test("unknown headings are told once; contradicting ones in every row", async () => {
  const odd = await call([
    csv([smallMan, smallMan], FIELDS.join(",").replace("recovery", "Shoe size")),
    "--json",
  ]);
  expect(odd.code).toBe(0);
  expect(odd.err.match(/Shoe size/g)).toHaveLength(1);
  expect(odd.out).not.toContain("Shoe size");
  expect(statuses(JSON.parse(odd.out))).toEqual(["planned", "planned"]);

  const double = await call([
    csv([smallMan, smallMan], FIELDS.join(",").replace("recovery", "Squat")),
    "--json",
  ]);
  expect(double.code).toBe(0);
  for (const answer of JSON.parse(double.out)) {
    expect(answer.status).toBe("invalid");
    expect(answer.problems[0].message).toMatch(
      /^Row \d: Squat: given the headings "squatKg" and "Squat"; allowed/,
    );
  }
});

test.each([
  ["an empty file", ""],
  ["headings alone", FIELDS.join(",")],
  ["blank lines", "\n\n,,\n"],
])("no lifters: %s", async (_, text) => {
  const told = await call([put(text, ".csv"), "--json"]);
  expect(told.code).toBe(0);
  expect(JSON.parse(told.out)).toEqual([]);
  expect(told.err).toMatch(/no lifters in it/);
});

test("no lifters: an empty list", async () => {
  const told = await call([put(" [ ] ", ".json")]);
  expect(told).toMatchObject({ code: 0, out: "[]\n" });
  expect(told.err).toMatch(/no lifters in it/);
});

test("10,000 rows, and a line that counts them on a terminal", async () => {
  // Invalid rows, for speed: what is tried here is the reading and the printing.
  const file = csv(Array.from({ length: 10000 }, () => ({ ...smallMan, sex: "x" })));
  const told = await call([file, "--json"], { out: false, err: true });
  expect(told.code).toBe(0);
  expect(JSON.parse(told.out)).toHaveLength(10000);
  expect(told.err).toContain("5000 of 10000 rows");
  expect((await call([file, "--json"])).err).toBe("");
});

test("a short run shows no counting", async () => {
  expect((await call([csv([smallMan])], { out: true, err: true })).err).toBe("");
});
