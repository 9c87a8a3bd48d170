import officeAddins from "eslint-plugin-office-addins";
import typescript from "typescript-eslint";

export default [
  { ignores: ["dist/**", "node_modules/**", "**/*.mjs", "**/*.cjs", "webpack.config.js"] },
  ...typescript.configs.recommended,
  {
    files: ["**/*.ts", "**/*.tsx"],
    rules: {
      "no-control-regex": "error",
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_" }],
    },
  },
  // Whatever speaks to Excel itself; elsewhere the rules mistake other objects for its own.
  {
    files: ["addin/workbook/excel/**", "addin/functions/**", "addin/taskpane/**", "addin/ribbon/**"],
    plugins: { "office-addins": officeAddins },
    rules: {
      "office-addins/call-sync-after-load": "error",
      "office-addins/call-sync-before-read": "error",
      "office-addins/load-object-before-read": "error",
      "office-addins/no-context-sync-in-loop": "error",
      "office-addins/no-navigational-load": "error",
      "office-addins/no-office-initialize": "error",
    },
  },
  // A test may load a module afresh.
  { files: ["test/**"], rules: { "@typescript-eslint/no-require-imports": "off" } },
];
