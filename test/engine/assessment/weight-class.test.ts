import {
  classOfLimit,
  findWeightClass,
  sizeOfClass,
  type ClassLimit,
} from "../../../engine/assessment/weight-class";
import { CLASS_SET, CLASS_TABLES, SIZE_ROWS } from "../../../engine/rules/classes";
import { kgFromLb } from "../../../engine/units";
import { SEXES, type Sex } from "../../../engine/words";

const TODAY = "2026-05-02";

describe("class tables", () => {
  it("rise within a table, one oldest table and no repeated date a sex", () => {
    expect(CLASS_TABLES.length).toBeGreaterThan(0);
    for (const table of CLASS_TABLES) {
      const all = [...table.juniorOnlyKg, ...table.limitsKg];
      expect(all).toEqual([...new Set(all)].sort((a, b) => a - b));
    }
    for (const sex of SEXES) {
      const dates = CLASS_TABLES.filter((table) => table.sex === sex).map((table) => table.validFrom);
      expect(dates.filter((date) => date === null)).toHaveLength(1);
      expect(new Set(dates).size).toBe(dates.length);
    }
  });
});

describe("findWeightClass", () => {
  it.each(CLASS_TABLES.map((table) => [table.id, table] as const))(
    "holds every bodyweight once: %s",
    (_, table) => {
      const on = table.validFrom ?? "1990-01-01";
      const wrong: number[] = [];
      let classes = 0;
      let before = "";
      for (let hundredths = 1; hundredths <= 20000; hundredths++) {
        const bodyweightKg = hundredths / 100;
        const { name, limitKg, row } = findWeightClass(table.sex, bodyweightKg, on);
        if (name !== before) classes++;
        before = name;
        const fits = limitKg === null ? bodyweightKg > table.limitsKg.at(-1)! : bodyweightKg <= limitKg;
        if (!fits || row !== table) wrong.push(bodyweightKg);
      }
      expect(wrong).toEqual([]);
      expect(classes).toBe(table.limitsKg.length + 1);
    },
  );

  it("takes the table in force on the day", () => {
    expect(findWeightClass("female", 71, "2010-12-31").name).toBe("75");
    expect(findWeightClass("female", 71, "2020-12-31").name).toBe("72");
    expect(findWeightClass("female", 71, "2021-01-01").name).toBe("76");
    expect(findWeightClass("male", 73, "2010-12-31").name).toBe("75");
    expect(findWeightClass("male", 73, "2011-01-01").name).toBe("74");
  });

  it("passes over classes for juniors alone", () => {
    expect(findWeightClass("male", 50, TODAY).name).toBe("59");
    expect(findWeightClass("female", 42, TODAY).name).toBe("47");
  });
});

describe("classOfLimit", () => {
  const cases: readonly (readonly [Sex, ClassLimit, string, number | null, boolean])[] = [
    ["male", 83, "83", 83, true],
    ["male", "120+", "120+", null, true],
    ["female", "84+", "84+", null, true],
    ["male", 53, "53", 53, true],
    ["male", 82.5, "82.5", 82.5, false],
    ["male", 125, "125", 125, false],
    ["female", "90+", "90+", null, false],
    ["male", 82.71, "83", 83, true],
    ["male", 82.69, "82.69", 82.69, false],
  ];
  it.each(cases)("%s %s is class %s", (sex, limit, name, limitKg, listed) => {
    const found = classOfLimit(sex, limit, TODAY);
    expect(found).toMatchObject({ name, limitKg });
    expect(found.row.id === CLASS_SET.id).toBe(!listed);
  });

  it("reads every limit back from whole pounds", () => {
    let read = 0;
    for (const table of CLASS_TABLES) {
      const on = table.validFrom ?? "1990-01-01";
      for (const limitKg of [...table.juniorOnlyKg, ...table.limitsKg]) {
        const wholePounds = Math.round(limitKg / kgFromLb(1));
        expect(classOfLimit(table.sex, kgFromLb(wholePounds), on).limitKg).toBe(limitKg);
        read++;
      }
    }
    expect(read).toBe(42);
  });

  it("names a limit from pounds that no table holds by its kilograms", () => {
    expect(classOfLimit("male", kgFromLb(220), TODAY).name).toBe("99.79");
  });

  it("refuses an open class without a number", () => {
    expect(() => classOfLimit("male", "+" as ClassLimit, TODAY)).toThrow(/Maybe/);
  });
});

describe("sizeOfClass", () => {
  it("has no gap and no overlap", () => {
    for (const sex of SEXES) {
      const rows = SIZE_ROWS.filter((row) => row.sex === sex);
      expect(rows.map((row) => row.aboveKg)).toEqual([0, ...rows.slice(0, -1).map((row) => row.upToKg)]);
      expect(rows.at(-1)!.upToKg).toBeNull();
      expect(rows.map((row) => row.size)).toEqual(["light", "middle", "heavy"]);
    }
  });

  it("pairs the classes of the two sexes by rank", () => {
    const [men, women] = (["male", "female"] as const).map((sex) => {
      const table = CLASS_TABLES.filter((each) => each.sex === sex).at(-1)!;
      return [...table.limitsKg, null].map((limitKg) => sizeOfClass(sex, limitKg).size);
    });
    expect(men).toEqual(["light", "light", "light", "middle", "middle", "heavy", "heavy", "heavy"]);
    expect(women).toEqual(men);
  });

  it.each([
    ["male", 74, "light"],
    ["male", 74.5, "middle"],
    ["male", 93, "middle"],
    ["male", 93.5, "heavy"],
    ["male", 400, "heavy"],
    ["male", null, "heavy"],
    ["female", 57, "light"],
    ["female", 57.5, "middle"],
    ["female", 69, "middle"],
    ["female", 72, "heavy"],
    ["female", null, "heavy"],
  ] as const)("%s %s is %s", (sex, limitKg, size) => {
    expect(sizeOfClass(sex, limitKg)).toMatchObject({ size, row: { sex, size } });
  });
});
