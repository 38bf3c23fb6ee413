/**
 * What words of a post may stand for, by concept; the alarm rules are written in these. A word with "~" stands for the forms
 * of a regular verb too; "a_b" is a run of words. The words are in the mended form that `speak` gives (mum, dad, dont, cant).
 */
export const concepts: Readonly<Record<string, string>> = {
  // who
  I: 'i we ive',
  ME: 'me us my our myself mine ours',
  YOU: 'you your yourself ur u § §s',
  THEM: 'him her them the a an his their',
  HE: 'he she they someone somebody',
  PARENT:
    'mum dad mums dads stepdad stepmum stepdads stepmums parents gran grandad guardian carer guardians carers nan',
  FAMILY:
    'mum dad mums dads stepdad stepmum parents parent uncle aunt gran grandad cousin guardian carer husband wife family foster_mum foster_dad stepdads stepmums',
  SIBLING: 'brother sister stepbrother stepsister brothers sisters twin siblings step_brother step_sister',
  LITTLE: 'baby twins toddler little_brother little_sister baby_brother baby_sister little_ones',
  ADULT:
    'coach trainer teacher tutor neighbour babysitter sitter man men guy guys bloke lady woman stranger strangers adult adults grown_up driver priest vicar lodger landlord instructor boss older_boy older_girl older_kid older_man old_man boyfriend caretaker helper minder nanny gamer dude',
  STRANGER:
    'man men guy stranger strangers grown_up adult lady woman older_boy older_girl older_man old_man older_guy bloke dude',
  ONLINE:
    'online internet game app chat server dm dms message messages messaged text texts texted texting messaging phone phones webcam discord livestream account profile gamer friend_request',
  KIDS: 'boys girls kids bullies gang big_kids older_kids big_boys classmates others they boy girl kid bully year',
  FRIEND: 'friend friends mate mates classmate § cousin',
  EVERYONE: 'everyone everybody world family mum dad parents they people them class',
  NOBODY: 'nobody noone none nothing',
  // frames that take the weight off
  STORY:
    'in_the_story in_the_text in_the_book in_the_poem in_the_passage in_the_film in_the_movie in_a_film in_a_movie in_a_book in_the_game in_a_story in_the_news in_history the_author the_story the_text the_film the_movie the_book character characters film movie book books play_is author chapter story poem novel cartoon history says_captain song news',
  LOL: 'we_laughed lol haha hahaha hehe lmao rofl xd jaja jajaja hahah ha_ha joking jk kidding hihi loool lool lolol',
  SERIOUS:
    'for_real not_joking no_joke isnt_a_joke not_a_joke really_mean mean_it fr seriously serious no_really ok_but honestly jk_but no_but not_kidding',
  GAME: 'game games level boss chess football rugby hockey netball tennis judo karate tag zombie zombies xbox playstation minecraft match goal keeper tackle~ tackled round badminton cards fifa kart quiz dodgeball snowball snowballs pillow trampoline race rematch dragon sword lava score~ banana cannon headshot pew lasers dressed_up hide_and_seek team_won boxing gym_class swimming_lesson skating skate basketball cricket volleyball pool_party water_gun nerf laser debate roblox fortnite creeper tournament',
  CARE: 'plaster plasters ice nurse cast sticker stickers accident accidentally by_accident on_accident said_sorry vet lolly bandage fixed fell_off fell_over slipped tripped kissed_it_better healed made_up soup toast pizza made_friends',
  ANIMAL:
    'dog cat goose hamster rabbit pony horse hen hens bird birds fish guinea bee bees wasp wasps spider puppy kitten frog mouse mice snake goat sheep cow rat duck ducks lamb wolf fox bear spiders pet snail ant ants hedgehog seagull crab hawk',
  FUN: 'camping camp tent holiday holidays sleepover party fun garden cosy birthday surprise present christmas campsite picnic caravan funny awesome cool cocoa trip',
  FIGURE:
    'laughing laughter boredom embarrassment embarrassed embarrassing cringe of_boredom of_heat to_know to_see to_find to_read hilarious lunch pizza maths homework pe cake burger ice_cream chocolate',
  WOULD: 'would if_i_was if_i_were if_i_had imagine pretend if_you_were if_you',
  BOOKWORK:
    'page chapter question questions word sum-up sentence paragraph clarify sums test exam homework maths spelling reading worksheet answer',
  // when, how much
  HABIT:
    'every always again each often usually sometimes most whenever twice everyday daily constantly nightly still keeps keep everytime times_a_week nights days weeks agen',
  TIME: 'tonight tomorrow monday tuesday wednesday thursday friday saturday sunday today soon now later weekend morning after_school lunch break midnight next week days day weeks',
  LONG: 'since days weeks week month months nights ages all_day all_night every_night each_night every_day long_time yesterday always again monday tuesday wednesday thursday friday saturday sunday weekend weekends hours years forever',
  WHEN: 'when if because after until till whenever for or',
  NOT: 'not dont never wont cant no isnt arent didnt without nothing nobody none hasnt havent aint stop stopped shouldnt couldnt wouldnt wasnt werent hardly nor cannot',
  // harm from others
  HARM: 'hit~ hitting beat~ beaten beating slap~ slapping punch~ kick~ smack~ whack~ thump~ whip~ whipped whipping choke~ strangle~ hurt~ hurting harm~ attack~ batter~ thrash~ cane~ spank~ stomp~ strike~ headbutt~ bash~ clout~ hammer~ wallop~ abuse~ stab~ lash~ belted burnt burn~ torture~ punish~ scald~ bruised injure~ assault~ throttle~ flog~ struck whipt wippd wipped punchd',
  ROUGH:
    'push~ shove~ throw~ threw thrown grab~ grabbed grabbing drag~ dragged dragging pinch~ bite~ bit bites pull~ shake~ shook twist~ squeeze~ slam~ slammed tie~ tied scratch~ trip~ tripped spit~ spat hold_me_down held_me pin~ pinned pins jump~ kick~ bent bends broke breaks crush~ smash~ rap~ chase~ hold_down held_down',
  SHOUT:
    'shout~ scream~ yell~ swear~ swears roar~ rage~ angry mad furious fight~ fought fighting arguing argue~ threaten~ insult~',
  LOCK: 'lock~ locked lokt lockt shut~ trap~ chain~ chained cage~ tie~ tied padlock~',
  CELL: 'cupboard cellar shed garage basement attic closet wardrobe dark bathroom room outside out loft coal_hole coal bedroom',
  TOOL: 'belt cable hanger stick cane slipper rod strap cord wire hose whip shoe ruler iron cigarette ciggy cig stove lighter fist fists ladle broom bottle lead tube spoon wooden_spoon kettle buckle boiling hot_water paddle plank bat poker hoover hammer knife pan',
  MARK: 'bruise bruises bruised blister blisters scar scars marks mark wound wounds black_eye black_eyes blood bleed bleeds bleeding bled stitches swollen ribs black_and_blue burns welts lumps scratches broken_arm broken_rib red_lines handprint',
  BODY: 'arm arms leg legs wrist wrists thigh thighs face head neck hair back belly stomach tummy nose finger fingers hand hands ear ears skin teeth throat mouth body chest foot feet knee knees eye eyes ribs tooth cheek tongue toes',
  TOUCH:
    'touch~ kiss~ stroke~ rub~ fondle~ grope~ lick~ undress~ cuddle~ hug~ tickle~ molest~ rape~ feels_me grooming_me tuch tuches',
  PRIVATE:
    'private privates naked nude nudes underwear knickers bum bottom bra undressed no_clothes without_clothes clothes_off top_off shirt_off trousers_off pants swimsuit bikini skirt down_there willy boobs bath shower showers changing_room body nakid nakd toilet toilets change changing bathroom in_bed lap knee pyjamas',
  NAKED:
    'naked nude nudes underwear knickers bra no_clothes without_clothes clothes_off top_off shirt_off trousers_off undress undressed my_pants bikini nakid naked_people private_parts privates my_body my_bum boobs sexy sex dirty_pictures rude_pictures take_off_my',
  IMAGE:
    'picture pictures photo photos video videos pic pics film films filmed filming cam camera webcam snap snaps selfie selfies nudes screenshot screenshots fotos bilder images image facetime call',
  SECRET: 'secret secrets secretly secrit',
  TELL: 'tell tells telling told say said says know knows knew believe',
  ASK: 'ask~ want~ wanted need~ demand~ beg~ tell~ told say~ said says make~ makes made force~ request~ requested keep~ offer~ trick~ pay~ pays paid try trying get_me gets_me got_me let message~ write~ wrote writes invite~ expect~',
  GIFT: 'money gift gifts present presents sweets coins gems cash robux phone vbucks skins credits pounds quid euros dollars 20 vouchers card cards bracelet ticket',
  // care
  FOOD: 'food dinner eat eaten eating meal meals lunch tea supper fridge bread breakfast cupboard anything_to_eat ate cook~ feed~ fed feeds milk',
  HUNGRY: 'hungry starving hunger starved starve~',
  GONE: 'gone left away out leave leaves went disappeared missing',
  DRUNK:
    'drunk drinks drinking drink drank bottle bottles vodka beer beers wine whisky alcohol drugs drug needle needles high stoned weed powder syringes passed_out hangover takes_stuff pub',
  UTILITY:
    'heating heat electricity electric water light lights gas bed beds blanket blankets power warm radiator home house',
  ROUGHBED:
    'car van street streets station bench park bus_stop bus_shelter shelter garage shed floor doorway bridge woods alley stairwell outside carport car_port stairs bath bus streetz shop_doorway porch bathtub',
  SICK: 'sick hurts aches bleeding infected fever tooth toothache ear coughing swollen green yellow hot pus ill temperature rash wound broken cough earache',
  DOCTOR: 'doctor doctors dentist hospital nurse clinic medicine',
  DIRTY: 'clothes washed wash smell smells dirty uniform lice bath shower stink stinks rats mould nits',
  // oneself
  WANT: 'want~ wish~ hope~ hoping plan~ planned planning try tries tried trying need~ deserve~ should rather going ready prefer~ dream~ think~ thinking thought thoughts feel_like like longing can_i may_i desire decided will might shall wonna wana wanna envy wait_to',
  DIE: 'die dying dies died dead death suicide suicidal kms kill_myself killing_myself unalive unalived end_it end_my_life ending_it end_things ending_things end_it_all end_everything exist existing not_be_here not_alive disappear vanish stop_living stop_existing stop_breathing not_wake never_wake dont_wake not_exist be_gone heaven sleep_forever never_get_up not_be_alive take_my_life be_no_more grave not_being_here never_been_born never_born leave_this_world not_exsist dissapear disapear deth',
  ALIVE:
    'live living alive life exist existing existed born exsist exsisted wake breathing breathe survive be_here being_here born_at_all',
  SELFCUT:
    'cut~ cutting burn~ burnt scratch~ bite~ hit~ hitting hurt~ hurting punish~ starve~ stab~ choke~ drown~ poison~ hang~ kill~ harm~ punch~ pinch~ bang~ slap~ unalive injure~ bit rip~ hate~',
  PILLS:
    'pills tablets painkillers overdose paracetamol medicine sleeping_pills poison razor razors blade blades noose rope bleach',
  LEAP: 'bridge roof cliff window train tracks railway building balcony track rails motorway traffic lorry',
  FEAR: 'scared afraid frightened terrified fear frightens scares shaking nervous dread~ worried panic',
  HIDE: 'hide hides hiding hid',
  HOME: 'home house there flat back room ours dads mums',
  RUN: 'run_away running_away runaway ran_away run_off running_off leave_home leaving_home left_home sneak_out sneaking_out climb_out escape leave_for_good going_for_good',
  GO: 'go going gone leave leaving run running climb sneak escape walk_out get_out goes away live move do_it start',
  WEAPON:
    'knife knives gun guns blade machete weapon weapons bomb petrol pistol rifle axe hammer razor acid shotgun bat sticks bricks taser lighter matches',
  KILL: 'kill~ stab~ shoot shot shooting murder~ strangle~ poison~ drown~ slaughter~ behead~ suffocate~ execute~ bleed',
  BEAT: 'hurt~ burn~ beat~ smash~ break~ breaking punch~ kick~ slap~ bash~ batter~ cut~ hit~ jump~ destroy~ end~ get~ find~ finish~ attack~ push~ throw~ choke~ slit~ knock~ break_your snap~ jumped',
  WILL: 'will going gonna want would swear promise might wait shall plan am try let coming should ready must could ima',
  BULLY:
    'bully~ bullied bullies bullying tease~ call_me calls_me calling_me names laugh_at laughing_at mock~ hates_me hate_me',
  SCHOOL: 'school class classroom playground lesson teacher teachers tutor gym bus gate',
};

