import type { Judgement } from '../../shared/judgements.js';
import type { Look } from '../../shared/looks.js';
import type { Block, Choice, Message } from '../../shared/messages.js';
import { segmentText } from '../practice/lookup.js';
import type { Post } from '../practice/state.js';
import { reasonsOf } from '../progress/why.js';
import { judgedLevel } from '../progress/week-check.js';
import { answer, found, nameOf, staff, type Asked } from './asked.js';
import {
  choice,
  choices,
  form,
  heading,
  list,
  look,
  move,
  pick,
  prose,
  quotation,
  sameOptions,
  typed,
} from './blocks.js';
import { findingWords, staffBy, staffQuotation } from './staff-posts.js';

const levels = [0, 1, 2, 3] as const;
/** From this share of words that stand in another pupil's post, staff are told; ours. */
const fromPeers = 0.5;

function judgedAs(judgement: Judgement): string {
  const { level, value, probability } = judgement;
  const slots = { level: level ?? '–', value, percent: Math.round(100 * (probability ?? 0)) };
  return staff(probability === null ? 'judged as' : 'judged as, sure', slots);
}

function judgementBlocks(asked: Asked, post: Post): readonly Block[] {
  const judgement = post.second ?? post.first;
  if (judgement === null) return [prose(staff('not judged'))];
  const peers = judgement.kind === 'sum-up' && judgement.measures.copiedFromPeers >= fromPeers;
  const outcome = judgement.kind === 'predict' ? judgement.measures.outcome : null;
  return [
    prose(judgedAs(judgement)),
    ...list([
      ...reasonsOf(asked.state, post, judgement.reasons),
      ...(peers ? [staff('from peers')] : []),
      ...(outcome === null ? [] : [staff('computed outcome', { outcome })]),
      ...(post.saidWhere === null ? [] : [staff('said where', { where: post.saidWhere })]),
      ...(post.outcome === null ? [] : [staff('said outcome', { outcome: post.outcome })]),
    ]),
    ...(post.overruled === null ? [] : [prose(staff('your word', { level: post.overruled.level }))]),
  ];
}

/** Whether a question was judged literal or inferential; null where unsure, and of other posts. */
function judgedKind({ first, second }: Post): 'literal' | 'inferential' | null {
  const judged = second ?? first;
  return judged?.kind === 'question' && judged.value !== 'unsure' ? judged.value : null;
}

/** One tap for each level, the judged one as agreement, which counts in the check on the judges; a form where a note or a kind is wanted. */
function overruleBlocks(post: Post): readonly Block[] {
  const judged = judgedLevel(post);
  const taps = levels.map((level): Choice => {
    const label = staff(level === judged ? 'agree' : 'level', { level });
    const kind = level === judged ? judgedKind(post) : null;
    const fields = { post: post.id, level: String(level), ...(kind === null ? {} : { as: kind }) };
    return choice(label, move('overrule', fields));
  });
  return [
    ...choices(staff('your level'), taps),
    form(
      staff('overrule'),
      move('overrule', { post: post.id }),
      [
        pick(
          'level',
          staff('level label'),
          levels.map((level) => ({ value: String(level), label: staff('level', { level }) })),
        ),
        ...(post.do === 'question'
          ? [pick('as', staff('as label'), sameOptions(['literal', 'inferential']), false)]
          : []),
        typed('text', 'note', staff('own note'), { required: false, max: 400 }),
      ],
      staff('save'),
    ),
  ];
}

function heldBlocks(asked: Asked, post: Post): readonly Block[] {
  if (post.stage.stage !== 'held') return [];
  const reasons = post.findings.map((finding) => findingWords(post, finding));
  return [
    prose(staff(`held ${post.stage.why}`)),
    ...list([...new Set(reasons)]),
    ...choices(null, [
      ...(post.stage.why === 'alarm'
        ? [choice(staff('see alarms'), look('alarms'))]
        : [choice(staff('publish one'), move('release', { posts: post.id }))]),
    ]),
    form(
      staff('send back'),
      move('send-back', { post: post.id }),
      [typed('text', 'note', staff('note to pupil'), { max: 400 })],
      staff('send back'),
    ),
  ];
}

/** One post with the text it is about, its judgement with reasons and quotations, and taps to overrule. */
export function post(asked: Asked, { post: id }: Extract<Look, { type: 'post' }>): readonly Message[] {
  const one = found(asked.state.posts[id], 'a post');
  const title = staffBy(asked.state, one);
  const segment = segmentText(asked.state, one.passage, one.stop);
  const on = one.to === null ? undefined : asked.state.posts[one.to];
  const isAlarm = one.stage.stage === 'held' && one.stage.why === 'alarm';
  const shows = one.stage.stage === 'public' || one.stage.stage === 'held';
  return [
    answer(asked, title, [
      heading(title),
      ...(isAlarm ? [] : [staffQuotation(asked.state, one)]),
      ...(on === undefined ? [] : [staffQuotation(asked.state, on)]),
      ...(isAlarm ? [] : judgementBlocks(asked, one)),
      ...heldBlocks(asked, one),
      ...(one.first === null || isAlarm ? [] : overruleBlocks(one)),
      ...(one.do === 'clarify' && !isAlarm
        ? choices(null, [choice(staff('see words'), look('words', { group: one.group }))])
        : []),
      ...(shows ? choices(null, [choice(staff('remove'), move('remove', { post: id }))]) : []),
      ...(segment === '' ? [] : [quotation(segment, null)]),
      prose(staff('given by', { given: one.given, help: one.help, who: nameOf(asked.state, one.person) })),
      ...choices(null, [
        choice(staff('see waiting'), look('waiting')),
        choice(staff('see digest'), look('digest', { group: one.group })),
      ]),
    ]),
  ];
}
