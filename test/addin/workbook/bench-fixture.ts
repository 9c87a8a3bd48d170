import type { SheetModel } from "../../../addin/sheets/model";

/** One sheet with everything a sheet model can hold; its cells stand row by row. */
export const EVERYTHING: SheetModel = {
  name: "Everything, O'Brien",
  columns: [{ width: 20 }, { width: 12.5 }, { width: 9 }, { width: 16 }],
  rowHeights: { 0: 30, 2: 22.5 },
  cells: [
    { row: 0, column: 0, value: "Spring meet", style: "title" },
    { row: 2, column: 0, value: "Day", style: "head" },
    { row: 2, column: 1, value: "Phase", style: "head" },
    { row: 2, column: 2, value: "Kg", style: "head" },
    { row: 2, column: 3, value: "Result", style: "head" },
    { row: 3, column: 0, value: 46000, style: "date" },
    { row: 3, column: 1, value: "strength" },
    { row: 3, column: 2, value: 102.5, style: "load" },
    { row: 3, column: 3, formula: "=SUM(C4:C6)", style: "load" },
    { row: 4, column: 0, formula: "=A4+7", style: "date" },
    { row: 4, column: 1, value: "peaking" },
    { row: 4, column: 2, value: 97.5, style: "load" },
    { row: 4, column: 3, formula: '=IF(B6,"go","wait")' },
    { row: 5, column: 0, value: "=1+1" },
    { row: 5, column: 1, value: true },
    { row: 5, column: 2, value: 50, style: "load" },
    { row: 5, column: 3, formula: "=Top_Set/2" },
    { row: 6, column: 0, value: "007" },
    { row: 6, column: 1, style: "blank" },
    { row: 6, column: 3, formula: "=ROUND(C4/9,2)" },
    { row: 7, column: 0, value: "+heavy, -light, @home" },
    { row: 7, column: 3, value: "two\nlines" },
  ],
  styles: {
    title: { bold: true, size: 16, colour: "#0B3C49" },
    head: {
      bold: true,
      fill: "#2F6F73",
      colour: "#FFFFFF",
      align: "center",
      vertical: "middle",
      border: "#1D4547",
    },
    date: { format: "yyyy-mm-dd", align: "left" },
    load: { format: "0.0", align: "right", vertical: "bottom" },
    blank: { fill: "#DCE9E6", italic: true, wrap: true, vertical: "top" },
    unused: { italic: true },
  },
  merges: [{ row: 0, column: 0, rows: 1, columns: 3 }],
  freeze: { rows: 3, columns: 1 },
  names: [
    { name: "Top_Set", range: { row: 3, column: 2, rows: 1, columns: 1 } },
    { name: "All_Sets", range: { row: 3, column: 2, rows: 3, columns: 1 } },
  ],
  validations: [
    {
      kind: "list",
      range: { row: 3, column: 1, rows: 2, columns: 1 },
      values: ["hypertrophy", "strength", "peaking"],
      message: "Allowed: a phase.",
      prompt: "Choose a phase.",
    },
    {
      kind: "whole",
      range: { row: 5, column: 2, rows: 1, columns: 1 },
      min: 1,
      max: 400,
      message: "1 to 400.",
    },
    {
      kind: "date",
      range: { row: 3, column: 0, rows: 1, columns: 1 },
      min: 45658,
      max: 46387,
      message: "A day.",
    },
  ],
  conditionalFormats: [
    {
      kind: "textIs",
      range: { row: 3, column: 1, rows: 2, columns: 1 },
      text: "peaking",
      look: { fill: "#3D2C5C", colour: "#FFFFFF", bold: true },
    },
    {
      kind: "formula",
      range: { row: 3, column: 1, rows: 2, columns: 2 },
      formula: "=$C4>100",
      look: { fill: "#F4C7A1" },
    },
    {
      kind: "formula",
      range: { row: 3, column: 1, rows: 2, columns: 2 },
      formula: "=$C4>0",
      look: { fill: "#C9D7E8" },
    },
  ],
  notes: [{ row: 2, column: 2, text: "The bar included." }],
  print: {
    orientation: "landscape",
    fitWidth: true,
    repeatRows: [2, 2],
    area: { row: 0, column: 0, rows: 8, columns: 4 },
    footer: "Page &P",
  },
};

/** A sheet of this name that holds nothing but these cells. */
export function sheetOf(name: string, cells: SheetModel["cells"]): SheetModel {
  return { ...EMPTY, name, cells };
}

const EMPTY: Omit<SheetModel, "name" | "cells"> = {
  columns: [],
  rowHeights: {},
  styles: {},
  merges: [],
  freeze: { rows: 0, columns: 0 },
  names: [],
  validations: [],
  conditionalFormats: [],
  notes: [],
  print: { orientation: "portrait", fitWidth: false },
};
