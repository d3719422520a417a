/** What warns of harm to a person or a thing. */

/** Behind "do not", these are no orders: "I don't know". */
export const notOrders = new Set(
  "know think care worry ask need matter mind see understand believe like remember have judge blame laugh say recall fancy suppose bother call expect really actually quite tell seem look last work fit match come make want".split(
    " ",
  ),
);

/** Before "do not" and "never", these show a statement: "they don't make them". */
export const subjects = new Set("i we they you people ones these those who he she most some".split(" "));
/** Before "never", these show a statement as well. */
export const beforeNever = new Set(
  "i we they you it he she has have had will would is was are were that which who there can could did does do people".split(
    " ",
  ),
);

/** Jokes: "don't tell the wife". */
export const jokeWords = new Set(
  "wife husband missus mother mum mom dad boss accountant taxman landlord neighbours neighbors cat dog kids subscribe comment comments youtube bank police vicar".split(
    " ",
  ),
);

/** Words that are a caution by themselves. */
export const warnings = [
  "mind your *1 {body}",
  "mind the? *1 {body}",
  "watch your *1 {body}",
  "watch out for",
  "watch out because",
  "watch the",
  "watch for the",
  "be very? careful",
  "careful here/now/with/of",
  "watch it",
  "your *1 {body} is/are in/under/near/inside",
  "is/was lead",
  "lead in it",
  "no heat gun",
  "come/comes over/down/back/off on/at you/your",
  "lockout",
  "lock/locked it? out",
  "padlock on the",
  "prove/proved *2 dead",
  "checked *5 dead",
  "watch yourself",
  "{guards} and {guards}",
  "careful not to",
  "go careful",
  "take care not/when/with/to/you",
  "keep yourself *2 out/clear/away",
  "beware",
  "keep your *2 {body}",
  "keep *2 {body} off/out/away/clear",
  "keep clear of",
  "keep well? clear",
  "keep away from",
  "stay away/clear",
  "stand clear",
  "keep it away from",
  "keep *3 away from",
  "keep *2 out of the/your/that *2 {body}",
  "wear your? a? {guards}",
  "wear some? {guards}",
  "put your? {guards} on",
  "put some {guards} on",
  "goggles on",
  "gloves on",
  "mask on",
  "glasses on",
  "ear defenders on",
  "eye protection",
  "your eyes",
  "unplug it/everything",
  "your *1 {body} out of the way",
  "get your *1 {body} out",
  "if/when it/that/this lets go",
  "you are in hospital/casualty/trouble",
  "and that is that you will",
  "spring *4 like a",
  "strong/heavy/serious/powerful spring",
  "i do mean",
  "if *8 throw/shut/turn/switch/bin it away/off/down/out",
  "will/could/can *1 have/take/break/trap/crush/cut/lose/rip *2 {digit}",
  "lose/break/trap/crush/cut/burn/pinch a/your/that/the {digit}",
  "one of those to the *1 {body}",
  "plug lead off",
  "{guards} *16 yes you do/should",
  "nowhere near the *1 boiler/fire/flame/stove/heater/pilot",
  "away from *3 flame/flames/sparks/fire/boiler/stove/heater",
  "unplug the",
  "is unplugged",
  "and unplugged",
  "off at the wall",
  "bled *4 off through",
  "how you burn/kill/break/wreck",
  "mind your back/head/toes",
  "not want *4 on your {body}",
  "before you touch",
  "before you go near",
  "before you put your",
  "before you stick your",
  "before your {body}",
  "chassis is/can/may/will live/be",
  "is live if/when/unless/with",
  "will/can/could *2 scald/burn/cut/hurt/blind you",
  "how you lose a",
  "it/that/they/which will/can/could *3 your *1 {body}",
  "heavy gloves",
  "gloves goggles",
  "otherwise *6 {body}",
  "pull the plug before/first/out",
  "isolate it/the/that",
  "make sure it is unplugged/off/isolated/dead/cold/locked/blocked/chocked/drained/empty",
  "make sure it is switched off",
  "make sure the *3 is off/out/unplugged/isolated/disconnected/drained/cold",
  "disconnect the battery/mains/supply/power",
  "out of the wall",
  "discharge it/the/them/that",
  "short it/them *4 before/first",
  "let it down before",
  "let the *3 down before",
  "bleed it *3 before",
  "bleed the *3 before",
  "take the pressure off",
  "release the pressure/tension/spring",
  "relieve the *2 pressure/tension",
  "hold a charge",
  "still be live",
  "can be live",
  "it is live",
  "is still live",
  "will be live",
  "hot side",
  "at mains potential",
  "will kill you",
  "could kill you",
  "can kill you",
  "kill you",
  "lethal",
  "electrocute you",
  "give you a *1 shock/belt/bite/jolt/kick/wallop",
  "will *1 bite you",
  "under *2 tension/pressure/compression",
  "fully wound",
  "highly/very/extremely? flammable",
  "catch fire",
  "carbon monoxide",
  "asbestos",
  "stand to the/one side",
  "stand out of",
  "stand back",
  "stand well? clear",
  "not in front",
  "volts on the *3 electrolytic/capacitor/cap/caps/can",
  "volts in there",
  "{number} volts *6 still/stays/holds",
  "face shield",
  "is a bomb",
  "nobody *2 in front/near/under/behind",
  "radium",
  "contains/containing lead/mercury/asbestos",
  "lead paint",
  "poisonous",
  "toxic",
  "wear a mask",
  "with the doors/windows/door/window open",
  "do it outside",
  "outdoors",
  "well ventilated",
  "block it up",
  "chock the",
  "axle stands",
  "never get under",
  "go through your skin/hand/finger",
  "through your skin",
  "take your *2 {body}",
  "have your *2 {body}",
  "lose a/the/your finger/fingers/hand/eye/thumb",
  "take the skin/end off",
  "take the tip/end of your",
  "i mean it",
  "i am not kidding",
  "i am not joking",
  "no joke",
  "you will regret it",
  "do not do it",
  "do not do that",
  "please do not",
  "go easy",
  "go gently",
  "go steady",
  "be gentle",
  "only nip it",
  "just nip it",
  "do not overtighten",
  "over tighten",
] as const;

