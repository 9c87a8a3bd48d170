/** An .xlsx file as a workbook. Runs in Node and in a browser alike: nothing here touches a disk. */
export { FileWorkbook } from "./file-workbook";
export { toXlsx, type FileProperties } from "./to-xlsx";
