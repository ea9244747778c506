/**
 * @typedef {{ status: string, title: string, fullName?: string }} Assertion
 * @typedef {{ name: string, status: string, message?: string, assertionResults: Assertion[] }} File
 */

/**
 * Counts a test run from vitest's JSON report. A test file that could not even be loaded is one failure; so is a run
 * that ended badly although no test failed (an error outside any test), and a run that left no report.
 * @param {string | undefined} text the report, if there is one
 * @param {boolean} endedWell whether vitest's exit code was 0
 * @returns {{ passed: number, failed: number, failures: string[] }}
 */
export function countReport(text, endedWell) {
  /** @type {File[]} */
  let files;
  try {
    files = JSON.parse(text ?? '').testResults;
    if (!Array.isArray(files)) throw new TypeError('no list of files');
  } catch {
    return { passed: 0, failed: 1, failures: ['tests: no report was left, so the run itself broke'] };
  }
  let passed = 0;
  /** @type {string[]} */
  const failures = [];
  for (const file of files) {
    const broken = file.assertionResults.filter((one) => one.status === 'failed');
    passed += file.assertionResults.filter((one) => one.status === 'passed').length;
    failures.push(...broken.map((one) => `${file.name}: ${one.fullName ?? one.title}`));
    if (file.status === 'failed' && broken.length === 0) failures.push(`${file.name}: the file did not run`);
  }
  if (!endedWell && failures.length === 0) failures.push('tests: an error outside any test; see above');
  if (endedWell && passed === 0) failures.push('tests: none ran');
  return { passed, failed: failures.length, failures };
}
