/**
 * What children are teased with, by kind: harmless of a story, but in talk about a pupil of the class a reason that an
 * adult looks first. Words stand in their base form; common endings are understood. This project's own choice.
 */
export const touchy: Readonly<Record<string, string>> = {
  looks:
    'ugly fat skinny spotty spots pimple pimples acne zits bald hairy moustache teeth braces goofy buckteeth nose ears forehead chin belly tummy weight kilos diet chubby short tiny shrimp freckles ginger eyebrows unibrow greasy dandruff makeup haircut hairstyle wig glasses squint scar birthmark wart',
  smell:
    'smell smelly smelt stink stinky stank stunk reek pong whiff sweat sweaty deodorant shower bath wash unwashed dirty filthy grubby mouldy soap fart burp nits lice fleas germs cooties lurgy bogies bogeys snot snotty dribble drool disease contagious rash',
  toilet:
    'wee weed wet pee peed poo pooed toilet pants underwear knickers nappy nappies diaper potty bed-wetter bedwetter bedwetting wets',
  poor: 'poor broke homeless foodbank food-bank charity hand-me-down hand-me-downs cheap cheapest secondhand second-hand benefits unemployed jobless afford caravan trailer council dump shabby ragged rags tramp beggar beg primark knockoff knock-off free-lunch',
  'at home':
    'divorced divorce adopted foster orphan prison jail jailbird drunk alcoholic arrested cheated affair unwanted stepkid bastard single kicked evicted bailiffs social',
  childish:
    'baby babies babyish teddy teddies dummy thumb blankie blanket nursery toddler cry cried cries crying crybaby sob sobbed sobbing tears tantrum sulk sulks sulking blub blubbing whine whines whinge whinging moan moans moaning mummys babysitter coward chicken wimp wimpy clingy',
  wits: 'stupid dumb thick dim slow slowest slowcoach dunce clueless brain brains brainless brainy iq failed fail fails failing flunk flunked retake remedial illiterate dyslexic dyslexia autistic adhd special-needs sped helper-group bottom-group bottom lowest zero worst hopeless useless rubbish terrible awful embarrassing pathetic clever-clogs genius einstein dense spell spells spelling stutter stammer lisp mumble mumbles accent pronounce',
  character:
    'weird weirdo strange freak creepy creep gross disgusting annoying irritating boring bossy nasty selfish spoilt spoiled jealous lazy greedy fake two-faced liar lie lies lied lying cheat cheats cheating cheated copy copied copies copycat thief thieves steal steals stole stolen stealing nicked sneaky snake rat snitch grass grassed tattletale telltale teachers-pet pet swot nerd geek loner lonely friendless attention attention-seeker show-off showoff goody moody psycho mental crazy insane mad loser lame cringe cringey cringy uncool sad desperate clown joke idiot fool moron bully bullies trouble troublemaker problem toxic drama dramatic obsessed obsession sus suspicious guilty blame blamed fault broke ruined ruins ruin spoils spoiled wrecked wasted killjoy disappointment failure nobody nothing',
  gossip:
    'crush crushing fancy fancies fancied love loves loved kiss kissed kisses kissing snog snogged dump dumped dating date dates girlfriend boyfriend bf gf ex married marry flirt flirts flirting secret secrets rumour rumours gossip heard overheard told-me allegedly apparently suspended expelled excluded detention caught busted nurse doctor therapist counsellor psychologist psychiatrist tablets pills medicine medication hospital headlice period periods pregnant virgin gay lesbian trans queer straight cheated naked shirtless bra boobs shaved diary screenshot screenshots exposed leaked',
  'left out':
    'ignore ignores ignored ignoring avoid avoids avoided block blocked ban banned bans kick kicked remove removed report exclude excluded leave-out invited uninvited invite party sleepover unfriend unfriended unfollow unwelcome alone leftover left-over last-picked hate hates hated hating dislike dislikes despise loathe laugh laughs laughed laughing mock mocks mocked tease teases teased bully prank pranked trip tripped shun deaf blind mute annoy annoys annoyed pathetic replace replaced traitor betray betrayed betrays backstabber revenge payback vote voted votes',
};

/** Words of a post that say it is about the work, kind, or about the one who writes. */
export const kind =
  / (?:thanks?|thank you|ty|sorry|please|well done|good (?:job|point|idea|question|one|answer|work|luck|try|guess|start)|nice (?:job|work|one|question|answer|idea|sum-up|summary)|great|brilliant|amazing|awesome|fantastic|helpful|helped|congrats|congratulations|happy|welcome|get well|feel better|feeling better|hope you|proud|agree|agreed|agrees|disagree|i like|love (?:your|that|this|how|§s)|loved (?:your|§s)|loves? the (?:question|idea|answer)|better than mine|miss(?:ed)? you|good morning|dont worry|no worries|kind|best (?:friend|question|answer|sum-up|idea)|cheer up|you can do it|take care|lucky|accident|by accident|legend|we laughed|fun|respect|fast|good at|smart|talented|are you (?:ok|okay|all right|alright)|is (?:she|he|§) (?:ok|okay|all right|alright|better)) /u;

/** Words about the work, by which talk of a pupil is explained. */
export const work =
  / (?:answer|answers|answered|question|questions|asked|asking|idea|ideas|point|points|sum-up|sum-ups|sum up|summary|summaries|prediction|predictions|predict|predicted|predicts|clue|clues|clarify|clarified|clarifier|summariser|questioner|predictor|leader|lead|sentence|sentences|paragraph|line|lines|page|chapter|reply|replied|explain|explained|meant|evidence|title|author|agree|agreed|disagree|vocabulary|comma|ending|beginning|character|characters|theme|spelling of|meaning) /u;

/** Words of reading and reasoning, which explain talk that holds nothing that children are teased with. */
export const reasoning =
  / (?:think|thinks|thought|read|reads|reading|word|words|wrote|said|says|mean|means|part|story|text|book|books|poem|because|true|right|wrong|correct|same|maybe|partner|pair|group|turn|next|first|second|wait|waiting|ready|done|finished|start|started|tomorrow|today|guess|bet|wonder|interesting|funny|cool|nice|remember|forgot|missed|found|look|understand|know|tell|told|means|called|here|late|back|join|joining|who|then|after|before|mistake|actually|careful|hello|hi|bye|good|also|too|yes|no|not sure|ok|okay|game|match|team|won|win|beat|rematch|birthday|save|saved|picked) /u;
