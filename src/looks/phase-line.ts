import type { Practice } from '../practice/state.js';
import { nameOf, staff, type Asked } from './asked.js';

/** What staff read of where a practice stands, in one line. */
export function phaseLine(asked: Asked, practice: Practice): string {
  const when = asked.port.when;
  switch (practice.phase) {
    case 'none':
      return staff('phase none');
    case 'waiting':
      return practice.opensOn === null
        ? staff('phase waiting later', { part: practice.nextStop + 1 })
        : staff('phase waiting', { part: practice.nextStop + 1, when: when(practice.opensAt) });
    case 'open': {
      const { stop, leader, times } = practice.segment;
      const slots = { part: stop + 1, when: when(times.closesAt) };
      return leader === null
        ? staff('phase open', slots)
        : staff('phase open led', { ...slots, leader: nameOf(asked.state, leader) });
    }
    case 'paused':
      return staff(`phase paused ${practice.why}`, { when: when(practice.since) });
    default:
      return practice satisfies never;
  }
}
