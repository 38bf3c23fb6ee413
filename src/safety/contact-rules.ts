import { detailRules, type DetailRule } from './personal-rules.js';

const w = "[\\p{L}\\p{N}'-]{1,30}";
const nameShape = '[\\p{L}\\p{N}][\\p{L}\\p{N}._-]{2,}';

/** Ways to reach a child elsewhere, or to sign in as one: names on apps, e-mail, codes, keys. The list is this project's own. */
export const contactRules: readonly DetailRule[] = detailRules([
  [
    'name on an app',
    `(?:on|in|at|over on|my|our|his|her|finchs|{own}|\\p{L}+s) {app}(?: \\w+)?(?: name| id| user| username| handle| account| acc| tag| nick| gamertag)? ?(?:i'?m|im|i am|is|'s|=|:|as|it'?s|its|called|my name is|name is|they call me|you can find me|find me|look for|search for|look up|add|follow) ?(?:called |under |as |to )?(?!(?:so|very|really|not|the|a|an|broken|full|good|bad|boring|fun|cool|banned|better|that|this|because|my|about|like|where|when|what|and|it|on|in|great|funny|best|dangerous)(?![\\p{L}]))${nameShape}|(?:i'?m|im|i am|name'?s|names|add|find|follow|sub to|subscribe to|message|dm|search|look up|look for|i go by|i post as|i stream as|i play as|it'?s|its|user|username) (?:called |as |under |me as |up )?@?${nameShape} (?:on|in|over on) {app}|(?:user ?name|user|gamer ?tag|handle|nick ?name|screen ?name|player ?name|player id|login|ign|tag|profile|channel|account|id|server|friend code|invite|room code|party code|game ?pin)s?(?: on \\w+| in \\w+| name| there| for \\w+)? ?(?:is|are|'s|=|:|-) ?(?!(?:so|very|really|not|the|a|an|for|too|to|wrong|in|on|what|just|only|funny|good|bad|like|my|your|that|called|hard|easy|because|different|always|long|short|new|old|missing|full)(?![\\p{L}\\p{N}]))@?${nameShape}|(?:look|find|search|add|follow|dm|pm|hmu|snap|msg|message|friend|sub|facetime|video ?call|ring|skype) me(?: up| there| on| at| in| under| as| after| later| if|[.!,]|$)|(?:whats|what'?s|what is|gimme|give me|send me|can i have|can i get|drop|share|tell me) (?:your|ur|ya|yr) (?:${w} )?(?:number|phone|digits|snap\\w*|insta\\w*|user ?name|gamer ?tag|handle|e-?mail|address|real name|@|discord|account|friend code|tag|full name|surname|last name|password|pin|postcode|school|location|birthday)|\\p{L}[\\p{L}\\p{N}]* (?:underscore|under score|unterstrich|tiret bas|guion bajo|dash|hyphen|dot|punkt|point|punto) \\p{L}[\\p{L}\\p{N}]* (?:underscore|under score|dash|hyphen|dot|at|unterstrich|guion bajo)? ?\\w+|\\w+ (?:underscore|unterstrich|guion bajo) \\w+|(?:name|is|add|follow|find|user|im|i'm|acc|tag|disc|insta|snap|on|me|its|it's|@)[ :=,-]{1,3}[\\p{L}]{3,}(?:\\.[\\p{L}\\p{N}]{2,}){2,}|[\\p{L}]{4,}[._-]\\d{2,4}(?=[\\s.!,]|$)|(?:hmu|hit me up|hmb|wmu|sc|ig|dc|disc) ?(?:on|at|is|:|=|-) ?\\S+|swap (?:accounts?|accs?|numbers?|snaps?|instas?|emails?|addresses|phones? numbers?|gamertags?)|(?:user|login|account|acc)\\W{1,3}\\S+\\W{1,4}(?:and |with )?(?:pass|pw|password|pin|code)\\W{1,3}\\S+`,
    'im pebblefox77 on chatterpond',
    'im good on the drums',
    { own: true },
  ],
  [
    'e-mail in another way',
    `(?:[\\p{L}\\p{N}] ){2,}(?:at|@|\\(at\\)|ät|et|arroba) (?:[\\p{L}\\p{N}] ){2,}(?:dot|\\.|punkt|point|punto)?|${w}(?: ?(?:dot|underscore|dash|\\.|_) ?${w})* ?(?:@|\\(at\\)|\\[at\\]|(?:at sign|at symbol|at|arroba|arobase|chiocciola|klammeraffe|apenstaartje|malpa|strudel|kringel)) ?(?:g ?mail|hot ?mail|outlook|yahoo|icloud|gmx|proton\\w*|y ?mail|aol|${w}mail)(?: ?(?:dot|\\.|punkt|punto|point) ?\\w+)?|${w} ?(?:at sign|at symbol|arroba|arobase|chiocciola|klammeraffe|apenstaartje|malpa) ?${w}|(?:e-?mail|mail|write to|write|msg|message|contact|reach|send (?:it|that|this|them)? ?(?:to)?) ?(?:me|us|my \\w+|address|is|at|it|to|here|:|=|on)+ ?(?:at |to |on |: ?)?${w}(?:[._-]${w})* ?(?:@|\\(at\\)|\\[at\\]| at ) ?${w}|(?:my|our|his|her|mums?|dads?|moms?) e-?mail(?: address)? ?(?:is|'s|:|=)|${w} ?(?:\\(|\\[|\\{|<|-|\\*) ?at ?(?:\\)|\\]|\\}|>|-|\\*) ?${w}`,
    'robin11 at sign finchmail',
    'he looked at the sign',
    { own: true },
  ],
  [
    'a code or key of one’s own',
    `(?:\\S+) (?:is|are|was) (?:nearly |almost |also |just |literally |still |basically )*(?:{own}|my|our|mums?|dads?|the (?:school|class|wifi|reading|tablet|group)(?:'s|s)?) (?:${w} ){0,2}(?:pin|password|pass ?code|pass|code|login|combination|pass ?word)|(?:my|our|mums?|dads?|moms?|his|her|brothers?|sisters?|the schools?|the class|class|school|family|house|home|front door|back door|gate|alarm|tablet|phone|laptop|wifi|wi-fi|locker|bike lock|lock|parental|account|game|roblox|netflix|bank|cash|card|computer|library)(?:'s|s)? (?:${w} ){0,2}(?:pin|password|pass ?code|pass ?word|code|login|log ?in|combination|combo|secret question|security answer)(?: code| number| word)?(?: for \\w+(?: \\w+)?| to \\w+(?: \\w+)?| on \\w+(?: \\w+)?)?(?: again)? ?(?:is|was|'s|s|=|:|->|are|will be) ?["'“]?(?!(?:so|very|too|really|not|secret|a secret|safe|strong|hard|easy|wrong|long|short|private|broken|different|what|because|like|that|gone|bad|good)(?![\\p{L}\\p{N}]))\\S{2,}|(?:my|our|the) (?:\\w+ ){0,2}(?:pin|pass ?code|password|code|alarm|lock|safe|combination|gate)(?: \\w+){0,4} is (?:just |only |still |always )?(?:\\d[ -]?){3,8}|(?:pin|pass ?code|password|pw|code|combination)(?: is|:|=|'s)? ?(?:\\d[ -]?){4,8}(?!\\d)|(?:(?:my|our|the|a|spare|house|door|front|back) )*keys? (?:to (?:our|my) \\w+ )?(?:is|are|'s|lives|live|stays|hides|hidden|hangs) (?:always |hidden |kept |still )*(?:under|behind|inside|beneath|above|on top of|in|on) (?:the|our|a|my|that) .{0,40}(?:our|my|door|mat|pot|flowerpot|gnome|stone|brick|shed|porch|step)|(?:we|i|my \\w+) (?:hide|keep|leave|put)s? (?:the|our|a|my) (?:spare |door |house |front door )*keys? (?:under|behind|inside|in|on|beneath|above)|(?:log|sign) ?(?:in|on) (?:as|with|using|under) (?:my|mine|me|\\S+)|(?:use|try|borrow|have) (?:my|mine|his|her) (?:account|login|log ?in|password|pw|pass|pin)|(?:with a (?:big|capital|small) \\p{L}|all (?:small|lower ?case|capital) letters|no spaces|capital \\p{L})(?= .{0,40}(?:forget|password|log|sign|account|in case))|(?:always|keep|kept) forget(?:ting)? .{0,60}(?:its|it'?s|it is) \\S*\\d\\S*`,
    'the wifi code for our house is kettle44',
    'the code of the vault is hard',
    {
      unless: '(?:the|a) (?:secret )?(?:code|password|key) .*',
    },
  ],
  [
    'number of a card or a car',
    `(?:number ?plate|licen[cs]e plate|plate|reg|registration|kennzeichen)(?: number| plate)? ?(?:is|:|=|'s|says|on it)? ?[a-z]{1,3}[ -]?\\d{1,4}[ -]?[a-z]{0,3}|(?:bank|credit|debit|library|student|bus|lunch|id|passport|identity|account|membership|swipe) ?(?:card|account|pass)? ?(?:number|no|nr|id)?s? ?(?:is|:|=|'s) ?[a-z]{0,3}[ -]?\\d[\\d -]{3,}|(?:i|we) (?:get|take|catch|ride|am on|are on) (?:the )?(?:school |number |no\\.? |nr )*\\d{1,3}[a-z]?(?: bus| tram| train)? (?:at|from|home|to school|every|outside|by)|(?:get|take|catch|ride) (?:the )?(?:bus|tram|train) (?:number |no\\.? |line )?\\d{1,3}[a-z]?(?= .{0,30}(?:school|home|every|morning|at))|-?\\d{1,2}\\.\\d{3,},? ?-?\\d{1,3}\\.\\d{3,}|///?\\p{L}+\\.\\p{L}+\\.\\p{L}+|\\p{L}{2} ?\\d{2} ?\\p{L}{3}(?= .{0,20}(?:car|van|plate|outside|ours))|(?:car|van|jeep|motorbike|truck) .{0,30}(?:plate|reg)`,
    'our plate is QX14 ZZB',
    'the plate is full',
    { own: true },
  ],
]);
