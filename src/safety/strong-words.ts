/** Words so rude that a post is searched for their disguises too: letters swapped, dropped, spelt by sound, turned round, run together with others. This project's own choice. */
export const strong: readonly string[] = (
  'fuck fucker fucking motherfucker shit shitty shithead bullshit bitch biatch cunt wank wanker bastard arsehole asshole bollocks dickhead knobhead bellend ' +
  'penis vagina pussy twat slut whore prick cock dick tosser faggot nigger nigga retard spastic pussies boobs tits piss crap moron arse dumbass dildo'
).split(' ');

/** Of those, the ones that no innocent word of some length holds but the protected ones, so that they are looked for inside words run together. */
export const inside: readonly string[] =
  'fuck bitch wanker asshole arsehole dickhead bastard bollock motherf shithead bullshit knobhead faggot shit'.split(
    ' ',
  );

/** Ways in which children spell them that no rule yields. */
export const madeUp: Readonly<Record<string, string>> = {
  fuck: 'fuk fuq fuc fuxk fuhk fook foock fukk fvk fugg phuk phuck phuq phock fok pfuck feck fecc fcku fker fkn fkin fking effin effing frick fricken frickin fricking frigg frigging friggin freakin fudging ferk furk fack fahk fock fuark fkoff fku fuqq fuxxk fawk fugoff',
  fucker: 'fuka fukka fucka fuckah phucker fucka fukr fkr fugger',
  shit: 'shyt shyte shite shiet shiit shizz shiz shitt shid shitz sheit sheeit shiet xhit schit schitt shat shitte shittt hsit',
  bitch:
    'bich biach biatch beatch beotch beyotch bytch byatch betch bicth bitsh bishh biotch bihh bitxh bitchass beeotch biznatch bizzitch bicht bitchy',
  cunt: 'kunt cnut coont cuntt qunt cuunt kvnt cxnt cvnt',
  wanker: 'wanka wankah wankr wanqer wnkr whanker wankerr',
  bastard: 'bastid bastad basturd basterd bstard bastrd barstard bastarrd baztard bstrd',
  arsehole: 'arshole arsole rsole arshol arsehol arzehole arsehoal arsewhole aresehole arseholl',
  asshole: 'ashole asshol asswhole azzhole azhole assole ahole a-hole aswhole asholle ahsole',
  bollocks: 'bollox bollix bolox bolocks bollucks bollux bolloks bollks bllcks bolix bollock',
  dickhead: 'dikhead dikhed dickhed dickheed dickead dckhead diccedhead dickhd dixkhead dyckhead',
  dick: 'dik diq dikk dicc dikc dixk dyck dikk dcik dck dihk diick',
  cock: 'kok cok cawk cokc kock cocc',
  prick: 'prik pric prikk preck prck',
  pussy: 'pusi pussi pusy poosy pssy pussie',
  penis: 'penus peenis peniz pnis penhis pinis pienis peenus penass',
  twat: 'twatt twot',
  slut: 'slutt slvt sloot slutz',
  whore: 'whor hoore whoore whoar',
  retard: 'ritard reetard retart retrd rtard retad retar retarted retardo retad',
  faggot: 'fagot fagget fagit faget phaggot faggit fgt fggt',
  spastic: 'spaz spazz spac spack spakka spacka spaca spakker spasticated spasmo',
  boobs: 'boobz bewbs boobas boobees boobie',
  piss: 'pizz pisss pisz',
  crap: 'krap crapp krapp crappo',
  arse: 'arsse arz arss arsed arze ars',
  knobhead: 'nobhead nobhed knobhed nobed knobed knobend nobend nobber knobber knobjockey',
  moron: 'morron morrun mooron morun',
  tits: 'titz titties titty tittys tittie',
  nigger: 'nigga nigg niggah niggr nigguh nibba knigga',
};

/** Words of ordinary English (or of other tongues) that a disguise of a strong word spells, so that they are never read as one; checked against a list of English words by a test. */
export const protectedWords: ReadonlySet<string> = new Set(
  (
    'batch morn morning mornings shooting shooter shooters shoot shoots pizza pizzas pisa pizzazz pizazz cooking cooked cooker cookers cooky cook cooks coca coke cokes coked coker ' +
    'kook kooks kooky cocky cocked cocker cockers cocking cawker sheet sheets sheeted sheeting creep creeps creeper creepers creeping creeped crapes crape prices price priced ' +
    'pricey pricy pricing pricer pricked prickers prix ares ars spaces space spaced spacing spacer spacers spacy shatter shatters tweet tweets tweeter tweeting toot toots ' +
    'sleet sleets myron bob bobs dyke dykes dike dikes dyked diker dicky dicker shiite shat pusses knobbed fudging batching freakiness bastion pies pens spine snipe ' +
    'pick picks spit spits lust slit salt wart thaw twit rest moan reward drawer drawers peels stab warp parc'
  ).split(' '),
);
