// Prints where the packaged browser is and the surroundings it needs. A process of its own, since the package is an ES
// module and the tests run as CommonJS.
process.env.AWS_EXECUTION_ENV ??= "AWS_Lambda_nodejs20.x"; // or it leaves its libraries packed
const { default: chromium } = await import("@sparticuz/chromium");
const executablePath = await chromium.executablePath();
const { LD_LIBRARY_PATH, FONTCONFIG_PATH } = process.env;
console.log(JSON.stringify({ executablePath, env: { LD_LIBRARY_PATH, FONTCONFIG_PATH } }));
