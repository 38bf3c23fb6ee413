import type { Block, Message } from '../../shared/messages.js';
import { pupilsOf, groupsOf } from '../practice/lookup.js';
import type { Group, Person } from '../practice/state.js';
import { turnOf, type Step } from '../practice/turn.js';
import { answer, nameOf, staff, type Asked } from './asked.js';
import { heading, list, prose } from './blocks.js';
import { phaseLine } from './phase-line.js';

function stepWords(step: Step): string {
  return step.step === 'do' ? staff(`today ${step.do}`) : staff(`today ${step.step}`);
}

/** "Wren leads: asks the first question": what a teacher or a parent may remind a child of; nothing of how it went before. */
function pupilLine(asked: Asked, pupil: Person): string | null {
  const who = nameOf(asked.state, pupil.id);
  const { next, leads, phase } = turnOf(asked.state, pupil.id, asked.at);
  if (phase === 'none' || phase === 'paused' || phase === 'waiting') return null;
  const what = next === null ? null : stepWords(next);
  if (leads) return what === null ? staff('today led', { who }) : staff('today leads', { who, what });
  return what === null ? null : staff('today does', { who, what });
}

function groupBlocks(asked: Asked, group: Group): readonly Block[] {
  const lines = pupilsOf(asked.state, group.id)
    .map((pupil) => pupilLine(asked, pupil))
    .filter((line) => line !== null);
  return [
    heading(group.name),
    prose(phaseLine(asked, group.practice)),
    ...(lines.length === 0 ? [prose(staff('today nothing'))] : list(lines)),
  ];
}

/** A list to print in the morning: what each pupil has to do today, since the room can't reach a child. */
export function morningList(asked: Asked): readonly Message[] {
  const title = staff('morning title', { when: asked.port.when(asked.at) });
  return [
    answer(asked, title, [
      heading(title),
      ...groupsOf(asked.state).flatMap((group) => groupBlocks(asked, group)),
    ]),
  ];
}
