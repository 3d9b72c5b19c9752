/** A vitest reporter whose last line says how it went: `N passed, N failed, N skipped`. */
export default class ClosingLine {
  onTestRunEnd(modules, unhandledErrors) {
    const states = modules.flatMap((module) => [...module.children.allTests()].map((test) => test.result().state));
    const count = (state) => states.filter((it) => it === state).length;
    const unloaded = modules.filter((module) => module.state() === "failed" && module.errors().length > 0).length;
    const failed = count("failed") + unloaded + unhandledErrors.length;
    process.once("exit", () => {
      process.stdout.write(`${count("passed")} passed, ${failed} failed, ${count("skipped")} skipped\n`);
    });
  }
}
