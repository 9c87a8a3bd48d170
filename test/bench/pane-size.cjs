/** The size of the pane's bundle as it would travel: the pane with engine and sheets, minified and gzipped. */
const path = require("node:path");
const { gzipSync } = require("node:zlib");
const { buildSync } = require("esbuild");

const built = buildSync({
  entryPoints: [path.join(__dirname, "../../addin/taskpane/mount.tsx")],
  bundle: true,
  minify: true,
  write: false,
  outdir: "out",
  target: "es2022",
  format: "esm",
  jsx: "automatic",
  jsxImportSource: "preact",
});
const bytes = built.outputFiles.reduce((sum, file) => sum + gzipSync(file.contents).length, 0);
console.log(`${"the pane's bundle, minified and gzipped".padEnd(62)}${(bytes / 1000).toFixed(1)} kB`);
