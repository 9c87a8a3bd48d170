/**
 * A real spreadsheet program for the tests: LibreOffice, the installed one where the machine has it, else the one an npm
 * package carries as WebAssembly, in a process of its own. It opens a workbook's bytes, recalculates every formula
 * written without a result, and saves in another format.
 */
import { spawn, type ChildProcessByStdio } from "node:child_process";
import { mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { createInterface, type Interface } from "node:readline";
import { Readable, type Writable } from "node:stream";
import ExcelJS from "exceljs";
import { convertByCommand, findInstalledProgram } from "./installed";

export type Format = "xlsx" | "pdf" | "png" | "csv" | "ods";
type Answer = { ok: true } | { error: string };

/** Now and then the WebAssembly program never comes up, or stops answering; a new one then takes its place. */
const TRIES = 5;
const START_MS = 45_000;
const CONVERT_MS = 60_000;

export class SpreadsheetProgram {
  private files = 0;
  private running: Running | null = null;

  private constructor(
    private readonly folder: string,
    private readonly command: string | null,
  ) {}

  /** Starts in three to ten seconds, by the machine. */
  static async start(): Promise<SpreadsheetProgram> {
    const folder = await mkdtemp(path.join(tmpdir(), "meetward-sheets-"));
    const program = new SpreadsheetProgram(folder, findInstalledProgram());
    if (program.command === null) await program.insist("start", async () => void (await program.up()));
    return program;
  }

  async convert(xlsx: Uint8Array, format: Format): Promise<Uint8Array> {
    const number = ++this.files;
    const input = path.join(this.folder, `book${number}.xlsx`);
    const output = path.join(this.folder, "saved", `book${number}.${format}`);
    await mkdir(path.dirname(output), { recursive: true });
    await writeFile(input, xlsx);
    await this.insist(`convert to ${format}`, () => this.save(input, output, format));
    return new Uint8Array(await readFile(output));
  }

  private async save(input: string, output: string, format: Format): Promise<void> {
    if (this.command !== null) return convertByCommand(this.command, input, output, this.folder);
    const { child, answers } = await this.up();
    child.stdin.write(`${JSON.stringify({ input, output, format })}\n`);
    await answerWithin(answers, CONVERT_MS);
  }

  /** The workbook after the program recalculated it, read by an independent reader. */
  async recalculate(xlsx: Uint8Array): Promise<ExcelJS.Workbook> {
    return readWorkbook(await this.convert(xlsx, "xlsx"));
  }

  async stop(): Promise<void> {
    this.kill();
    await rm(this.folder, { recursive: true, force: true });
  }

  private async up(): Promise<Running> {
    if (this.running === null) {
      const file = path.join(__dirname, "converter.cjs");
      const child = spawn(process.execPath, [file], { stdio: ["pipe", "pipe", "ignore"], detached: true });
      this.running = { child, answers: readAnswers(createInterface({ input: child.stdout })) };
      await answerWithin(this.running.answers, START_MS);
    }
    return this.running;
  }

  private async insist(what: string, act: () => Promise<void>): Promise<void> {
    for (let tried = 1; ; tried++) {
      try {
        return await act();
      } catch (error) {
        this.kill();
        if (tried === TRIES) throw new Error(`The spreadsheet program could not ${what}: ${String(error)}`);
      }
    }
  }

  /** The program's own worker is in the child's process group. */
  private kill(): void {
    const pid = this.running?.child.pid;
    this.running = null;
    try {
      if (pid !== undefined) process.kill(-pid, "SIGKILL");
    } catch {
      // It has ended by itself.
    }
  }
}

interface Running {
  readonly child: ChildProcessByStdio<Writable, Readable, null>;
  readonly answers: AsyncIterator<Answer>;
}

async function answerWithin(answers: AsyncIterator<Answer>, ms: number): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_resolve, reject) => {
    timer = setTimeout(() => reject(new Error(`no answer within ${ms} ms`)), ms);
  });
  try {
    const { value, done } = await Promise.race([answers.next(), late]);
    if (done) throw new Error("it ended");
    if ("error" in value) throw new Error(value.error);
  } finally {
    clearTimeout(timer);
  }
}

/** Answers are the lines that begin with "@"; the program prints others of its own. */
async function* readAnswers(lines: Interface): AsyncGenerator<Answer> {
  for await (const line of lines) if (line.startsWith("@")) yield JSON.parse(line.slice(1)) as Answer;
}

/** Reads a workbook's bytes by a library that had no part in writing them. */
export async function readWorkbook(xlsx: Uint8Array): Promise<ExcelJS.Workbook> {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.read(Readable.from(Buffer.from(xlsx)));
  return workbook;
}

/** What a cell shows: a formula's result in place of the formula. */
export function shownValue(cell: ExcelJS.Cell): ExcelJS.CellValue {
  const { value } = cell;
  if (value !== null && typeof value === "object" && ("formula" in value || "sharedFormula" in value)) {
    // The reader's own `value` loses a result of 0 or "".
    return cell.result ?? null;
  }
  return value;
}
