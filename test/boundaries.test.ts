/** The arrows between the rooms, read off the import lines. */
import { readFileSync, readdirSync } from "node:fs";
import path from "node:path";

const ROOT = path.join(__dirname, "..");

function filesOf(folder: string): string[] {
  return readdirSync(path.join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const at = path.posix.join(folder, entry.name);
    if (entry.isDirectory()) return filesOf(at);
    return /\.tsx?$/.test(entry.name) ? [at] : [];
  });
}

interface Import {
  readonly file: string;
  /** A package's name, or the file's path from the root. */
  readonly target: string;
}

function importsOf(file: string): Import[] {
  const text = readFileSync(path.join(ROOT, file), "utf8");
  const found = [
    ...text.matchAll(
      /^\s*(?:import|export)\s[^;]*?from\s+"([^"]+)"|^\s*import\s+"([^"]+)"|\bimport\("([^"]+)"\)/gms,
    ),
  ];
  return found.map((match) => {
    const to = (match[1] ?? match[2] ?? match[3])!;
    return { file, target: to.startsWith(".") ? path.posix.join(path.posix.dirname(file), to) : to };
  });
}

const engine = filesOf("engine").flatMap(importsOf);
const addin = filesOf("addin").flatMap(importsOf);
const breaches = (imports: Import[], isWrong: (one: Import) => boolean) =>
  imports.filter(isWrong).map(({ file, target }) => `${file} -> ${target}`);
const isOurs = (target: string) => /^(engine|addin|test)\b/.test(target);

test("there are imports to judge", () => {
  expect(engine.length).toBeGreaterThan(50);
  expect(addin.length).toBeGreaterThan(100);
});

test("the engine imports zod in request.ts, date-fns in calendar/, and nothing else", () => {
  const allowed = ({ file, target }: Import) =>
    target.startsWith("engine/") ||
    (target === "zod" && file === "engine/request.ts") ||
    (target === "date-fns" && file.startsWith("engine/calendar/"));
  expect(breaches(engine, (one) => !allowed(one))).toEqual([]);
});

test("search, calendar and units import nothing of ours but their own room", () => {
  const rooms = ["engine/search/", "engine/calendar/", "engine/units.ts"];
  const wrong = ({ file, target }: Import) => {
    const room = rooms.find((each) => file.startsWith(each));
    return room !== undefined && isOurs(target) && !target.startsWith(room);
  };
  expect(breaches(engine, wrong)).toEqual([]);
});

test("the rooms of stages do not import one another's stages, but for the phases' own parts", () => {
  const stages = ["assessment", "mesocycles", "phases", "weeks"];
  const roomOf = (file: string) => stages.find((room) => file.startsWith(`engine/${room}/`));
  const wrong = ({ file, target }: Import) => {
    const [from, to] = [roomOf(file), roomOf(target)];
    return from !== undefined && to !== undefined && from !== to && target !== "engine/phases/phase-at";
  };
  expect(breaches(engine, wrong)).toEqual([]);
});

test("the add-in comes in by the engine's door", () => {
  const wrong = ({ target }: Import) => /^engine\b/.test(target) && !/^engine(\/index)?$/.test(target);
  expect(breaches(addin, wrong)).toEqual([]);
});

test("sheets never import a workbook; workbooks never import the engine", () => {
  const wrong = ({ file, target }: Import) =>
    (file.startsWith("addin/sheets/") && target.startsWith("addin/workbook")) ||
    (file.startsWith("addin/workbook/") && !isBenchPage(file) && /^engine\b/.test(target));
  expect(breaches(addin, wrong)).toEqual([]);
});

/** The bench page puts the rooms together; the port beside it does not. */
const isBenchPage = (file: string) => /^addin\/workbook\/bench\/(page|demo)\.ts$/.test(file);

test("the engine has no clock and no chance; only addin/read tells the time", () => {
  const clock = /Date\.now|Math\.random|new Date\(/;
  const wrong = [...filesOf("engine"), ...filesOf("addin")].filter(
    (file) =>
      clock.test(readFileSync(path.join(ROOT, file), "utf8")) &&
      !file.startsWith("engine/calendar/") &&
      !file.startsWith("addin/read/"),
  );
  expect(wrong).toEqual([]);
});

test("only the Excel port says Excel", () => {
  const wrong = filesOf("addin").filter(
    (file) =>
      /\bExcel\.[a-zA-Z]/.test(readFileSync(path.join(ROOT, file), "utf8")) &&
      !file.startsWith("addin/workbook/excel/"),
  );
  expect(wrong).toEqual([]);
});
