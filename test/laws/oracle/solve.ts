/** The two outside solvers, asked the same programme. Null: nothing fits. */
import loadHighs from "highs";
import { solve } from "yalps";
import { toLpText, toYalps, type Programme } from "./programme";

export type Solver = (programme: Programme) => number | null;

const EXACT = {
  output_flag: false,
  mip_rel_gap: 0,
  mip_abs_gap: 0,
  mip_feasibility_tolerance: 1e-9,
  primal_feasibility_tolerance: 1e-9,
  dual_feasibility_tolerance: 1e-9,
} as const;

/** HiGHS, in WebAssembly. */
export async function loadHighsSolver(): Promise<Solver> {
  const highs = await loadHighs();
  return (programme) => {
    const solution = highs.solve(toLpText(programme), EXACT);
    if (solution.Status === "Optimal") return solution.ObjectiveValue;
    if (solution.Status === "Infeasible") return null;
    throw new Error(`HiGHS ended with ${solution.Status}`);
  };
}

export const solveWithYalps: Solver = (programme) => {
  const solution = solve(toYalps(programme), {
    timeout: 60_000,
    maxIterations: 1_000_000,
    includeZeroVariables: false,
  });
  if (solution.status === "optimal") return solution.result;
  if (solution.status === "infeasible") return null;
  throw new Error(`YALPS ended with ${solution.status}`);
};