/** Parts of the body that are no parts of machines. */
export const digitWords = new Set(
  "finger fingers thumb thumbs knuckles knuckle skin hair sleeve sleeves cuff wrist toe toes eyebrows fingertip fingertips".split(
    " ",
  ),
);

/** Parts of the body. */
export const bodyWords = new Set(
  "mouth lungs back finger fingers hand hands eye eyes hair sleeve sleeves cuff thumb thumbs face head arm toes feet knuckles knuckle skin fingertips wrist tie clothes clothing ears foot legs".split(
    " ",
  ),
);

/** What is worn against harm. */
export const guardWords = new Set(
  "goggles gloves mask glasses respirator visor specs apron ear-plugs earplugs plugs defenders eyeshield shield muffs boots overalls".split(
    " ",
  ),
);

/** Harm done to people: such cautions are of injury. */
export const injuryWords = new Set(
  "finger fingers hand hands eye eyes hair skin cuff sleeves thumb kill shock bite lethal poison asbestos radium lead mercury burn burns live mains charge goggles gloves mask hospital wrist lungs breathe explode".split(
    " ",
  ),
);

/** Verbs of damage: what follows from doing it wrong. */
export const damageWords = new Set(
  "snap snaps crack cracks break breaks shear shears strip strips split splits bend bends score scores scratch scratches burn burns blow blows ruin ruins wreck wrecks smear smears chip chips shatter shatters jump jumps fly flies whip whips drop drops fall falls slip slips jam jams seize seizes stick sticks rot rots rust rusts melt melts explode explodes shock bite bites kill kills pinch trap crush hurt damage damages damaged snag snags leak leaks bent cracked stripped snapped broken scored burnt burned melted scald scalds strand gum gums glue paste lift lifts dissolve dissolves eat eats mark marks bruise pull swell swells distort distorts warp warps ping pings spit spits kick catch mushroom scar fire washes stains stain tear tears dent crush collapse collapses short swells gall galls lose bottom regret guillotine welded trouble grab spin spins unwind unwinds flies fouls foul".split(
    " ",
  ),
);

