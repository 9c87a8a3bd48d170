/** How a file spells formulas. Expected spellings follow [MS-XLSX] and what other programs write. */
import { toFileFormula } from "../../../addin/workbook/file/file-formula";

const spelled = (formula: string): string => toFileFormula(formula, "A1").text;

test.each([
  ["=1+1", "1+1"],
  ["=SUM(A1:B2)-$C$4*'Two words'!D5%", "SUM(A1:B2)-$C$4*'Two words'!D5%"],
  ['=A1&" =SUM(B1) ""quoted"""', 'A1&" =SUM(B1) ""quoted"""'],
  ["=IF(A1>1E5,{1,2;3,4},#N/A)", "IF(A1>1E5,{1,2;3,4},#N/A)"],
  ["=#REF!+1", "#REF!+1"],
  ["=SUM(Lifts[[#All],[Kg]])", "SUM(Lifts[[#All],[Kg]])"],
])("%s keeps its words", (formula, file) => {
  expect(spelled(formula)).toBe(file);
});

test.each([
  ["=IFS(A1>0,1)", "_xlfn.IFS(A1>0,1)"],
  ["=ifs(A1>0,1)", "_xlfn.ifs(A1>0,1)"],
  [
    '=IF(A1,TEXTJOIN(",",TRUE,A1:A2),MAXIFS(A:A,B:B,1))',
    'IF(A1,_xlfn.TEXTJOIN(",",TRUE,A1:A2),_xlfn.MAXIFS(A:A,B:B,1))',
  ],
  ["=STDEV.S(A1:A9)", "_xlfn.STDEV.S(A1:A9)"],
  ["=SORT(FILTER(A1:A9,B1:B9))", "_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A9,B1:B9))"],
  ["=_xlfn.IFS(A1>0,1)", "_xlfn.IFS(A1>0,1)"],
])("%s gets the prefix of younger functions", (formula, file) => {
  expect(spelled(formula)).toBe(file);
});

test.each([
  ['="IFS(x)"&A1', '"IFS(x)"&A1'],
  ["='IFS(a)'!A1", "'IFS(a)'!A1"],
  ["=IFS+1", "IFS+1"],
  ["=MYIFS(1)", "MYIFS(1)"],
  ["=WORKDAY.INTL(A1,2)+NETWORKDAYS.INTL(A1,A2)", "WORKDAY.INTL(A1,2)+NETWORKDAYS.INTL(A1,A2)"],
  ["=GAMMALN(2)+COS(1)+RANK(1,A1:A2)", "GAMMALN(2)+COS(1)+RANK(1,A1:A2)"],
])("%s has no younger function in it", (formula, file) => {
  expect(spelled(formula)).toBe(file);
});

test.each([
  ["=LET(x,2,x*x)", "_xlfn.LET(_xlpm.x,2,_xlpm.x*_xlpm.x)"],
  [
    "=LET( top , A1, Half, TOP/2, half)+top",
    "_xlfn.LET( _xlpm.top , A1, _xlpm.Half, _xlpm.TOP/2, _xlpm.half)+top",
  ],
  ["=LET(a,SUM(b,1),Other!a+a)", "_xlfn.LET(_xlpm.a,SUM(b,1),Other!a+_xlpm.a)"],
  ["=LET(f,LAMBDA(x,x+1),f(2))", "_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.x,_xlpm.x+1),_xlpm.f(2))"],
  ["=LAMBDA(kg,reps,kg*reps)(A1,B1)", "_xlfn.LAMBDA(_xlpm.kg,_xlpm.reps,_xlpm.kg*_xlpm.reps)(A1,B1)"],
  ["=LET(x,{1,2},x,3,x)", "_xlfn.LET(_xlpm.x,{1,2},_xlpm.x,3,_xlpm.x)"],
])("%s marks the names it gives", (formula, file) => {
  expect(spelled(formula)).toBe(file);
});

test("formulas that may give several values are told from the others", () => {
  for (const formula of ["=UNIQUE(A1:A9)", "=SUM(FILTER(A1:A9,B1:B9>1))", "=sequence(3)"]) {
    expect(toFileFormula(formula, "A1").isArray).toBe(true);
  }
  for (const formula of ["=SUM(A1:A9)", '="UNIQUE(A1)"', "=UNIQUE", "=IFS(A1,1)"]) {
    expect(toFileFormula(formula, "A1").isArray).toBe(false);
  }
});

test.each(["=MEETWARD.LEVEL(A1:B2)", "=1+meetward.level(A1)", '=IF(A1="x",MEETWARD.CHECK(B1:C2),"")'])(
  "%s belongs into no file",
  (formula) => {
    expect(() => toFileFormula(formula, 'B2 of "Plan"')).toThrow(
      /^B2 of "Plan" uses MEETWARD\..*cannot carry/i,
    );
  },
);

test("its name in a text is no call", () => {
  expect(spelled('="MEETWARD.LEVEL(A1)"')).toBe('"MEETWARD.LEVEL(A1)"');
});

test.each(["=A1#", "=@A1:A9", "1+1", `="${"x".repeat(8200)}"`])("%.20s… cannot be spelled", (formula) => {
  expect(() => toFileFormula(formula, "A1")).toThrow(/^(A1|The formula at A1) .*Maybe/s);
});
