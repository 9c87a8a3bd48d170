import type { ConditionalRule } from "hucre";
import { rangeRef } from "../../sheets/cell-ref";
import type { ConditionalFormat } from "../../sheets/model";
import { toConditionalStyle } from "./cell-style";
import { toFileFormula } from "./file-formula";
import { toFileText } from "./file-text";

/** The earlier of two formats has the smaller number, which wins. */
export function toConditionalRule(format: ConditionalFormat, index: number): ConditionalRule {
  const range = rangeRef(format.range);
  const common = { range, priority: index + 1, style: toConditionalStyle(format.look) };
  if (format.kind === "textIs") {
    const text = toFileText(format.text).replaceAll('"', '""');
    return { ...common, type: "cellIs", operator: "equal", formula: `"${text}"` };
  }
  const { text } = toFileFormula(format.formula, `the conditional format of ${range}`);
  return { ...common, type: "expression", formula: text };
}
