/** Writes the plan shown into new sheets of the workbook. */
import type { Planned } from "../../../engine/index";
import { planSheets } from "../../sheets";
import type { SheetModel } from "../../sheets/model";
import type { Workbook } from "../../workbook/port";
import { describeFault, type Fault } from "./fault";

export type WriteReport =
  | { readonly kind: "wrote"; readonly text: string }
  | { readonly kind: "refused"; readonly text: string }
  | { readonly kind: "fault"; readonly fault: Fault };

/** Never overwrites: sheet names in use are passed over. Refusals of the workbook come back in words. */
export async function writePlan(workbook: Workbook, answer: Planned): Promise<WriteReport> {
  let models: readonly SheetModel[];
  try {
    const taken = await workbook.sheetNames();
    try {
      models = planSheets(answer, taken);
    } catch (error) {
      return { kind: "fault", fault: describeFault(error) };
    }
    await workbook.addSheets(models);
  } catch (error) {
    return { kind: "refused", text: `Nothing was written. The workbook refused: ${reasonOf(error)}` };
  }
  return activateFirst(workbook, models);
}

async function activateFirst(workbook: Workbook, models: readonly SheetModel[]): Promise<WriteReport> {
  const names = models.map((model) => model.name);
  const wrote = `Wrote ${names.length === 1 ? "sheet" : "sheets"} ${listNames(names)}.`;
  try {
    await workbook.activate(names[0]!);
    return { kind: "wrote", text: wrote };
  } catch (error) {
    return { kind: "wrote", text: `${wrote} The workbook did not switch to it: ${reasonOf(error)}` };
  }
}

/** “A”, “B” and “C” */
export function listNames(names: readonly string[]): string {
  const quoted = names.map((name) => `“${name}”`);
  return quoted.length < 2 ? quoted.join("") : `${quoted.slice(0, -1).join(", ")} and ${quoted.at(-1)}`;
}

function reasonOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
