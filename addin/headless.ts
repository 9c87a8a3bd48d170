/**
 * Plans a file of lifters from the command line: `npm run -s plan -- FILE [--json] [--out FILE.xlsx]`.
 * Results go to stdout, messages to stderr. Exit code 0 when all rows were answered, 2 for a call or a file that is
 * no good, 1 for a fault of ours.
 */
import { run } from "./headless/run";

// A reader that has seen enough closes the pipe: no reason to complain.
process.stdout.on("error", (problem: NodeJS.ErrnoException) => {
  if (problem.code === "EPIPE") process.exit(0);
  throw problem;
});

const streams = {
  out: (text: string) =>
    new Promise<void>((settle) => {
      if (process.stdout.write(text)) settle();
      else process.stdout.once("drain", settle);
    }),
  err: (text: string) => void process.stderr.write(text),
  terminal: { out: process.stdout.isTTY === true, err: process.stderr.isTTY === true },
};

run(process.argv.slice(2), streams).then(
  (code) => {
    process.exitCode = code;
  },
  (fault: unknown) => {
    const said = fault instanceof Error ? (fault.stack ?? fault.message) : String(fault);
    process.stderr.write(`A fault of Meetward, not of your data; please report it:\n${said}\n`);
    process.exitCode = 1;
  },
);
