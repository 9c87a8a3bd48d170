/** Counts and lists in words. */

/** At most one decimal, and none where it is 0: 5, 4.4. */
export function numberText(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/** "1 week", "5 weeks", "4.4 weeks" */
export function countText(count: number, one: string, many = `${one}s`): string {
  const text = numberText(count);
  return `${text} ${text === "1" ? one : many}`;
}

export const weeksText = (weeks: number): string => countText(weeks, "week");

/** "a", "a and b", "a, b and c" */
export function listText(items: readonly string[], last: "and" | "or" = "and"): string {
  return items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} ${last} ${items.at(-1)}`;
}

export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "veryAdvanced" as "very advanced" */
export function spacedText(joined: string): string {
  return joined.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

/** "an intermediate lifter" */
export function withArticle(words: string): string {
  return `${/^[aeiou]/i.test(words) ? "an" : "a"} ${words}`;
}

/** Characters as a reader counts them, cut after `most` with a mark that something is missing. */
export function shortened(text: string, most: number): string {
  const characters = [...text];
  return characters.length <= most ? text : `${characters.slice(0, most - 1).join("")}…`;
}
