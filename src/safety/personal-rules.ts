import type { FindingKind } from '../../shared/judgements.js';

/** A rule over the folded text (small letters, punctuation kept), in which nicknames stand as they are. */
export interface DetailRule {
  readonly name: string;
  readonly kind: FindingKind;
  readonly pattern: RegExp;
  /** Silent where this matches the words found. */
  readonly unless: RegExp | null;
  /** Whether words that the passage has too are a detail of the story. */
  readonly story: boolean;
  readonly example: string;
  readonly not: string;
}

const parts: Readonly<Record<string, string>> = {
  app: '(?:insta\\w*|snap\\w*|tik ?tok|tiktok|roblo\\w*|fort\\w+|mine ?craft|discord|you ?tube|twitch|xbox|psn|playstation|ps[45]|switch|steam|whats ?app|telegram|facebook|fb|messenger|brawl ?\\w*|steam|kik|viber|signal|skype|the game|the app|\\w+(?:tok|gram|chat|tube|craft|blox|cord|verse|snap|pond))',
  folk: '(?:mum|mom|mam|dad|parents?|gran|grandma|grandad|nan|nana|granny|auntie?|uncle|brother|sister|stepdad|stepmum|cousin|carer|foster mum|babysitter|mother|father|folks|family)',
  own: "(?:my|our|mine|his|her|their|ur|your|my (?:mums?|moms?|dads?|sisters?|brothers?|friends?|cousins?|nans?|grans?)(?:'s|s)?)",
  is: "(?:'s|s|is|are|was|=|:|ist|es|est|to|->|named|called)",
  month:
    '(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?|januar|februar|marz|mai|juni|juli|oktober|dezember|enero|febrero|marzo|abril|mayo|junio|julio|agosto|octubre|noviembre|diciembre|janvier|fevrier|avril|juin|juillet|aout|octobre|decembre)',
  day: '(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|mon|tues?|weds?|thurs?|fri|sat|sun)s?',
  ordinal:
    '(?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth|thirteenth|fourteenth|fifteenth|sixteenth|seventeenth|eighteenth|nineteenth|twentieth|twenty[ -]\\w+|thirtieth|thirty[ -]first|\\d{1,2}(?:st|nd|rd|th)?)',
  feast:
    '(?:christmas(?: eve| day)?|xmas|halloween|new years?(?: eve| day)?|valentines?(?: day)?|boxing day|bonfire night|easter(?: sunday)?|eid|diwali|hanukkah|midsummer(?: day)?|leap day|april fools?(?: day)?)',
  number:
    '(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|\\d{1,2})',
  time: "(?:at (?:about |around |exactly )?(?:half past |quarter (?:past|to) |\\d{1,2} (?:past|to) )?(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|noon|midnight|lunch|break|\\d{1,2})(?::\\d\\d|\\.\\d\\d)?|\\d{1,2}[:.]\\d\\d|\\d{1,2} ?(?:am|pm|o'? ?clock)|\\w+ o'? ?clock|half past \\w+|quarter (?:past|to) \\w+|tonight|tonite|2nite|tomorrow|2moro|tmrw|tomoz|after (?:school|lunch|practice|class|training|church)|this (?:afternoon|evening|weekend)|home ?time|every \\w+day)",
  street:
    '(?:street|strt|road|rd|lane|ln|avenue|ave|drive|crescent|cres|terrace|gardens|boulevard|blvd|highway|parade|mews|cul-de-sac|strasse|straße|weg|gasse|allee|platz|ulica|ul\\.|rue|calle|avenida|via|estate|heights|st\\.?)',
  wayName:
    '(?:close|court|place|square|grove|row|hill|park|view|walk|rise|green|mount|way|yard|path|gate|circle|trail|drive)',
  spot: '(?:pool|baths|park|library|shops?|chip shop|chippy|corner(?: shop)?|bike sheds?|sheds?|gates?|lockers|church(?: hall)?|hall|playground|station|bus stop|bus shelter|bridge|field|pitch|rink|cinema|mall|market|arcade|cafe|bakery|car ?park|swings|skate ?park|beach|pier|gym|club|leisure centre|sports centre|town hall|fountain|clock tower|tower|bandstand|woods|pond|canteen|toilets|courts?|bench|statue|oak|tree|supermarket|post office|front door|back gate|entrance|theatre|museum|den|treehouse|tree house|garages?|underpass|alley|lake|shelter|newsagents?|ice rink|bowling)',
  building:
    '(?:swimming pool|pool|baths|bakery|bakers|church|mosque|temple|library|shops?|chip shop|chippy|pub|inn|school|station|fire station|police station|park|supermarket|hospital|garage|post office|butchers?|cemetery|graveyard|cinema|doctors|surgery|dentist|bridge|bus stop|petrol station|gas station|mill|factory|football (?:pitch|ground|stadium)|stadium|town hall|market|museum|playground|skate ?park|zoo|farm shop|takeaway|launderette|laundrette|bank|hotel|nursery|newsagents?)',
};

