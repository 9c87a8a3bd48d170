/** Units of mass. Imports nothing of ours. */

/** Kilograms in one pound, exact by the international yard and pound agreement of 1959 (NIST SP 811, appendix B). */
export const KG_PER_LB = 0.45359237;

export const kgFromLb = (lb: number): number => lb * KG_PER_LB;
export const lbFromKg = (kg: number): number => kg / KG_PER_LB;
