import type { GroupId } from '../../shared/ids.js';
import type { ClassState, Post } from '../practice/state.js';
import type { Digest, OpenPrediction, PostToCheck } from './digest-shape.js';
import { gather, type DigestInput, type Facts } from './facts.js';
import { groupLine } from './group-line.js';
import { groupsIn, standing } from './in-group.js';
import { uncheckedPredictions } from './predictions.js';
import { pupilDigest } from './pupil-digest.js';
import { nameOf, quoteOf } from './quoting.js';
import { suggestionsFor } from './suggestions.js';
import { agreementWithTutor, judgedLevel, postsToCheck } from './week-check.js';

function passagesOf(state: ClassState, group: GroupId | null): Digest['passages'] {
  return groupsIn(state, group).flatMap((one) => {
    const now = standing(one.practice);
    const read = one.finished.map(({ passage }) => {
      const all = state.shelf[passage]?.reading.segments.length ?? 0;
      return { passage, closed: all };
    });
    return [...read, ...(now === null ? [] : [now])].map(({ passage, closed }) => {
      const reading = state.shelf[passage]?.reading;
      return { title: reading?.title ?? '', segments: reading?.segments.length ?? 0, closed };
    });
  });
}

function openPrediction(facts: Facts, post: Post): OpenPrediction {
  const judged = post.second ?? post.latest;
  return {
    post: post.id,
    nickname: nameOf(facts.state, post.person),
    text: quoteOf(facts.state, post.id),
    outcome: judged?.kind === 'predict' && !judged.measures.negated ? judged.measures.outcome : null,
  };
}

function toCheck(facts: Facts): readonly PostToCheck[] {
  return postsToCheck(facts.state, facts.at).flatMap((checked) => {
    const post = facts.state.posts[checked.post];
    if (post === undefined) return [];
    return [
      {
        ...checked,
        nickname: nameOf(facts.state, post.person),
        do: post.do,
        text: quoteOf(facts.state, post.id),
        level: judgedLevel(post),
      },
    ];
  });
}

function namesOf(facts: Facts, which: (person: Facts['pupils'][number]) => boolean): readonly string[] {
  return facts.pupils.filter(which).map(({ id }) => nameOf(facts.state, id));
}

/** What a tutor reads before the next session, of one group or of the whole class. The same input gives the same bytes. */
export function digestOf(input: DigestInput): Digest {
  const facts = gather(input);
  const { state, group } = facts;
  const here = new Set(facts.pupils.map(({ id }) => id));
  const answered = new Set(
    facts.talk.filter((post) => post.do === 'answer' || post.do === 'add').map((post) => post.person),
  );
  const pupils = facts.pupils.map((person) => pupilDigest(facts, person));
  return {
    passages: passagesOf(state, group),
    pupils,
    held: facts.sent.filter((post) => post.stage.stage === 'held').length,
    alarms: Object.values(state.alarms).filter((alarm) => here.has(alarm.person)).length,
    words: facts.words.map(({ word, pupils: who, meaning, posts }) => ({
      word,
      pupils: who.map((person) => nameOf(state, person)),
      meaning,
      posts,
    })),
    next: suggestionsFor(facts),
    at: facts.at,
    group: groupLine(facts),
    notLed: pupils.filter(({ led }) => led === 0).map(({ nickname }) => nickname),
    notAnswered: facts.talk.length === 0 ? [] : namesOf(facts, ({ id }) => !answered.has(id)),
    predictions: uncheckedPredictions(facts).map((post) => openPrediction(facts, post)),
    agreement: agreementWithTutor(state),
    check: toCheck(facts),
  };
}
