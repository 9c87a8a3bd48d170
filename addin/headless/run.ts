/** The headless run from arguments to exit code, with the streams handed in. */
import { answerRow, type RowAnswer } from "../read/answer-row";
import { readArguments, USAGE, type Call } from "./arguments";
import { BadCall } from "./bad-call";
import { toJson } from "./json";
import { startProgress } from "./progress";
import { readRoster, type Roster } from "./read-file";
import { CLOSING, toText } from "./text";
import { refuseTarget, writeWorkbook } from "./write-workbook";

export interface Streams {
  /** Settles when more can be written. */
  readonly out: (text: string) => Promise<void>;
  readonly err: (text: string) => void;
  /** Whether each is a terminal; `err` can then redraw a line. */
  readonly terminal: { readonly out: boolean; readonly err: boolean };
}

/** @returns 0 when all rows were answered, whatever the answers; 2 for a call or a file that is no good. */
export async function run(given: readonly string[], streams: Streams): Promise<0 | 2> {
  try {
    const call = readArguments(given);
    if (call === null) await streams.out(`${USAGE}\n`);
    else await answerCall(call, streams);
    return 0;
  } catch (problem) {
    if (!(problem instanceof BadCall)) throw problem;
    streams.err(`${problem.message}\n`);
    return 2;
  }
}

async function answerCall(call: Call, streams: Streams): Promise<void> {
  if (call.out !== null) refuseTarget(call.out, call.force);
  const roster = readRoster(call.file);
  for (const notice of roster.notices) streams.err(`${notice}\n`);
  if (roster.rows.length === 0) {
    streams.err(`${call.file}: no lifters in it${call.out === null ? "" : "; no workbook is written"}.\n`);
    await streams.out("[]\n");
    return;
  }
  const kept = await answerRows(roster, call, streams);
  if (call.out === null) return;
  await writeWorkbook(kept, call.out, call.force);
  streams.err(`Wrote ${call.out}.\n`);
}

/** Prints each answer as soon as it is there, and keeps it only where a workbook needs it: rosters can be long. */
async function answerRows({ rows, isSingle }: Roster, call: Call, streams: Streams): Promise<RowAnswer[]> {
  const kept: RowAnswer[] = [];
  const progress = startProgress(rows.length, streams.terminal.err, streams.err);
  const isList = call.json && !isSingle;
  if (isList) await streams.out("[\n");
  let isPlanMade = false;
  for (const [index, row] of rows.entries()) {
    const answered = answerRow(row);
    if (answered.answer.status === "planned") isPlanMade = true;
    if (call.out !== null) kept.push(answered);
    if (streams.terminal.out) progress.clear();
    const isLast = index === rows.length - 1;
    if (isList) await streams.out(`${JSON.stringify(toJson(answered))}${isLast ? "" : ","}\n`);
    else if (call.json) await streams.out(`${JSON.stringify(toJson(answered), null, 2)}\n`);
    else await streams.out(`${toText(answered)}\n${isLast ? "" : "\n"}`);
    progress.done(index + 1);
  }
  progress.clear();
  if (isList) await streams.out("]\n");
  if (!call.json && isPlanMade) await streams.out(`\n${CLOSING}\n`);
  return kept;
}
