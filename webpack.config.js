/**
 * Two pages: "bench", the task pane beside an in-browser grid (npm start), and "addin", what Excel loads.
 * The grid is large and never gets into the add-in's bundles.
 */
const path = require("node:path");
const { generateCustomFunctionsMetadata } = require("custom-functions-metadata");
const { EsbuildPlugin } = require("esbuild-loader");
const HtmlPlugin = require("html-webpack-plugin");
const CssPlugin = require("mini-css-extract-plugin");
const { sources } = require("webpack");

const BROWSERS = "es2022";
const PORT = 3000;

/** Writes functions.json, which tells Excel the names and parameters of the worksheet functions. */
class FunctionsMetadataPlugin {
  constructor(file) {
    this.file = file;
  }

  apply(compiler) {
    compiler.hooks.thisCompilation.tap("FunctionsMetadata", (compilation) => {
      compilation.hooks.processAssets.tapPromise("FunctionsMetadata", async () => {
        const { metadataJson, errors } = await generateCustomFunctionsMetadata(this.file);
        for (const error of errors ?? []) compilation.errors.push(new Error(`functions.json: ${error}`));
        compilation.fileDependencies.add(this.file);
        compilation.emitAsset("functions.json", new sources.RawSource(metadataJson));
      });
    });
  }
}

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

function addin(mode) {
  return {
    ...common("addin", mode),
    entry: { taskpane: "./addin/taskpane/index.tsx", functions: "./addin/functions/associate.ts" },
    plugins: [
      new CssPlugin(),
      new HtmlPlugin({
        filename: "taskpane.html",
        template: "addin/taskpane/taskpane.html",
        chunks: ["functions", "taskpane"],
      }),
      new FunctionsMetadataPlugin(path.resolve(__dirname, "addin/functions/functions.ts")),
    ],
  };
}

module.exports = (_env, { mode = "production" }) => [bench(mode), addin(mode)];
