/** Words of the trade, as the rules look for them. All texts are in small letters. */

/** Verdicts by which a part goes on. */
const accepts =
  /\b(?:accept(?:ed|able)?|ok(?:ay)?|fine|pass(?:ed|es)?|good|within|in (?:spec|limits?|tolerance)|refitted|re-?used?|kept|keep|left|serviceable|signed off|fit for use|to spec(?:ification)?|satisfactory|usable|no action|put back|retained|carry on|go|correct|as it should|set|approved|cleared|back (?:in|into|to) (?:service|use|work)|returned to|ready|leave|leaving)\b/;
/** Verdicts by which something is done about it. */
const rejects =
  /\b(?:reject(?:ed)?|renew(?:ed|al)?|replac(?:e|ed|ement|ing)|scrap(?:ped)?|over(?:size)? (?:limit|the limit)|beyond|worn out|rebor(?:e|ed)|resleeve|sleeved?|re-?grind|regr(?:ou|i)nd|re-?bush(?:ed)?|re-?shim(?:med)?|re-?adjust(?:ed)?|to be (?:adjusted|bored|honed|lapped|sleeved|bushed|scraped|straightened|filed|reamed|planed|milled|welded|shimmed|balanced|rewound|faced|dressed|scrapped|corrected|made|set|cut|trued|skimmed|turned|ground|machined|reset|redone|repaired)|adjust(?:ed)?|corrected|reset|return(?:ed)?(?! to)|returned to (?:the )?(?:maker|manufacturer|supplier|seller|shop|factory|dealer|sender|stores?)|send back|sent back|not accepted|unacceptable|not ok|no good|fail(?:ed|s)?|condemn(?:ed)?|unserviceable|out of (?:spec|limits?|tolerance|true)|too (?:much|big|small|large|wide|loose|tight|high|low|thin|short|long|worn|slack)|exceeds?|discard(?:ed)?|binned|skim(?:med)?|straighten(?:ed)?|make new|new (?:one|part|bush|ring|bearing|belt|shaft|pin|guide|set|brushes|valve|liner|disc)s?|needs?|must be|order(?:ed)?|remov(?:e|ed)|repair(?:ed)?|recharge|retest|weld(?:ed)?|metal spray|redo|redone|change(?:d)?|swap(?:ped)?|machine(?:d)? out|under limit|below (?:limit|minimum)|drain(?:ed)?|thrown|quarantine|re-?metal(?:led)?|caulk(?:ed)?|re-?line(?:d)?|re-?face(?:d)?|re-?seat(?:ed)?|lap(?:ped)?|hon(?:e|ed)|re-?cut|dress(?:ed)?|true(?:d)? up|bin|rework(?:ed)?|worn)\b/;
