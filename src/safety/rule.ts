import type { FindingKind } from '../../shared/judgements.js';

/**
 * A rule of the screen: a pattern over the post as it is heard (small letters, words mended and set apart by single
 * spaces, "/" between sentences, "§" for a nickname of the class and "§s" for its possessive).
 * In a pattern `{name}` stands for a set of words, and ` ~3 ` for at most three words of the same sentence.
 */
export interface Rule {
  readonly name: string;
  readonly kind: FindingKind;
  readonly pattern: RegExp;
  /** Silent where this is the whole of the words found. */
  readonly unless: RegExp | null;
  /** Silent where this stands in the same sentence. */
  readonly unlessNear: RegExp | null;
  /** An example that matches, one that must not; "Wren" and "Finch" are nicknames in both. */
  readonly example: string;
  readonly not: string;
}

/** Sets of words that patterns share. */
export const sets: Readonly<Record<string, string>> = {
  you: 'you|§|you all|you two|you lot',
  your: 'your|ur|§s',
  youare: 'you are|you|ur|your|§ is|§ are|§ u|§',
  i: 'i|we|me and §|§ and i|me and my \\S+',
  me: 'me|us',
  nobody: 'nobody|none of us|not one of us|not a single person|not one person|zero people|hardly anyone',
  all: 'everyone|everybody|we all|all of us|we|the whole (?:class|group|school|year|team)|the rest of us|half the class|the others|all the (?:girls|boys|others|kids)|people|they all|most people|every single person',
  them: '§|him|her|them|that (?:kid|girl|boy|one|loser|weirdo|freak)|the new (?:kid|girl|boy)',
  kin: 'mums?|dads?|parents|family|brothers?|sisters?|grans?|grandad|uncle|aunt|cousin|stepdad|stepmum|house|flat|clothes|hair|shoes|trainers|face|phone|bike|coat',
  praise:
    'good|great|nice|kind|clever|smart|funny|best|brilliant|amazing|awesome|star|genius|legend|hero|friend|lovely|cool|helpful|brave|wonderful|fantastic|superstar|champ|champion|expert|pro|beautiful|pretty|strong|fair|fast|quick|careful|polite|fan|talented|excellent|super|perfect|queen|king|detective',
  role: 'leader|questioner|summariser|summarizer|clarifier|predictor|partner|pupil|student|reader|tutor|member|next|first|second|third|winner|captain|helper|writer|artist|goalkeeper|one who (?:asked|said|wrote|found|answered|should|can|will)|only one who (?:knew|got|noticed|saw|found)|bird|boy|girl|new|bit (?:late|quiet|early|tired|right)|little (?:late|right)|person who (?:asked|said|wrote)|right|lot (?:faster|better|like)',
  shun: 'answers?|talks? to|speaks? to|sits? (?:with|by|next to|near|beside)|plays? with|repl(?:y|ies) to|listens? to|likes?|votes? for|works? with|pairs? (?:up )?with|teams? up with|invites?|helps?|reads? with|believes?|trusts?|(?:be|is|are) friends with|goes near|go near|touch(?:es)?|walks? (?:home )?with|wants?|picks?|chooses?|cares? about|misses|lets?|waits? for|swaps? with|shares? with|needs?|asked|invited|chose|picked|missed|eats? with|hangs? (?:out|around) with|stands? (?:near|next to)|borrows?',
  start: '(?<=^ |\\/ |§ |just |please |ugh |then |eww? |haha |lol )',
  end: '(?= (?:\\/|§|$)| $)',
  very: '(?:(?:so|such|really|too|very|just|a|an|the|always|literally|actually|even|being|kinda|kind|of|bit|not|well|dead|proper|total|totally|complete|completely|absolute|absolutely|little|big|most|all|is|quite|pretty|honestly|still|by|far|def|like|fat|old|great) ){0,4}',
  parent: 'mum|dad|stepdad|stepmum|parents|mum and dad|step parents|foster (?:mum|dad|parents)',
  family:
    'mum|dad|stepdad|stepmum|parents|uncle|aunt|grandad|gran|brother|sister|stepbrother|stepsister|cousin|family|carer|guardian|foster (?:mum|dad|parents)|mums boyfriend|mums new boyfriend|dads girlfriend|boyfriend|girlfriend|husband|older brother|big brother|big sister',
  adult:
    'teacher|tutor|coach|trainer|neighbour|babysitter|sitter|man|woman|grown up|adult|stranger|driver|priest|doctor|helper|lodger|landlord|friend of (?:my )?(?:dad|mum)s?|(?:dad|mum)s friend|someone|somebody|guy|bloke|lady|older (?:boy|girl|kid|man|guy)',
  kids: 'boys|girls|kids|bullies|gang|big kids|older kids|older boys|class|others|year \\S+s',
  hit: 'hit|hits|hitting|beat|beats|beating|beaten|slap|slaps|slapped|slapping|punch|punches|punched|punching|kick|kicks|kicked|kicking|smack|smacks|smacked|smacking|whack|whacks|whacked|thump|thumps|thumped|belt|belts|belted|whip|whips|whipped|choke|chokes|choked|strangle|strangles|strangled|shake|shakes|shook|shove|shoves|shoved|push|pushes|pushed|burn|burns|burned|burnt|bite|bites|grab|grabs|grabbed|pinch|pinches|pinched|drag|drags|dragged|hurt|hurts|hurting|harm|harms|attack|attacks|attacked|batter|batters|battered|throw|throws|threw|lock|locks|locked|tie|ties|tied|starve|starves|threaten|threatens|threatened|scratch|scratches|stab|stabs|stabbed',
  often:
    'every (?:day|night|time|week|evening|morning|weekend|break|lunch)|all the time|always|again|when|if|because|at home|at night|most days|each night|last night|yesterday|tonight|this morning|really hard|so hard|with (?:a|the|his|her) (?:belt|stick|shoe|slipper|spoon|cable|wire|bottle|hand|fist)|alot|for no reason|until',
  now: 'now|tonight|tomorrow|today|on (?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)|after (?:school|break|lunch|class)|at (?:break|lunch|school|home time)|next week|next time|soon|later',
  long: 'since|for (?:days|weeks|a week|two|three|four|five|\\d+|ages|so long|nights|months|a long time|a month)|in (?:days|weeks)|every (?:night|day|evening|weekend)|all (?:night|day|weekend|week)|again|until|till|most (?:days|nights)|days|nights|by myself|by ourselves|on my own|on our own|alone|at night',
  body: 'face|hair|teeth|nose|ears|skin|glasses|spots|braces|belly|tummy|legs|feet|weight|breath|voice|accent|lisp|stutter|clothes|shoes|trainers|jumper|coat|trousers|dress|bag|lunch|lunchbox|brain|smell|pants|underwear|wheelchair|hearing aid|handwriting',
};

