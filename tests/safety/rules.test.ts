import { describe, expect, test } from 'vitest';
import { allRules } from '../../src/safety/all-rules.js';
import { makeScreen } from '../../src/safety/screen.js';

const screen = makeScreen();
const names = ['Wren', 'Finch'];
const found = (text: string, kind: string, rule: string) =>
  screen({ text, names }).findings.filter(
    (finding) =>
      finding.kind === kind && (finding.rule === rule || finding.rule === `${rule}: words of alarm`),
  );

describe('each rule matches its example and leaves its counter-example alone', () => {
  test.each(allRules.map((rule) => ({ row: `${rule.kind}: ${rule.name}`, rule })))('$row', ({ rule }) => {
    expect(found(rule.example, rule.kind, rule.name), rule.example).not.toEqual([]);
    expect(found(rule.not, rule.kind, rule.name), rule.not).toEqual([]);
  });
});

test('no two rules share kind and name', () => {
  const keys = allRules.map((rule) => `${rule.kind} ${rule.name}`);
  expect(new Set(keys).size).toBe(keys.length);
});
