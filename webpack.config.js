/** The bench page: the task pane beside an in-browser grid. */
const path = require("node:path");
const { EsbuildPlugin } = require("esbuild-loader");
const HtmlPlugin = require("html-webpack-plugin");
const CssPlugin = require("mini-css-extract-plugin");

const BROWSERS = "es2022";
const PORT = 3000;

function common(name, mode) {
  return {
    name,
    mode,
    target: ["web", BROWSERS],
    // No eval: the bench page's content policy forbids it.
    devtool: mode === "development" ? "source-map" : false,
    output: {
      path: path.resolve(__dirname, "dist", name),
      filename: mode === "development" ? "[name].js" : "[name].[contenthash:8].js",
      clean: true,
    },
    resolve: { extensions: [".tsx", ".ts", ".mjs", ".js"] },
    module: {
      rules: [
        {
          test: /\.tsx?$/,
          loader: "esbuild-loader",
          options: { target: BROWSERS, jsx: "automatic", jsxImportSource: "preact" },
        },
        { test: /\.css$/, use: [CssPlugin.loader, "css-loader"], sideEffects: true },
      ],
    },
    optimization: { minimizer: [new EsbuildPlugin({ target: BROWSERS, css: true, legalComments: "none" })] },
    performance: { hints: false },
    stats: "errors-warnings",
  };
}

function bench(mode) {
  return {
    ...common("bench", mode),
    entry: { bench: "./addin/workbook/bench/page.ts" },
    plugins: [new CssPlugin(), new HtmlPlugin({ template: "addin/workbook/bench/page.html" })],
    devServer: {
      host: "localhost",
      port: PORT,
      static: false,
      client: { overlay: { warnings: false, errors: true, runtimeErrors: false } },
    },
  };
}

module.exports = (_env, { mode = "production" }) => [bench(mode)];
