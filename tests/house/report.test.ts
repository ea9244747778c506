import { describe, expect, it } from 'vitest';
import { countReport } from '../../.ci/report.mjs';

const file = (status: string, ...tests: string[]) => ({
  name: 'a.test.ts',
  status,
  assertionResults: tests.map((one, index) => ({ status: one, title: `test ${index}` })),
});
const report = (...files: ReturnType<typeof file>[]) => JSON.stringify({ testResults: files });

describe('countReport', () => {
  it('counts what passed and what failed, and names the failed', () => {
    const text = report(file('passed', 'passed', 'passed', 'skipped'), file('failed', 'passed', 'failed'));
    expect(countReport(text, false)).toEqual({ passed: 3, failed: 1, failures: ['a.test.ts: test 1'] });
  });

  it('counts a file that did not run as a failure', () => {
    expect(countReport(report(file('passed', 'passed'), file('failed')), false)).toMatchObject({
      passed: 1,
      failed: 1,
    });
  });

  it('counts an error outside any test as a failure', () => {
    expect(countReport(report(file('passed', 'passed')), false)).toMatchObject({ passed: 1, failed: 1 });
  });

  it('counts a run without a report, or without a test, as a failure', () => {
    for (const text of [undefined, '', '{', '{}', 'null']) {
      expect(countReport(text, true)).toMatchObject({ passed: 0, failed: 1 });
    }
    expect(countReport(report(), true)).toMatchObject({ passed: 0, failed: 1 });
  });
});
