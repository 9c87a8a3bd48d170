import { toXlsx } from "../file";
import type { Grid } from "./grid";
import { takeSnapshot } from "./snapshot";

const FILE_NAME = "meetward-plan.xlsx";
const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Hands the workbook over as a file; a fault on the way is told in the status line. */
export async function downloadWorkbook(
  grid: Grid,
  button: HTMLButtonElement,
  status: HTMLElement,
): Promise<void> {
  button.disabled = true;
  try {
    const bytes = await toXlsx(await takeSnapshot(grid), { title: "Meetward plan" });
    save(new Blob([new Uint8Array(bytes)], { type: XLSX }));
    status.textContent = `${FILE_NAME} is in your downloads.`;
  } catch (fault) {
    status.textContent = `The workbook could not be made, a fault of the add-in: ${String(fault)}`;
  } finally {
    button.disabled = false;
  }
}

function save(file: Blob): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = FILE_NAME;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