const notThat =
  /\b(?:not|never|no|n't|without|un)\s+(?:be\s+|been\s+|to\s+be\s+|yet\s+|need(?:ing|ed)?\s+(?:to\s+be\s+)?)?$/;

/** Whether a value was read off an instrument, and is not the nominal one. */
export const isMeasured = (words: string): boolean =>
  /\b(?:measured|meter|reads|reading|tested|actual|found)\b/.test(words);

export type Decision = "accepted" | "rejected" | "open";

/** What was decided, from the words of a verdict. */
export function decisionIn(words: string): Decision {
  if (affirmed(words, rejects)) return "rejected";
  if (
    /\bnot (?:accept|ok|fine|good|within|in (?:spec|limit)|serviceable|satisfactory|to spec|usable|acceptable)/.test(
      words,
    )
  )
    return "rejected";
  return accepts.test(words) ? "accepted" : "open";
}

const global = new Map<RegExp, RegExp>();

function everywhere(pattern: RegExp): RegExp {
  const known = global.get(pattern) ?? new RegExp(pattern.source, "g");
  global.set(pattern, known);
  return known;
}

/** Whether a text says a thing without denying it just before. */
export function affirmed(text: string, pattern: RegExp): boolean {
  if (text === "" || !pattern.test(text)) return false;
  for (const found of text.matchAll(everywhere(pattern)))
    if (found.index === 0 || !notThat.test(text.slice(0, found.index))) return true;
  return false;
}

/** Gaps and wear: more is worse, so that a limit is a most. */
export const growsWithWear =
  /\b(?:clearance|gap|play|float|backlash|lash|run-?out|oval(?:ity)?|taper|wear|slack|bore|inside|i\.?d\.?|hole|shake|eccentricit|bend|bow|warp|distortion|lift|stretch|elongation|sag|leak|loss|lost|worn away|drop|misalign|out of|slop|ripple|temperature|pressure|speed|current|resistance|twist|width of (?:slot|groove))/;
/** Things that wear away: less is worse, so that a limit is a least. */
export const shrinksWithWear =
  /\b(?:diameter|thickness|thick|journal|shaft|pin|stem|spindle|o\.?d\.?|outside|brush|lining|pad|shoe|tread|length|height|depth of (?:groove|cut)|compression|insulation|tension|load|rate|capacity|hardness|land|wall|teeth|tooth|trunnion)/;

/** The part that goes in. */
const male =
  /\b(?:shaft|journal|pin|spindle|stem|piston|dowel|stud|arbor|arbour|mandrel|axle|plunger|spigot|rod|crank-?pin|crankshaft|camshaft|countershaft|layshaft|tenon|key|peg|pivot|trunnion|roller|armature|rotor|quill|ram|tappet|plug|liner|sleeve|bolt|screw|needle|core|tongue|ring gear|bearing|bush|bushing)\b/;
/** The part that it goes into. */
const female =
  /\b(?:housing|guide|seat|recess|socket|keyway|slot|groove|cylinder|barrel|hub|eye|boss|collar|counterbore|pocket|cup|block|casing|case|jewel|bushing|bush|bearing|sleeve|ring|wheel|pulley|gear|flywheel|disc|plate|tube|crankcase|body|frame|stator|tunnel|column|quill bore)\b/;

export type Side = "in" | "out";

/** Whether a size is of the part that goes in ("in") or of the one it goes into ("out"); null where nobody can say. */
export function sideOf(label: string): Side | null {
  if (
    /\b(?:outside|outer|external|over)\b.{0,12}\b(?:diameter|dia|size)?\b|\bo\.?d\.?\b|\bspigot\b/.test(
      label,
    ) &&
    !/\bouter (?:race|ring) bore|\bouter bore/.test(label)
  )
    return "in";
  if (
    /\b(?:bore|hole|inside|inner diameter|internal|reamed|i\.?d\.?|keyway|slot|counterbore|recess|housing|socket|groove)\b/.test(
      label,
    )
  )
    return "out";
  const m = male.exec(label);
  const f = female.exec(label);
  const sure =
    /\b(?:shaft|journal|pin|spindle|stem|piston|dowel|stud|arbor|axle|plunger|pillar|seat ?post|rod|crank-?pin|key|ball|pivot|peg|mandrel|trunnion|ram|plug|tappet)\b/.test(
      label,
    );
  if (
    sure &&
    !/\b(?:shaft|pin|stem|piston|spindle) (?:guide|bush|bushing|bearing|boss|sleeve)\b|\bball (?:bearing|race)\b/.test(
      label,
    )
  )
    return "in";
  if (f) return "out";
  return m ? "in" : null;
}

const clearFit =
  /\b(?:drop(?:s|ped)? (?:straight |right |easily )?(?:in|on|into|through|over)|drop fit|slid(?:es?|ing)|running|runs? (?:free|true)|free(?:ly)?|(?:hand|finger) (?:push|fit|press)|(?:by|in by|on by) (?:hand|finger)|slip(?:s|ped)?(?: (?:fit|in|on|over))?|spins?|turns? (?:easily|freely|by)|rotat\w*|floating|easy|clearance|loose|rattl\w*|falls? (?:in|out|through)|wobbl\w*|slack|pushed (?:in|on) by|rocks?)\b/;
const tightFit =
  /\b(?:press(?:ed)?(?: fit| in| on)?|interference|shr[iu]nk|shrunk|driv(?:e|en|ing)(?: fit| in| on)?|force(?:d)?(?: fit| in| on)?|tight|heavy fit|sweated|heat(?:ed)?(?: (?:to fit|and))?|tapped home|hammered|arbor press|hydraulic press|bolt and washers|nip)\b/;

export type SaidFit = "clear" | "tight" | null;

/** What sort of fit the words tell; null where they tell none or both. */
export function fitIn(words: string): SaidFit {
  if (words === "") return null;
  const plainWords = words.replace(
    /press(?:es|ed)? (?:in|on|home) (?:by|with) (?:hand|thumb|finger)s?|(?:light |hand |finger |thumb )push(?: fit)?|thumb press|key fit|transition|wring(?:ing)?/g,
    "push",
  );
  const clear = affirmed(plainWords, clearFit);
  const tight = affirmed(plainWords, tightFit);
  if (clear === tight) return null;
  return clear ? "clear" : "tight";
}

/** Metals softer than steel, and what is softer still, for threads in them. */
export function softnessOf(material: string): "soft metal" | "brass" | "zinc" | "weak" | null {
  if (
    /\b(?:bakelite|plastic|nylon|ebonite|vulcanite|phenolic|wood|oak|ash|paxolin|tufnol|fibre|porcelain|ceramic|slate|glass|acetal|perspex|hard rubber|celluloid|marble)\b/.test(
      material,
    )
  )
    return "weak";
  if (
    /\b(?:zinc|mazak|zamak|pot metal|die-?cast(?:ing)?|white metal|lead|pewter|zamac|monkey metal)\b/.test(
      material,
    ) &&
    !/alumin/.test(material)
  )
    return "zinc";
  if (/\bbrass\b|\bcopper\b|\bgunmetal screw/.test(material)) return "brass";
  if (
    /\b(?:alumin(?:i)?um|alloy casting|light alloy|alloy|magnesium|elektron|duralumin|dural)\b/.test(
      material,
    ) &&
    !/alloy steel/.test(material)
  )
    return "soft metal";
  return null;
}