function pattern(source: string): RegExp {
  const full = source.replace(/\{(\w+)\}/gu, (whole, name: string) => parts[name] ?? whole);
  return new RegExp(`(?<![\\p{L}\\p{N}_])(?:${full})(?![\\p{L}\\p{N}_])`, 'gu');
}
/** A row of a table of details: name, pattern in the little language, example, counter-example, options (`own`: told of one's own life, so that the passage doesn't excuse it). */
export type DetailRow = readonly [
  name: string,
  source: string,
  example: string,
  not: string,
  options?: { readonly unless?: string; readonly own?: boolean; readonly kind?: FindingKind },
];

/** Reads a table of rules about details. */
export function detailRules(rows: readonly DetailRow[]): readonly DetailRule[] {
  return rows.map(([name, source, example, not, options = {}]) => ({
    name,
    kind: options.kind ?? 'personal',
    pattern: pattern(source),
    unless: options.unless === undefined ? null : pattern(options.unless),
    story: options.own !== true,
    example,
    not,
  }));
}

const w = "[\\p{L}\\p{N}'-]{1,30}";

/** Details by which a stranger could find, reach or sign in as a child. The list is this project's own. */
export const personalRules: readonly DetailRule[] = detailRules([
  [
    'e-mail spelt out',
    `[\\p{L}\\p{N}._-]+ ?(?:@|[([{<]? ?(?:at|arroba|ät|klammeraffe|chez|malpa) ?[)\\]}>]?) ?[\\p{L}\\p{N}-]+(?: ?[\\p{L}\\p{N}-]+)? ?[([{<]? ?(?:dot|punkt|punto|kropka|point|\\.) ?[)\\]}>]? ?(?:com|org|net|edu|co|uk|io|de|fr|pl|es|example|test|info|me|school|gov|us)|(?:e-?mail|mail) (?:me )?(?:address )?(?:is|at|=|:) ?\\S+`,
    'its leo (at) example (dot) com',
    'the dot at the end',
  ],
  [
    'handle',
    `@(?:[\\p{L}\\p{N}]+[._-])*[\\p{L}\\p{N}_]{2,}|[\\p{L}]{2,}(?:_[\\p{L}\\p{N}]+)+|[\\p{L}\\p{N}]+_\\d+|[\\p{L}]{3,}\\d{2,}(?:[\\p{L}]+)?|[\\p{L}]{3,}\\d[\\p{L}]{3,}`,
    'add otterboy_2013',
    'w8 for me',
    {
      unless:
        '(?:seg|page|line|pg|part|ch|chapter|class|year|level|room|team|group|grade|covid|mp|top|round|day|number|para|paragraph|question|no|figure|fig|table|apollo|route|area|ww|utf|num|sentence|step|stop|unit|h\\do|l\\dr)\\d+|some1s?|any1\\w*|every1\\w*|\\p{L}+4ever|4ever\\w*|no1\\w*|str8\\w*|(?:[sdmlw]0{2,}\\p{L}*)|\\w*0\\w*0r\\w*',
      own: true,
    },
  ],
  [
    'contact elsewhere',
    `(?:follow|add|friend|find|look|msg|message|dm|pm|snap|text|contact|chat with|search|sub to|subscribe to|facetime|skype) (?:me|us|up|my)(?: up)?[, ]+(?:on|at|im|i'?m|in|by|over|outside|to me on|@|my|its|name)|(?:my|ma) (?:user ?name|user|gamer ?tag|handle|tag|account|acc|profile|channel|@|insta\\w*|snap\\w*|id|gaming name|game name|player name|login name|skype|discord|friend code|ign|screen ?name|nick on \\w+|chat name)(?: in the \\w+(?: \\w+)?| on (?:the )?\\w+| for \\w+)? ?(?:is|:|=|'?s|are|@)|(?:friend|invite|room|lobby|game|server|join|party) ?code:? ?(?:is )?[\\p{L}\\d-]*\\d|(?:dm|pm|msg|hmu) (?:me|@)|i'?m [\\p{L}\\p{N}_.-]+ (?:on (?:all|every|chat|the app|there|here and)|everywhere)|(?:add|friend) me|(?:be|are) friends? (?:on|in) (?:the )?(?:game|app|chat|online)|(?:search|look) (?:for|up) my (?:name|channel|profile|page|account)`,
    'follow me on chatterpond',
    'they follow him on the road',
    { own: true },
  ],
  [
    'password',
    `(?:my |the |our |a |use (?:my )?|his |her |ur |login |school |wifi |reading |class )*(?:password|passwort|passwd|passw|pass ?code|passcode|pass|pwd?|pin|pin ?code|contrasena|mot de passe|haslo|log ?in|sign ?in|wifi(?: code| key)?|door ?code|gate ?code|alarm ?code|locker ?code|key ?code|code for \\w+(?: \\w+)?|secret code|unlock code|security (?:code|question|answer))(?: (?:for|to|of|on) (?:my |the |our )?\\w+(?: \\w+)?)? ?(?:is|was|=|:|ist|es|est|it'?s|'s|to) ?["'“]?(?!(?:really|so|very|too|not|a secret|secret|hard|easy|safe|wrong|long|short|the same|in|what|because|when|that|only|always|never|important|needed|gone|lost|to|forgotten|like|something|a|just|your|for)(?![\\p{L}\\p{N}]))\\S{3,}|(?:my )?(?:pin|password|pass ?code|pw)(?: number| code)? \\d{3,}|(?:use|try|type|put in) (?:my|this|the) (?:login|password|pass|pw|pin|account)|(?:use|have|borrow) (?:yours|mine)[?.!,]* mine (?:is|was) \\S+|(?:log|sign) (?:in )?(?:as|with|to my|into my|in as me) \\S+`,
    'passwort ist apfelbaum8',
    'i always forget my password',
  ],
  [
    'address',
    `(?:flat|apartment|apt|unit|house|number|no|nr|block|room|door)\\.? ?(?:\\d{1,5}|{number})[a-z]?,? (?:on |in |at |of )?(?:\\d+ )?(?:${w} ){1,3}(?:{street}|{wayName})|\\d{1,5}[a-z]?,? (?:${w} ){1,3}{street}|\\d{1,5}[a-z]? (?:${w} ){1,2}{wayName}|(?:${w} ){1,2}{street},? (?:number|no|nr|house|flat)\\.? ?(?:\\d+|{number})|${w}(?:strasse|straße|gasse|weg|platz) \\d+[a-z]?|(?:ulica|ul\\.|rue|calle|via) (?:${w} ){1,3}\\d+|\\d{1,4},? (?:rue|avenue|allee|boulevard|calle|via|ulica|place) ${w}(?: ${w})?|(?:mum|dad|mom|she|he|gran|uncle|aunt|${w}) works? (?:at|in|for) (?:the )?${w}.{0,30}(?:{street}|{wayName})`,
    '14 Quillfeather Lane',
    'he walked 14 miles down the lane',
    { unless: '.*(?:miles?|km|days?|years?|people|times|men|steps|minutes|metres|meters|soldiers|sheep) .*' },
  ],
  [
    'postcode',
    `[a-z]{1,2}\\d[a-z\\d]? \\d[a-z]{2}|(?:zip|post ?code|postal code|plz)(?: code)? ?(?:is|:|=)? ?[a-z\\d]{3,8}|[a-z]\\d[a-z] \\d[a-z]\\d`,
    'WX4 9ZQ',
    'b4 2nd',
    { unless: '\\p{L}+ \\d(?:st|nd|rd|th|pm|am)|.* \\d(?:nd|st|rd|th|pm|am|km|cm|mm|kg|ml)' },
  ],
  [
    'where a child lives',
    `(?:i|we|i'?ve|she|he|they|${w}) ?(?:still |now |both |all |only )?(?:live|lives|living|stay|stays|moved|moving|am from|im from)(?: right| just)? (?:on|at|in|next (?:to|door)|near|behind|opposite|across|by|beside|above|over|under|down|up|round|around|close to|right by|to|from|between)(?: from| to)? (?:the |a |our |my )?(?:(?:${w} ){0,3}(?:{street}|{wayName}|flats?|estate|block)|(?:flat|house|number|no|room|block|door) ?(?:\\d|{number})|(?:last|first|end|yellow|red|blue|green|white|corner) house|{building}|(?:${w} ){1,3}{building})|(?:my|our|the) (?:house|flat|home|address|street|road|place|door) (?:is|s|'s|:|has)(?: (?:the|on|at|in|next|near|behind|opposite|number|no|called|across|just|right|by|down|with))+ \\S+|(?:my|our|his|her|home) address|(?:house|flat|door|home) (?:with|has) the ${w} (?:gate|door|fence|roof|hedge|windows?|wall)|(?:i|we) live in (?!(?:a|an|the|my|our|this|that|england|scotland|wales|ireland|britain|uk|usa|america|france|germany|spain|italy|poland|india|pakistan|china|japan|africa|asia|europe|australia|canada|town|hope|fear|peace|space|water|houses|different|one|two|it|here|there|caves?|trees?|nests?|two|small|big|cities|towns|villages)(?![\\p{L}]))${w}|i live (?:across|opposite|next door|round the corner|two doors|down the road)(?: from| to)? \\S+|(?:find|visit|pick|meet|see|come (?:to|and see|round)) (?:me|us|my) (?:up )?(?:at|on|in|house|flat)(?: the| my)? (?:${w} ){0,3}(?:{street}|{wayName}|house|flat|home)|come to (?:my|our) (?:house|flat)|\\d{1,4} ${w} (?:road|street|lane|avenue) is (?:my|our|where)`,
    'i live in the flats behind the swimming pool',
    'the fox lives in a hole',
    {
      unless: `.*(?:live|lives|living|stay|stays) (?:in|on|at|by|near|over|under|up|down|behind|next to|above|around|to|across) (?:the|a|an) (?:${w} )?(?:farm|sea|beach|village|town|city|country|woods?|forest|hill|river|house|castle|tower|cave|hole|tree|valley|lake|mountains?|park|bridge|mill|zoo|market|street|road|streets|pond|ground|water|hotel|way|estate|factory|church|school|pub|inn)|(?:he|she|it|they|fox|king|queen|wolf|who|people|owls?|birds?|mr|mrs|giant|animals|bats?|frogs?|fish) (?:still |all )?(?:live|lives|living|stay|stays|moved) .*`,
    },
  ],
  [
    'birthday',
    `(?:i|we|he|she|i'?ll be|she'?ll be|he'?ll be|im|i'?m|i am|my \\w+) ?(?:am |will be |turn|turns|turning|is |are |was |is turning |am turning |be |gets? )?(?:{number} )?(?:on|in|this|next)? ?(?:the )?{ordinal} (?:of )?{month}|(?:turn|turns|turning|be|im|i'?m|i am|gonna be|going to be) {number} (?:on|this|next|tomorrow|in {month}|at {feast}|{feast}|{day})|(?:i|im|i'?m|we) (?:was|were|is|got) born (?:on|in|at|the|\\d|{month}|{ordinal})|(?:he|she|my \\w+) (?:was|were|is) born (?:on |in |at |the )*(?:\\d|{month}|{ordinal})|born (?:on|in)? ?(?:the )?(?:{ordinal}|{month}|{day}|\\d).{0,30}(?:me|i am|my|im|i'?m)|(?:{month}|{ordinal}|\\d{4}|thousand|hundred) .{0,40}(?:i was born|my birthday|my bday|when i was|i turn)|(?:birthday|bday|b-day|birth ?date|date of birth|dob|geburtstag|cumpleanos|anniversaire|urodziny)(?: is| was|'s|s|:|=| on| party| falls| comes)?(?: is| on| the| in| at| this| next| always)* ?(?:{ordinal}|{month}|{day}|{feast}|\\d|tomorrow|today|next week)|(?:same|share)(?: a)? birthday.{0,40}{feast}|same birthday as .{0,20}(?:{feast}|{month}|\\d)|{feast}.{0,20}(?:my birthday|i turn|im turning|i was born)|(?:my|his|her) star ?sign|\\d{1,2}[./-]\\d{1,2}[./-](?:19|20)?\\d\\d (?:is|was) (?:my|when i)|my (?:bday|birthday).{0,20}\\d`,
    'i was born on 3/7/2014',
    'my birthday was fun',
    { unless: '(?:he|she|we|when|i|my \\w+) (?:is|was|were|got) born in (?:the|a|an) .*' },
  ],
  [
    'school',
    `(?:my|our|the|same|his|her) school(?:'s| is|s name is| name is| called|:)+ (?:called |named |the one |on |in |next |near |behind |opposite |at |st |saint )+.*|(?:go|goes|going|went|am|is|was|used to (?:be|go)|gehe|geh|move|moved|moving|start|started|learn|study|transferred|we'?re|were|are|both)(?: both| all| now| here)? (?:to|at|auf|in|a|an|into|from)(?: the| die| der| das)? (?:one in ${w}|st\\.? ${w}|saint ${w}|(?!(?:the|my|our|your|his|her|a|an|this|that|high|big|new|old|same|different|another|other|primary|secondary|boarding|night|no|any|every|after|before|in|on|of|and|to)(?![\\p{L}]))${w}(?: ${w}){0,2} (?:primary|elementary|junior|infants?|secondary|high|middle|grammar|prep|academy|school|college|community|catholic|public|international|house school|grundschule|gymnasium|schule)|${w}(?:schule|grundschule|gymnasium))|(?:st\\.?|saint) ${w}(?:'s|s)(?: (?:primary|school|academy|c of e|church|catholic|infants?|juniors?))?|(?!(?:the|my|our|your|his|her|a|an|this|that|same|new|old|big|little|another|in|at|to|of|their|every|local|village|whole|after|from|is|for|and|sunday|summer|some|any)(?![\\p{L}]))${w}(?: ${w})? (?:primary|elementary|junior high|high school|middle school|grammar school|primary school|academy|infant school|secondary school|prep school|community school|house school|road school|street school|lane school|park school|hill school)(?: school)?|(?:my|our) (?:form |class |head |new |maths |english |reading )?teacher(?:'s| is|s name is| is called| called)? (?:is |called )?(?:mr|mrs|miss|ms|mx|herr|frau|sir|madame)\\.? ${w}|(?:im|i'?m|we'?re|we are|i am) in (?:class|form|year|grade) ?\\d+ ?[a-z]? (?:at|with|in) ${w}|(?:class|form|room) \\d+[a-z]? (?:at|in) ${w} (?:school|primary|academy|elementary)`,
    'gehe auf die Amselgrundschule',
    'my school is really big',
    {
      unless:
        '(?:go|goes|going|went|am|is|was) (?:to|at|in) (?:a |an |the )?(?:primary|high|big|new|night|boarding|sunday|summer|middle|secondary|elementary) ?(?:school)?|(?:goes|went|go) to school .*',
    },
  ],
  [
    'meeting place and time',
    `(?:meet|meeting|come|see (?:you|u|ya|all)|who wants|wanna|want to|wait (?:for me)?|be (?:there|at)|lets|let'?s|join|hang out|party|training|practice|club|lesson|lessons|bring|all of us|everyone|pick (?:me|u|you) up|i'?ll be|im going|i will be|we meet|i go|sleepover|going|game|match).{0,60}?(?:at|by|behind|outside|in front of|near|under|next to|in|to|on|round|around|inside|opposite) (?:the |my |our |that |this )?(?:${w} ){0,2}{spot}.{0,40}?(?:{time}|{day})|(?:meet|come|see (?:you|u|ya)|who wants|lets|let'?s|join|be there|wanna|bring|club|training|practice|lesson|lessons|sleepover|party|match).{0,50}?(?:{time}|{day}).{0,50}?(?:at|by|behind|outside|in front of|near|under|next to|in|to|on|round|around|inside|opposite) (?:the |my |our )?(?:${w} ){0,2}{spot}|(?:behind|outside|by|at|in front of|under|near|next to|opposite|inside) (?:the |my |our )?(?:${w} ){0,2}{spot}[ ,.!-]{1,3}.{0,25}?(?:{time}|{day})|(?:{time}|{day})[ ,.!-]{1,3}.{0,20}?(?:behind|outside|by|at|in front of|near|under|next to|opposite|inside) (?:the |my |our )?(?:${w} ){0,2}{spot}|(?:party|sleepover) (?:is )?(?:at|in) (?:my|our|mine|the).{0,40}(?:{time}|{day}|\\d)|(?:my|our) (?:${w} )?(?:club|training|practice|lesson|lessons|class|team|match|game|bus) (?:is|are|meets?|leaves?|starts?)(?: on)?.{0,30}(?:{day}|{time})|(?:home alone|nobody (?:is )?home|on my own|walk home (?:alone|by myself)|parents are (?:out|away)).{0,40}(?:{day}|{time}|till|until|today|tonight|now|every|from)`,
    'see you outside the library at half past five',
    'they meet at nine oclock',
    {
      unless:
        '.*(?:they|he|she|the (?:boy|girl|king|queen|captain|fox|scouts|soldiers|men|hens)|said the|says the) (?:all |will |must |should )?(?:meet|come|came|went|go|met|wait|waited|said).*',
    },
  ],
  [
    'full name',
    `(?:my|ur|your|§s|friends?|sisters?|brothers?|mums?|dads?|teachers?|real|full|last|first|sur|second|middle|family)(?: real| full| last| first| whole| actual| proper| sur)* ?name(?:'s|s)? ?(?:is|:|=|are)? (?!(?:is|because|was|and|in|on|for|of|that|it|too|so|really|very|not|the|a|funny|cool|weird|long|short|nice|ok|same|like|secret|means)(?![\\p{L}]))${w}|(?:i am|im|i'?m|this is|its|it'?s) ${w},? (?:last|sur|second|family) ?name|(?:me llamo|je m'?appelle|ich heisse|ich heiße|mam na imie|nazywam sie|mi chiamo|meu nome e|mon nom est|mein name ist|mi nombre es|mera naam|benim adim|ma numesc|numele meu|mene zvaty|меня зовут|мене звати|fy enw i yw) ${w}|(?:real|full) name|(?:last|sur|second|family) ?name(?:'s|s)? ?(?:is |: ?|= ?)?${w}`,
    'my real name is Tobias Wexcombe',
    'the name of the boat is Tern',
    {
      unless:
        '(?:last|first|second|middle) name.*(?:in the|of the).*|(?:my|your|his|her|ur) (?:name|first name) (?:is|was) (?:hard|easy|short|long|secret|not|in|the|a)(?: .*)?',
    },
  ],
  [
    'age and place',
    `i'?m (?:a )?{number}(?: years? old)?(?: and|,)? (?:a )?(?:from|live|living|in) (?:in )?(?!(?:year|class|grade|a|the|my|group)(?![\\p{L}]))${w}|asl\\??`,
    'im 9 and live in Ebbworth',
    'im 9',
  ],
]);