/** What endings a regular verb takes; too many forms do no harm. */
function formsOf(base: string): readonly string[] {
  const cut = base.replace(/e$/u, '');
  const doubled = /[^aeiou][aeiou][bdgklmnprt]$/u.test(base) ? base + base.slice(-1) : base;
  return [
    base,
    `${base}s`,
    `${base}es`,
    `${cut}ed`,
    `${cut}ing`,
    `${cut}in`,
    `${doubled}ed`,
    `${doubled}ing`,
    `${cut}er`,
  ];
}

/** By word, the concepts that it may stand for. */
export const conceptsOf: ReadonlyMap<string, ReadonlySet<string>> = readConcepts(
  ([, word]) => !word.includes('_'),
);

/** By first word, the runs of words that stand for a concept, longest first. */
export const runsOf: ReadonlyMap<
  string,
  readonly { readonly run: readonly string[]; readonly concept: string }[]
> = readRuns();

function entries(): readonly (readonly [concept: string, word: string])[] {
  return Object.entries(concepts).flatMap(([concept, words]) =>
    words
      .split(' ')
      .flatMap((word) =>
        word.endsWith('~')
          ? formsOf(word.slice(0, -1)).map((form) => [concept, form] as const)
          : [[concept, word] as const],
      ),
  );
}

function readConcepts(use: (entry: readonly [string, string]) => boolean): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>();
  for (const entry of entries().filter(use)) {
    const known = found.get(entry[1]) ?? new Set<string>();
    found.set(entry[1], known.add(entry[0]));
  }
  return found;
}

function readRuns(): Map<string, { run: readonly string[]; concept: string }[]> {
  const found = new Map<string, { run: readonly string[]; concept: string }[]>();
  for (const [concept, word] of entries()) {
    if (!word.includes('_')) continue;
    const run = word.split('_');
    const first = run[0] ?? '';
    found.set(first, [...(found.get(first) ?? []), { run, concept }]);
  }
  return found;
}
