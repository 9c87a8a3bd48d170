/**
 * The spreadsheet program in a process of its own, outside any test runner's module loader. Reads one request a line,
 * { input, output, format }: file names; answers one line each, { ok } or { error }.
 */
const { readFile, writeFile } = require("node:fs/promises");
const path = require("node:path");
const readline = require("node:readline");
const { createSubprocessConverter } = require("@matbee/libreoffice-converter/server");

const answer = (what) => process.stdout.write(`@${JSON.stringify(what)}\n`);

async function main() {
  const wasmPath = path.join(
    path.dirname(require.resolve("@matbee/libreoffice-converter/package.json")),
    "wasm",
  );
  const converter = await createSubprocessConverter({ wasmPath });
  answer({ ok: true });
  for await (const line of readline.createInterface({ input: process.stdin })) {
    const { input, output, format } = JSON.parse(line);
    try {
      const bytes = await readFile(input);
      const { data } = await converter.convert(
        bytes,
        { inputFormat: "xlsx", outputFormat: format },
        path.basename(input),
      );
      await writeFile(output, data);
      answer({ ok: true });
    } catch (error) {
      answer({ error: String(error) });
    }
  }
  await converter.destroy();
  process.exit(0);
}

main().catch((error) => {
  answer({ error: String(error) });
  process.exit(1);
});