/** Turns a pattern of the little language into a regular expression; each repetition is bounded, so that no text makes it slow. */
export function heardAs(pattern: string): RegExp {
  const source = pattern
    .replace(/\{(\w+)\}/gu, (whole, name: string) => {
      const set = sets[name];
      if (set === undefined) {
        if (/^[LN]$/u.test(name)) return whole;
        throw new Error(`Cannot read the pattern "${pattern}", expected a known set, got {${name}}`);
      }
      return name === 'start' || name === 'end' || name === 'very' ? set : `(?:${set})`;
    })
    .replace(/ ~(\d) /gu, (_, most: string) => `(?: [^\\s/]+){0,${most}} `);
  if (source.includes('~'))
    throw new Error(`Cannot read the pattern "${pattern}", expected a space around each gap`);
  return new RegExp(`(?<= )(?:${source})(?= |$)`, 'gu');
}

/** The pattern made to match all of a text that has one space at both ends. */
function whole(pattern: RegExp): RegExp {
  return new RegExp(`^ ${pattern.source} ?$`, 'u');
}

/** One row of a table of rules: name, pattern, example that matches, example that must not, and what silences it. */
export type Row = readonly [
  name: string,
  pattern: string,
  example: string,
  not: string,
  unless?: string,
  unlessNear?: string,
];

/** Reads a table of rules of one kind. */
export function rulesOf(kind: FindingKind, rows: readonly Row[]): readonly Rule[] {
  return rows.map(([name, pattern, example, not, unless, unlessNear]) => ({
    name,
    kind,
    pattern: heardAs(pattern),
    unless: unless === undefined || unless === '' ? null : whole(heardAs(unless)),
    unlessNear: unlessNear === undefined ? null : heardAs(unlessNear),
    example,
    not,
  }));
}
