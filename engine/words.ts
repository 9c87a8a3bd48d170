/** The trade's words as types: one word, one type. Each is defined in the glossary of DEVELOPERS.md. */

export const LIFTS = ["squat", "bench", "deadlift"] as const;
export type Lift = (typeof LIFTS)[number];

export const PHASES = ["hypertrophy", "strength", "peaking"] as const;
export type Phase = (typeof PHASES)[number];

/** What a calendar week is for. `meet` is meet week: the taper ends in it. */
export const KINDS = ["bridge", "hard", "deload", "meet"] as const;
export type Kind = (typeof KINDS)[number];

export const LEVELS = ["beginner", "intermediate", "advanced", "very advanced"] as const;
export type Level = (typeof LEVELS)[number];

export const SIZES = ["light", "middle", "heavy"] as const;
export type Size = (typeof SIZES)[number];

export const SEXES = ["female", "male"] as const;
export type Sex = (typeof SEXES)[number];

export const RECOVERIES = ["low", "normal", "high"] as const;
export type Recovery = (typeof RECOVERIES)[number];

/** How much muscle the weight class still has room for. */
export const ROOMS = ["none", "some", "plenty"] as const;
export type RoomInClass = (typeof ROOMS)[number];

export const UNITS = ["kg", "lb"] as const;
export type Unit = (typeof UNITS)[number];

/** How the lifts relate: all change phase in one week, each as it needs, or each by its own targets first. */
export const ARRANGEMENTS = ["together", "as needed", "spread"] as const;
export type Arrangement = (typeof ARRANGEMENTS)[number];

export type PerLift<T> = Readonly<Record<Lift, T>>;

/** Builds one value per lift. */
export function perLift<T>(make: (lift: Lift) => T): PerLift<T> {
  return { squat: make("squat"), bench: make("bench"), deadlift: make("deadlift") };
}
