import path from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { guard, WORKSHEET_FUNCTIONS } from "../../../addin/functions/register";
import * as functions from "../../../addin/functions/functions";

interface Described {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly optional?: boolean;
    readonly dimensionality?: string;
    readonly repeating?: boolean;
    readonly description?: string;
    readonly type: string;
  }[];
  readonly result: { readonly dimensionality?: string };
}

const FILE = path.resolve(__dirname, "../../../addin/functions/functions.ts");

async function describeAll(): Promise<readonly Described[]> {
  const { metadataJson, errors } = await generateCustomFunctionsMetadata(FILE);
  expect(errors ?? []).toEqual([]);
  return (JSON.parse(metadataJson) as { functions: Described[] }).functions;
}

/** name, ? when optional, [][] for a range */
const signature = ({ parameters }: Described) =>
  parameters.map(
    ({ name, optional, dimensionality, type }) =>
      `${name}${optional ? "?" : ""}: ${type}${dimensionality === "matrix" ? "[][]" : ""}`,
  );

test("what Excel is told of each function", async () => {
  const described = await describeAll();
  expect(Object.fromEntries(described.map((each) => [each.id, signature(each)]))).toEqual({
    LEVEL: ["rows: any[][]", "headings?: any[][]"],
    HARDWEEKS: ["rows: any[][]", "headings?: any[][]"],
    PREPWEEKS: ["rows: any[][]", "headings?: any[][]"],
    PHASEWEEKS: ["rows: any[][]", "lift?: string", "headings?: any[][]"],
    PHASEON: ["rows: any[][]", "day: any[][]", "lift?: string", "headings?: any[][]"],
    WEEKGRID: ["row: any[][]", "headings?: any[][]"],
    CHECK: ["rows: any[][]", "headings?: any[][]"],
  });
  for (const { id, name, description, parameters, result } of described) {
    expect(name).toBe(id);
    expect(description).toMatch(/^[A-Z][^\n]+\.$/);
    expect(result.dimensionality).toBe("matrix");
    for (const parameter of parameters) {
      expect(parameter.repeating).toBeUndefined();
      expect(parameter.description).toMatch(/^[A-Za-z]/);
    }
  }
});

test("every function is registered under the id that Excel is told", async () => {
  const ids = (await describeAll()).map(({ id }) => id);
  expect(Object.keys(WORKSHEET_FUNCTIONS)).toEqual(ids);
  expect(Object.keys(functions)).toHaveLength(ids.length);
});

test("Excel is handed the code of each function", () => {
  const associate = jest.fn();
  (globalThis as Record<string, unknown>)["CustomFunctions"] = { associate };
  jest.isolateModules(() => {
    require("../../../addin/functions/associate");
  });
  expect(associate.mock.calls.map(([id]) => id)).toEqual(Object.keys(WORKSHEET_FUNCTIONS));
  for (const [, calculate] of associate.mock.calls) {
    expect((calculate as (rows: unknown) => unknown)([])).toEqual([
      expect.arrayContaining([expect.any(String)]),
    ]);
  }
  delete (globalThis as Record<string, unknown>)["CustomFunctions"];
});

test("a fault of ours becomes words in one cell", () => {
  const faulty = guard(() => {
    throw new Error("phases do not add up");
  });
  expect(faulty()).toEqual([[expect.stringMatching(/^A fault of the add-in.*phases do not add up$/)]]);
  expect(guard((rows) => rows)([[1]])).toEqual([[1]]);
});