/** Before a verb of damage: "it'll snap", "you could crack it", "and it goes to glue". */
export const consequences = [
  "will *4 {damage}",
  "can *3 {damage}",
  "could *3 {damage}",
  "would *3 {damage}",
  "might *3 {damage}",
  "going to *3 {damage}",
  "it {damage}",
  "they {damage}",
  "that {damage}",
  "you {damage} the/it/them",
  "goes to *2 {damage}",
  "goes off like",
  "takes the *4 off",
  "take the *4 off",
  "take *3 straight off",
  "take out the",
  "takes *2 off",
  "washes the *2 out",
  "makes grinding paste",
  "have the *2 out",
  "you will be *3 again",
  "you will have *4 again",
  "cost you a/the",
  "shopping for a",
  "you have {spoilt}",
  "you have just {spoilt}",
  "start again",
  "you will be buying/making/ordering/hunting/fishing/looking/drilling/doing",
  "you are buying/fishing/drilling",
  "say goodbye",
  "the end of it",
  "through the floor/roof/wall",
  "good bye/goodbye",
  "you are starting over",
  "you get no",
  "you will get no",
  "it will be back to",
  "will never",
  "you can not get *3 back/out",
  "it is brittle",
  "they are brittle",
  "is glass hard",
  "are glass hard",
  "will not *3 again",
  "and it is gone",
  "there is no guard",
  "comes off in chips",
  "comes down like",
  "light right up",
  "the thing that breaks",
  "one ball does all",
  "holding the *4 together",
  "the only thing between",
  "carries it straight",
  "welded",
  "you will never *2 again",
  "can not be bought",
  "you can not buy",
  "you can not get *2 any? more",
] as const;

/** What happens otherwise, behind an order: "…, or it'll find its way to the pinch wheel". */
export const otherwise = [
  "or it/you/they/that/we will",
  "or it/you/they/that is/are going to",
  "or it/they goes/go/gets/get/comes/falls/drops",
  "or you are",
  "or you have",
  "or you get",
  "or you lose",
  "or you end up",
  "or the/your/that *3 will/is/are/goes/go/gets/comes/weeps/weep/falls/drops",
  "or it/they/you {damage}",
  "or the/your *2 {damage}",
  "or else",
  "otherwise it/you/they/the/your/that",
  "if you do not *4 it/you/they/the",
  "because *8 will *3 {damage}",
  "because it/they/that/you {damage}",
  "because it/they/that is *2 live/hot/heavy/sharp/brittle/loaded/sprung",
] as const;

/** Verbs with which an order begins. With what happens otherwise behind it, the order is a caution. */
export const careVerbs = new Set(
  "back hold keep support leave wrap cover take pull let put use do make remember start lift lower loosen undo slack slacken catch block tie tape clamp lock stop wear drain mark wet bag mask go turn bring warm heat cool stand clean check set fit line file drill tighten oil grease push slide rotate wind press unhook hook unscrew remove measure wait dry bleed discharge isolate disconnect unplug switch get have point face watch soak rinse lay hang feed cut count test work stop run give add fill replace stay bolt fold".split(
    " ",
  ),
);

/** What makes an order to do something first a caution: "let the pressure out before you undo it". */
export const storedWords = new Set(
  "spring springs mainspring pressure tension charge charged live volts hot weight weights loaded wound sprung vacuum steam gas petrol fuel mains power".split(
    " ",
  ),
);

/** What was spoilt by it: "you've killed it before you've run it". */
export const spoiltWords = new Set(
  "killed ruined wrecked lost bent broken broke stripped scrapped cracked snapped scored burst blown spoiled spoilt damaged finished".split(
    " ",
  ),
);

/** Questions that a "no" answers away: "should I be wearing gloves? no, you're fine". */
export const dangerQuestions = [
  "is it *2 dangerous/safe",
  "is any of this",
  "is this dangerous/safe",
  "is it going to",
  "is this going to",
  "will it *2 explode/hurt/kill/bite/burn/blow/catch",
  "do i/you/we need",
  "do i/you/we have to",
  "should i/you/we",
  "does it need",
  "do you have to",
  "is it worth",
  "are you supposed to",
] as const;
export const refusals = new Set(
  "no nah nope rubbish nonsense fine relax kidding heck never course rarely".split(" "),
);

/** What others say, to be denied in the next breath. */
export const hearsay = [
  "people say/tell/reckon/think/will",
  "people always say",
  "they say/tell/reckon",
  "they will tell",
  "some people say/tell/reckon/think",
  "everybody/everyone *8 says/tells/reckons/said",
  "somebody/someone said/says/told/asked",
  "you will hear",
  "you hear people",
  "the internet says/reckons",
  "the forum/forums/books say/says/reckons",
  "folks say/will tell/tell",
] as const;
export const denials = [
  "rubbish",
  "nope",
  "nonsense",
  "baloney",
  "that is not true",
  "not true",
  "it is fine",
  "that is fine",
  "they are wrong",
  "you do not need",
  "no need",
  "never had a problem",
  "never done me any harm",
  "do not believe it",
  "you are fine",
  "poppycock",
  "codswallop",
  "old wives",
  "i never have",
  "it does not matter",
  "makes no difference",
] as const;
