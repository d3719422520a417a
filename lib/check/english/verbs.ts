/**
 * Verbs with which a step of the workshop begins, by what they do. The second list names those that are as
 * often the name of a thing ("the press", "a seal"): after "and" they count as a command only where a word
 * such as "the" follows.
 */
const listed = {
  open: `undo unscrew unbolt unclip uncouple unhook unpin unpick unplug unsolder unwind unwrap unlock unfasten
    unload unthread slacken loosen ease free release relieve remove detach disconnect dismantle disassemble
    strip separate split part prise lever withdraw extract pull draw drift drive knock tap tease coax crack
    lift hoist raise jack lower drop take slide slip peel pick punch press push back break open dislodge disengage`,
  close: `fit refit install reinstall mount attach connect reconnect assemble reassemble replace restore insert
    enter engage offer locate seat nest place position put set lay slot thread start screw run bolt pin clip
    clamp fasten fix secure tie lash strap tighten torque nip pinch lock stake peen caulk rivet crimp shrink
    close shut couple join marry mate hook hang load string wind wrap feed guide nudge ram turn rotate twist
    swing spin wind crank bring swap exchange renew return`,
  clean: `clean wash rinse wipe dry dust brush blow degrease derust descale flush purge drain empty bleed soak
    steep dip swill swab sponge scrub scour scrape strip pickle neutralise neutralize vacuum mop blot sweep
    etch blast bead tumble`,
  make: `cut saw hacksaw file grind linish deburr chamfer drill ream bore counterbore countersink tap turn face
    skim mill shape plane slot broach hone lap polish buff burnish sand rub flat dress true scribe mark centre
    center machine part knurl thread bend straighten form roll beat flare swage draw anneal harden temper heat
    quench cool weld braze solder tin sweat cast pour mould mold glue bond laminate plate paint prime spray
    coat lacquer varnish stain line sew stitch pack trim shorten lengthen open enlarge relieve fabricate make
    build copy metal pour spot rewind re-cut recut redrill retap regrind resleeve sleeve bush rebush shim`,
  supply: `oil grease lubricate smear dab apply spread fill refill top charge prime pump pour inject coat wet
    damp dampen spray drip add mix stir dilute thin shake warm preheat chill freeze cure bake leave let allow
    wait stand keep soak`,
  judge: `check inspect examine look see watch listen feel test try prove measure gauge gage weigh count
    compare note record write read label tag bag photograph film sketch draw number letter mark log identify
    find confirm verify ensure make observe probe sound rock wiggle shake tap view sight scan plot calculate
    work subtract divide multiply choose select sort match grade blue`,
  adjust: `adjust align centre level square true set reset time phase synchronise synchronize balance trim tune
    regulate calibrate zero clock dial pre-load preload tension slack index register advance retard reduce
    increase alter change shift move correct straighten back rotate wind`,
  wire: `wire rewire solder desolder strip crimp splice insulate sleeve terminate earth ground isolate discharge
    short bridge energise energize switch power probe plug connect dress lace route demagnetise degauss`,
  hold: `hold grip steady support prop chock block brace restrain hang catch trap cradle rest stand park store
    stow protect cover mask shield cap plug seal tape wrap guard guide bind stop`,
  run: `start stop run operate work cycle exercise engage crank fire light ignite extinguish shut switch warm
    idle treadle wind rewind play spin repeat continue begin finish complete go do carry proceed use wear put
    get give have call ask send collect fetch bring order gather prepare clear arrange ventilate stand step
    tell say call refer follow treat dispose discard throw scrap save rinse retain avoid reverse transfer
    tip tilt invert upend flip stretch compress squeeze expand collapse hammer strike hit jar bump
    screw cross skip hunt search trace spread plan bond reach trip mike snip stone wring pare rough touch nudge unjam
    overhaul service survey unpack climb wheel steer fold unfold crease knot untie unroll roll reel spool`,
};

const alsoThings = `back bag balance bead block bolt bore brace bridge brush buff bush cap catch centre center
  chamfer charge chill chock clamp clip clock coat copy count cover crack crank cross cut cure cycle dab damp
  dial dip draw dress drift drill drip drive drop dust earth ease face feed file fill film find finish fire fit
  fix flare flat flush form free freeze gauge gage glue go grade grease grind ground grip guard guide hammer hang
  heat hit hold hook idle index jack jar join joint knock label lace lap latch lay level lever letter lift light
  line load lock log look machine make mark mask match mate measure metal mill mix mould mold mount move nest nip
  note number offer oil open order pack paint park part pick pin pinch plane plate play plot plug polish
  power press prime probe prop pull pump punch purge push ram read ream record register release rest return
  reverse ring rinse rivet rock roll route rub run sand saw scan scrap scrape scratch screw seal search seat send
  separate set shake shape shift shield shim short shrink sight sketch skim skip sleeve slide slip slot smear soak
  solder sort sound spin split sponge spot spray spread square squeeze stain stake stamp stand start steady step
  stitch stop store strap stretch strike string strip support sweat sweep swing switch tag tap tape temper tension
  test thin thread tie time tin tip top torque trace trap trim true try tune turn twist use vacuum varnish view
  trip stone touch wheel reel spool fold knot wait warm wash watch wear weld wet wind wipe wire work wrap zero double slack cast blast dry close clean clear
  secure empty complete lower correct phase blue scribe sleeve cool level plain straight`;

const words = (text: string) => text.split(/\s+/).filter((word) => word !== "");

/** Verbs that may begin a step. */
export const verbs: ReadonlySet<string> = new Set(Object.values(listed).flatMap(words));

/** Verbs that are as often a thing or a quality. */
export const alsoNouns: ReadonlySet<string> = new Set(words(alsoThings));

/** Verbs of what is done beside another action, at the same time: "turn the shaft and watch the needle". */
export const alongside: ReadonlySet<string> = new Set(
  words(`hold keep support steady watch look see listen feel note check observe catch make let leave allow wait
    stop repeat count read guide ensure compare find stand rest continue confirm verify try prevent do avoid
    record write measure go come bag label tag mark store lay place put`),
);
