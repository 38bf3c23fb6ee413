import type { Move } from '../../shared/moves.js';

/** What a class needs before its pupils come in: who is called, and what a worried child reads. */
export const readyMoves: readonly Move[] = [
  { type: 'add-person', nickname: 'Egret', role: 'safeguarding lead' },
  { type: 'add-person', nickname: 'Knot', role: 'safeguarding deputy' },
  { type: 'change-setting', setting: 'alarm text', value: 'A grown-up has been told.' },
  { type: 'change-setting', setting: 'alarm number', value: '000 111' },
];
