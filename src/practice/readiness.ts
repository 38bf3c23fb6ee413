import { peopleOfRole } from './lookup.js';
import type { ClassState } from './state.js';

/** What a class can lack without which no pupil's slip opens it. */
export const needs = ['alarm text', 'alarm number', 'lead', 'deputy'] as const;
export type Need = (typeof needs)[number];

/** What a class still lacks: the text and the number that a worried child reads, and the adults who are called. */
export function missingOf(state: ClassState): readonly Need[] {
  const { alarmText, alarmNumber } = state.settings;
  const there: Readonly<Record<Need, boolean>> = {
    'alarm text': alarmText !== null,
    'alarm number': alarmNumber !== null,
    lead: peopleOfRole(state, 'safeguarding lead').length > 0,
    deputy: peopleOfRole(state, 'safeguarding deputy').length > 0,
  };
  return needs.filter((need) => !there[need]);
}
