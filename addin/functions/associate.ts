/** Tells Excel which code calculates each worksheet function. Loaded once, when the shared runtime starts. */
import { WORKSHEET_FUNCTIONS } from "./register";

for (const [id, calculate] of Object.entries(WORKSHEET_FUNCTIONS)) CustomFunctions.associate(id, calculate);
