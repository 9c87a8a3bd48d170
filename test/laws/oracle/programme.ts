/** An integer programme as data, and the two solvers' ways of reading it. All variables are at least 0. */
import type { Model } from "yalps";

export interface Variable {
  readonly cost: number;
  readonly max: number;
  readonly whole: boolean;
}

/** Sum of terms within [min, max]. */
export interface Constraint {
  readonly terms: ReadonlyMap<string, number>;
  readonly min: number;
  readonly max: number;
}

/** Coefficients by variable name. */
export type Sum = ReadonlyMap<string, number>;

export function sumOf(...terms: readonly (readonly [number, Sum | string])[]): Sum {
  const sum = new Map<string, number>();
  for (const [factor, term] of terms) {
    const inner: Iterable<readonly [string, number]> = typeof term === "string" ? [[term, 1]] : term;
    for (const [name, coefficient] of inner) sum.set(name, (sum.get(name) ?? 0) + factor * coefficient);
  }
  return sum;
}

export class Programme {
  readonly variables = new Map<string, Variable>();
  readonly constraints: Constraint[] = [];

  binary(name: string, cost = 0): string {
    this.variables.set(name, { cost, max: 1, whole: true });
    return name;
  }

  real(name: string, cost: number): string {
    this.variables.set(name, { cost, max: Infinity, whole: false });
    return name;
  }

  hold(sum: Sum, min: number, max: number): void {
    const terms = new Map([...sum].filter(([, coefficient]) => coefficient !== 0));
    this.constraints.push({ terms, min, max });
  }
}

/** The programme in the text format that HiGHS reads. */
export function toLpText({ variables, constraints }: Programme): string {
  const spell = (terms: Iterable<readonly [string, number]>): string => {
    const parts = [...terms].map(([name, c]) => `${c < 0 ? "-" : "+"} ${Math.abs(c)} ${name}`);
    return parts.length > 0 ? parts.join("\n   ") : "+ 0 nothing";
  };
  const costs = [...variables]
    .filter(([, { cost }]) => cost !== 0)
    .map(([name, { cost }]) => [name, cost] as const);
  const rows = constraints.flatMap(({ terms, min, max }, index) => {
    if (min === max) return [` e${index}: ${spell(terms)} = ${min}`];
    return [
      ...(min > -Infinity ? [` a${index}: ${spell(terms)} >= ${min}`] : []),
      ...(max < Infinity ? [` b${index}: ${spell(terms)} <= ${max}`] : []),
    ];
  });
  const binaries = [...variables].filter(([, { whole }]) => whole).map(([name]) => ` ${name}`);
  return [
    "Minimize",
    ` cost: ${spell(costs)}`,
    "Subject To",
    ...rows,
    "Bounds",
    " nothing = 0",
    "Binary",
    ...binaries,
    "End",
  ].join("\n");
}

/** The programme as YALPS takes it. */
export function toYalps({ variables, constraints }: Programme): Model {
  const columns = new Map<string, Map<string, number>>();
  const bounds = new Map<string, { min?: number; max?: number }>();
  for (const [name, { cost, max }] of variables) {
    const column = new Map([["cost", cost]]);
    if (max < Infinity) {
      column.set(`most ${name}`, 1);
      bounds.set(`most ${name}`, { max });
    }
    columns.set(name, column);
  }
  constraints.forEach(({ terms, min, max }, index) => {
    const bound: { min?: number; max?: number } = {};
    if (min > -Infinity) bound.min = min;
    if (max < Infinity) bound.max = max;
    bounds.set(`row ${index}`, bound);
    for (const [name, coefficient] of terms) columns.get(name)!.set(`row ${index}`, coefficient);
  });
  const integers = [...variables].filter(([, { whole }]) => whole).map(([name]) => name);
  return { direction: "minimize", objective: "cost", constraints: bounds, variables: columns, integers };
}
