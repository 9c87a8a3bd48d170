import { CFRuleType, CFSubRuleType, CFTextOperator } from "@univerjs/sheets-conditional-formatting";
import type { IConditionFormattingRule } from "@univerjs/sheets-conditional-formatting";
import type { ConditionalFormat } from "../../sheets/model";
import { fromGridStyle, toGridStyle } from "./looks";
import { fromGridRange, toGridRange } from "./ranges";

/** How the grid writes a conditional format down. */
export function toGridConditionalFormat(format: ConditionalFormat, cfId: string): IConditionFormattingRule {
  const highlight = { type: CFRuleType.highlightCell, style: toGridStyle(format.look) } as const;
  return {
    cfId,
    ranges: [toGridRange(format.range)],
    stopIfTrue: false,
    rule:
      format.kind === "textIs"
        ? { ...highlight, subType: CFSubRuleType.text, operator: CFTextOperator.equal, value: format.text }
        : { ...highlight, subType: CFSubRuleType.formula, value: format.formula },
  };
}

/**
 * One conditional format per range: a coach who inserts rows can split a rule's range in two.
 * @param moveFormula moves a formula's relative references by so many columns and rows
 */
export function fromGridConditionalFormat(
  { rule, ranges, cfId }: IConditionFormattingRule,
  moveFormula: (formula: string, columns: number, rows: number) => string,
): ConditionalFormat[] {
  if (rule.type !== CFRuleType.highlightCell) throw unknownRule(cfId, rule.type);
  const look = fromGridStyle(rule.style);
  const first = ranges[0];
  return ranges.map((gridRange): ConditionalFormat => {
    const range = fromGridRange(gridRange);
    if (rule.subType === CFSubRuleType.text && rule.operator === CFTextOperator.equal) {
      return { range, look, kind: "textIs", text: rule.value ?? "" };
    }
    if (rule.subType !== CFSubRuleType.formula || !first) throw unknownRule(cfId, rule.subType);
    const columns = gridRange.startColumn - first.startColumn;
    const rows = gridRange.startRow - first.startRow;
    return { range, look, kind: "formula", formula: moveFormula(rule.value, columns, rows) };
  });
}

function unknownRule(id: string, kind: string): Error {
  return new Error(
    `The grid holds a conditional format ${id} of kind ${kind}. Maybe it was pasted from elsewhere.`,
  );
}
