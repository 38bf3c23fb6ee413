import type { Level, Relationship } from '../../shared/strategies.js';

/** What a question's level hangs on; shares 0..1. */
export interface LevelGround {
  readonly isQuestion: boolean;
  readonly label: 'literal' | 'inferential' | 'unsure';
  readonly relationship: Relationship | null;
  readonly onTopic: number;
  readonly copied: number;
  readonly mainIdea: number;
  /** Why or how. */
  readonly manner: boolean;
  /** Share of the asker's own answer that the text bears out; null without an answer. */
  readonly evidence: number | null;
}

/** From these shares on something holds; ours, no source. */
const held = { copied: 0.5, mainIdea: 0.5, evidence: 0.4, offTopic: 0.15 };

/**
 * Level of a question by the tutor's table (common practice): 0 asks nothing or is off topic; 1 a detail or copied
 * wording; 2 joins places or needs an inference, or a detail that is the main idea; 3 main idea or a why or how that the
 * asker has answered with evidence. Null where the judge is unsure: that is no try.
 */
export function questionLevel(ground: LevelGround): Level | null {
  if (!ground.isQuestion) return 0;
  if (ground.copied >= held.copied) return 1;
  if (ground.onTopic < held.offTopic) return ground.relationship === 'on my own' ? 0 : null;
  if (ground.label === 'unsure') return null;
  const main = ground.mainIdea >= held.mainIdea;
  if (ground.relationship === 'on my own') return 1;
  if (ground.relationship === 'right there' && !main) return 1;
  const answered = ground.evidence !== null && ground.evidence >= held.evidence;
  return (main || ground.manner) && answered && ground.relationship !== 'right there' ? 3 : 2;
}
