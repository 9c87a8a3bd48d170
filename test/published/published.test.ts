/**
 * Runs every folder here that holds a cases.json: `{ kind, cases: [{ id, standing, … }] }` beside its SOURCE.md.
 * A disagreement fails, unless differences.json lists it with a reason; a listed one that starts to agree fails too.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { STANDINGS } from "../../engine/rules/sources";
import type { Comparison, PublishedCase } from "./kinds/kind";
import { KINDS } from "./kinds/all";

interface Cases {
  readonly kind: string;
  readonly cases: readonly PublishedCase[];
}

interface Difference {
  readonly case: string;
  readonly at: string;
  readonly reason: string;
}

const read = <T>(...path: string[]): T => JSON.parse(readFileSync(join(__dirname, ...path), "utf8")) as T;

const folders = readdirSync(__dirname, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== "kinds")
  .map((entry) => entry.name)
  .sort();
const differences = read<readonly Difference[]>("differences.json");
const caseNames = folders.flatMap((folder) =>
  read<Cases>(folder, "cases.json").cases.map(({ id }) => `${folder}/${id}`),
);

describe("published values", () => {
  it("has folders, each with its source, a known kind and cases of its own names", () => {
    expect(folders.length).toBeGreaterThan(0);
    expect(new Set(caseNames).size).toBe(caseNames.length);
    for (const folder of folders) {
      expect([folder, existsSync(join(__dirname, folder, "SOURCE.md"))]).toEqual([folder, true]);
      const { kind, cases } = read<Cases>(folder, "cases.json");
      expect(Object.keys(KINDS)).toContain(kind);
      expect(cases.length).toBeGreaterThan(0);
      for (const each of cases) expect(STANDINGS).toContain(each.standing);
    }
  });

  it("runs every kind there is", () => {
    const used = new Set(folders.map((folder) => read<Cases>(folder, "cases.json").kind));
    expect([...used].sort()).toEqual(Object.keys(KINDS).sort());
  });

  it("lists differences of cases that exist, once each, with a reason", () => {
    for (const each of differences) {
      expect(caseNames).toContain(each.case);
      expect(each.reason.length).toBeGreaterThan(20);
    }
    expect(new Set(differences.map((each) => `${each.case} ${each.at}`)).size).toBe(differences.length);
  });

  describe.each(folders)("%s", (folder) => {
    const { kind, cases } = read<Cases>(folder, "cases.json");
    it.each(cases.map((each) => [each.id, each] as const))("%s", (id, given) => {
      const { compared, findings }: Comparison = KINDS[kind]!(given as never);
      expect(compared).toBeGreaterThan(0);
      const listed = differences.filter((each) => each.case === `${folder}/${id}`).map((each) => each.at);
      const found = findings.map((finding) => finding.at);
      const unlisted = findings.filter((finding) => !listed.includes(finding.at));
      const nowAgreeing = listed.filter((at) => !found.includes(at));
      expect({ unlisted, nowAgreeing }).toEqual({ unlisted: [], nowAgreeing: [] });
    });
  });
});
