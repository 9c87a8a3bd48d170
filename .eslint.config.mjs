import officeAddins from "eslint-plugin-office-addins";
import typescript from "typescript-eslint";

export default [
  { ignores: ["dist/**", "node_modules/**", "**/*.mjs", "webpack.config.js"] },
  ...typescript.configs.recommended,
  {
    files: ["**/*.ts", "**/*.tsx"],
    plugins: { "office-addins": officeAddins },
    rules: {
      "office-addins/call-sync-after-load": "error",
      "office-addins/call-sync-before-read": "error",
      "office-addins/load-object-before-read": "error",
      "office-addins/no-context-sync-in-loop": "error",
      "office-addins/no-navigational-load": "error",
      "office-addins/no-office-initialize": "error",
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_" }],
    },
  },
];
