/** What every spreadsheet program asks of a sheet's name. */

const LONGEST = 31;
const FORBIDDEN = /[:\\/?*[\]]/;

/** Throws for the first name that is not allowed, is taken, or stands twice; capitals and small letters count as the same. */
export function refuseSheetNames(wanted: readonly string[], present: readonly string[]): void {
  const taken = new Set(present.map((name) => name.toLowerCase()));
  for (const name of wanted) {
    if (name.length === 0 || name.length > LONGEST || FORBIDDEN.test(name) || /^'|'$/.test(name)) {
      throw new Error(
        `"${name}" cannot name a sheet: 1 to ${LONGEST} characters, none of : \\ / ? * [ ], no ' at an end.`,
      );
    }
    if (taken.has(name.toLowerCase()))
      throw new Error(`The sheet name "${name}" is taken; nothing was written.`);
    taken.add(name.toLowerCase());
  }
}
