/**
 * npm run bench: how fast, as ratios against references in the same run. Times are process time, so that other work on
 * the machine counts little. Nothing here passes or fails.
 */
import { planLifter, type DoesNotFit, type Planned } from "../../engine";
import { phaseWeeks } from "../../addin/functions/functions";
import { LIFTERS } from "../lifters";
import { leastCost } from "../laws/oracle/ask";
import { loadHighsSolver, solveWithYalps } from "../laws/oracle/solve";

/** Milliseconds of process time for one call of `act`, the first tenth of the calls left out. */
function timePerCall(act: (index: number) => unknown, calls: number): number {
  for (let index = 0; index < Math.ceil(calls / 10); index++) act(index);
  const start = process.cpuUsage();
  for (let index = 0; index < calls; index++) act(index);
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000 / calls;
}

const line = (what: string, value: string) => console.log(`${what.padEnd(62)}${value}`);

async function main(): Promise<void> {
  const lifters = Object.values(LIFTERS);
  const answers = lifters.map((lifter) => planLifter(lifter) as Planned | DoesNotFit);
  const at = <T>(items: readonly T[], index: number): T => items[index % items.length]!;

  const full = timePerCall((index) => planLifter(at(lifters, index)), 4000);
  const brief = timePerCall((index) => planLifter(at(lifters, index), { brief: true }), 4000);
  line(
    "one lifter, with runners-up and reasons",
    `${full.toFixed(3)} ms, ${Math.round(1000 / full)} a second`,
  );
  line("one lifter, in brief", `${brief.toFixed(3)} ms, ${Math.round(1000 / brief)} a second`);

  const highs = await loadHighsSolver();
  const byHighs = timePerCall((index) => leastCost(highs, at(answers, index)), lifters.length * 2);
  const byYalps = timePerCall((index) => leastCost(solveWithYalps, at(answers, index)), lifters.length);
  line(
    "the same planning problems, HiGHS to ours",
    `${Math.round(byHighs / brief)} times as long (${byHighs.toFixed(1)} ms)`,
  );
  line(
    "the same planning problems, YALPS to ours",
    `${Math.round(byYalps / brief)} times as long (${byYalps.toFixed(1)} ms)`,
  );

  for (const count of [10, 100, 1000, 10_000]) {
    const columns = Object.keys(LIFTERS.heavyMan);
    const rows = [
      columns,
      ...Array.from({ length: count }, (_, index) => columns.map((key) => at(lifters, index)[key] ?? "")),
    ];
    const time = timePerCall(() => phaseWeeks(rows), count > 1000 ? 2 : 5);
    line(
      `${count} rows through PHASEWEEKS`,
      `${time.toFixed(1)} ms, ${(time / count / brief).toFixed(2)} times planning them`,
    );
  }
}

main().catch((fault: unknown) => {
  console.error(fault);
  process.exit(1);
});
