import { drawSketch, type Sketch } from "#lib/check/index.ts";

/**
 * An invented procedure as somebody of the trade would write it down: instructions, with "|" before what stands
 * below; a line with "!" is a caution and, after a second "!", how to avoid it.
 */
export interface Written {
  trade: string;
  title: string;
  tools: string[];
  consumables: string[];
  steps: string[];
}

/** Ten procedures of five trades, all invented; plain workshop English with its habits. */
export const procedures: Written[] = [
  {
    trade: "sewing machines",
    title: "Hook and bobbin case of a long-bobbin head",
    tools: ["Screwdriver, wide blade", "Screwdriver, fine", "Tweezers", "Feeler gauge"],
    consumables: ["Paraffin", "Sewing-machine oil", "Lint-free cloth"],
    steps: [
      "Turn the handwheel towards you until the needle stands at its highest.",
      "Slide both cover plates out to the sides. | Mind the left one: its spring flies.",
      "Undo the two needle-plate screws a quarter turn each, in turn. | They have not moved in fifty years. If a slot starts to go, stop and let penetrating oil work overnight.",
      "Lift the needle plate off and bag its screws.",
      "Note which way the feed dog faces. | A photograph from above is worth ten words.",
      "Hook the thread and lint out from under the feed dog with the tweezers.",
      "Wipe the race with paraffin on a cloth.",
      "Offer up the shuttle with its point to the left, and feel for the click.",
      "Turn the handwheel slowly and watch the point pass the scarf of the needle. | The point passes about 1/16 in above the eye.",
      "If the point touches the needle, slacken the grub screw and ease the carrier away by a paper's thickness.",
      "Nip up the grub screw.",
      "Put one drop of oil on the race, no more.",
    ],
  },
  {
    trade: "sewing machines",
    title: "Motor and belt of a domestic head",
    tools: ["Screwdriver", "Straight edge", "Multimeter"],
    consumables: ["Belt, round leather, 3/16 in"],
    steps: [
      "! The motor leads are at mains voltage. ! Pull the plug and keep it in sight. For fixed wiring call a licensed electrician.",
      "Pull the plug out of the wall, and keep it where you can see it.",
      "Slacken the bracket screw half a turn. | Leave it in: the nut behind falls into the base.",
      "Slip the old belt off the handwheel first.",
      "Measure the old belt along its outside, without stretching it. | Ours came to 31 1/2 in.",
      "Cut the new belt 1/2 in shorter than the old one measured. | Leather stretches in the first week.",
      "Close the staple over both ends with the joint flat.",
      "Run the belt round the motor pulley, then over the handwheel by turning it.",
      "Lay the straight edge across both pulleys and shift the motor until it touches all along.",
      "Draw the motor down until the belt gives about 1/2 in under a finger.",
      "Tighten the bracket screw.",
      "Spin the handwheel by hand and listen for the belt ticking.",
    ],
  },
  {
    trade: "stationary engines",
    title: "Head and valves of a small open-crank engine",
    tools: [
      "Ring spanner, 1/2 in Whitworth",
      "Valve lifter",
      "Torque wrench",
      "Wire brush",
      "Scraper, brass",
    ],
    consumables: ["Grinding paste, fine", "Engine oil", "Head gasket", "Paraffin"],
    steps: [
      "Drain the hopper and the drip tray.",
      "Uncouple the pushrod from the rocker. | Tie a label on it: the ends differ.",
      "Slacken the six head nuts half a turn at a time, in a cross.",
      "Rock the head to break the joint. | A block of wood under the exhaust boss does it. Never drive a wedge in: the face is soft.",
      "Lift the head straight up off its studs and set it down on wood.",
      "Scrape the face clean with the brass scraper, along the lands and not across the bore.",
      "! The valve spring can slip out of the lifter and fly. ! Wear eye protection, and keep your face to one side.",
      "Compress the valve spring with the lifter, and pick the cotters out.",
      "Draw the valve out. | If it hangs at the end of the guide, dress the burr on its stem first.",
      "Lap the valve until a dull grey ring runs all round. | Lift it every few strokes and turn it a third.",
      "Wash every trace of paste out of the port with paraffin.",
      "Oil the stem and drop the valve back in.",
      "Lay the new gasket on dry, copper side down.",
      "Lower the head on and run the nuts down finger-tight.",
      "Tighten the six head nuts in a cross, in three stages: 10, 20 and 28 lbf ft. | Threads oiled.",
      "Turn the flywheel over by hand, twice round, and feel for a tight spot.",
    ],
  },
  {
    trade: "stationary engines",
    title: "Low-tension igniter",
    tools: ["Ring spanner, 7/16 in Whitworth", "Feeler gauge", "Points file", "Multimeter"],
    consumables: ["Mica washers, two", "Emery cloth, fine"],
    steps: [
      "Disconnect the lead from the insulated electrode.",
      "Undo the two flange nuts, and draw the igniter out square.",
      "Check the mica for cracks under a good light.",
      "Dress the points with the file until they meet over their whole face.",
      "Rub the spindle down with emery cloth and wipe it dry.",
      "Set the trip to open the points 1/32 in. | Less than that and she misses when hot.",
      "Run a tap through both flange holes before the studs go back.",
      "Fit new mica washers each side of the boss, dished faces outwards.",
      "Prove the electrode against the body with the multimeter: no reading at all.",
      "Offer the igniter up with a new gasket and nip the nuts up evenly.",
      "Trip it by hand, in the dark if you can, and look for a fat blue spark.",
    ],
  },
  {
    trade: "clocks",
    title: "Let down, strip and clean a spring-driven movement",
    tools: ["Let-down key", "Screwdrivers", "Tweezers", "Pliers, brass-lined", "Pegwood", "Pin vice"],
    consumables: ["Clock oil", "Ammoniated cleaning fluid", "Tissue"],
    steps: [
      "Take the hands off. | Hold the hub down while you draw the taper pin.",
      "Undo the dial feet and lift the dial away face up.",
      "! A wound mainspring spins the key out of the hand and cuts. ! Hold the key in the palm, and let the click out for one tooth at a time.",
      "Let the mainspring down with the key, a tooth at a time.",
      "Scribe a small mark by each barrel before it leaves its plate. | Left and right look alike and are not.",
      "Pull the pallet cock and lift the pallets out without touching the locking faces.",
      "Undo the pillar nuts, the back one last.",
      "Ease the top plate up off its pivots. | If it sticks, find which pivot binds before you pull.",
      "Lay the wheels out in the order they came, great wheel on the left.",
      "Soak the plates in the cleaning fluid for 20 min.",
      "Peg out each pivot hole until the wood comes away clean.",
      "Hold each pivot to the light and turn it between finger and thumb.",
      "Put the great wheel in first and work up the train.",
      "Close the plates by their own weight; coax each pivot home with tweezers.",
      "Set the beat by ear.",
    ],
  },
  {
    trade: "clocks",
    title: "Bush a worn pivot hole",
    tools: ["Broaches, cutting and smoothing", "Pin vice", "Depthing tool", "Staking set"],
    consumables: ["Bushing wire, brass", "Clock oil"],
    steps: [
      "Find the true centre of the hole from the side that is not worn.",
      "Mark the plate with a scribed cross through it.",
      "File the hole back to centre before it is opened. | A hole opened from where it wore stays where it wore.",
      "Open the hole with the cutting broach from the inside of the plate.",
      "Turn a bush to stand 0.1 mm proud each side.",
      "Drive the bush home square on the stake.",
      "Broach the bush to a free fit on its pivot: a wheel that leans about two degrees.",
      "Smooth the hole with a round broach and a touch of oil.",
      "Turn the oil sink with a round-nosed cutter.",
      "Try the wheel alone between the plates, and spin it.",
      "Try the depth with the next wheel in.",
    ],
  },
  {
    trade: "radios",
    title: "Bring a valve set back to the mains",
    tools: ["Multimeter", "Soldering iron", "Lamp limiter", "Bleeder, 10 kΩ 5 W", "Trimming tool"],
    consumables: ["Solder", "Capacitors, 22 µF 450 V, two", "Contact cleaner"],
    steps: [
      "! The chassis can be live, and capacitors hold their charge after the plug is out. Both can kill. ! Work on it only if you are trained to; unplug, discharge, and prove dead with a meter.",
      "Unplug the set and wait five minutes.",
      "Discharge the smoothing capacitors through the bleeder, one hand in your pocket. | Prove them dead with the multimeter.",
      "Pull the valves, and bag each with the number of its holder.",
      "Photograph the wiring under the chassis from both ends.",
      "Unsolder one end of each paper capacitor and measure its leakage. | Anything that passes current at 50 V goes.",
      "Wire the new capacitors in with the stripe to chassis.",
      "Clean the wave-change switch with contact cleaner, and work it twenty times.",
      "Check the mains transformer for shorts to the frame: over 10 MΩ cold.",
      "Refit the rectifier only.",
      "Bring the set up on the lamp limiter and watch the lamp fade.",
      "If the lamp stays bright, switch off and look for a short on the heater line.",
      "Plug in the other valves, output valve last.",
      "Measure the screen of the output valve. | About 95 V on ours.",
      "Tune to a weak station and peak each trimmer for the loudest sound.",
    ],
  },
  {
    trade: "radios",
    title: "Drive cord of a slide-rule dial",
    tools: ["Tweezers", "Crochet hook", "Screwdriver, fine"],
    consumables: ["Dial cord, 0.8 mm, 1.5 m", "Varnish"],
    steps: [
      "Turn the tuning gang to fully closed.",
      "Sketch the path of the old cord before you cut it.",
      "Knot one end to the spring inside the drum.",
      "Lead the cord out through the slot and half round the drum, anticlockwise.",
      "Wind two and a half turns round the spindle, each below the last.",
      "Pass the cord over both idlers from the front.",
      "Bring the end back through the slot and tie it off to the spring, with the spring pulled to twice its length.",
      "Snip the tails to 5 mm and seal the knots with a touch of varnish.",
      "Run the pointer from end to end ten times. | A cord that climbs wants half a turn less.",
      "Clip the pointer on at the end mark of the scale.",
    ],
  },
  {
    trade: "machine tools",
    title: "Headstock bearings of a small lathe",
    tools: ["C-spanner", "Dial gauge", "Soft mallet", "Engineer's square", "Torque wrench"],
    consumables: ["Spindle oil", "Engineer's blue", "Shims, brass, 1 and 2 thou"],
    steps: [
      "Isolate the machine at the wall and hang your own padlock on it.",
      "Clock the spindle nose before anything is slackened. | We found 2 thou lift and 1 thou run-out.",
      "Drain the oil cups.",
      "Undo the rear collar with the C-spanner, left-hand thread on this side.",
      "Tap the spindle forward with the mallet and catch the thrust washer as it comes.",
      "Number the caps before they are lifted, front and rear.",
      "Lift each cap with its shims still stuck to it.",
      "Mike the shims and write the pack on the cap. | Front 7 thou, rear 6 thou on ours.",
      "Blue the journals and rock the spindle in its bearings through a quarter turn.",
      "Scrape the high spots only, and blue it again until two thirds bear.",
      "Take 1 thou out of each pack, both sides alike.",
      "Torque the four cap bolts to 15 lbf ft in a cross, threads oiled.",
      "Turn the spindle by hand: it turns freely, with the drag of the oil and no more.",
      "Clock the nose again.",
    ],
  },
  {
    trade: "machine tools",
    title: "Gib strips and cross-slide of a shaper",
    tools: ["Screwdriver", "Ring spanner, 3/8 in BSF", "Feeler gauge", "Straight edge"],
    consumables: ["Slideway oil", "Paraffin", "Engineer's blue"],
    steps: [
      "Wind the table down on its blocks.",
      "Back off the gib locknuts one flat each.",
      "Draw the gib out from the thick end.",
      "Flush the ways with paraffin and wipe them with clean rag.",
      "Try the gib on the straight edge against the light.",
      "Stone the burrs off the edges, and leave the faces alone.",
      "Oil the ways well and slide the gib home.",
      "Set each gib screw until a 1 1/2 thou feeler just will not go in.",
      "Hold the screw and pinch the locknut.",
      "Wind the slide from end to end. | It should feel alike all the way.",
      "Go round the screws again after an hour's cutting.",
      "Put the guard back and take the spanner off the square before you start the motor.",
    ],
  },
];

/** The build that a written procedure stands for: every tool and consumable listed, a still to each step. */
export function buildOf({ title, tools, consumables, steps }: Written) {
  const document = drawSketch(sketchOf({ tools, consumables, steps }));
  return { ...document, build: { ...document.build, title } };
}

/** How many instructions a written procedure has. */
export function instructionsIn({ steps }: Written): number {
  return steps.filter((line) => !line.startsWith("!")).length;
}

function sketchOf({ tools, consumables, steps }: Pick<Written, "tools" | "consumables" | "steps">): Sketch {
  const lines = steps.map((line, index) => {
    const at = (index + 1) * 100;
    const [first = "", second = ""] = line
      .split(/[|!]/)
      .map((part) => part.trim())
      .filter(Boolean);
    if (line.startsWith("!")) return [at + 90, "caution", cautionFields(first, second)] as const;
    const stage = { [steps.findIndex((one) => !one.startsWith("!"))]: "strip", [steps.length - 1]: "prove" }[
      index
    ];
    return [at, "action", { words: first, detail: second, ...(stage ? { stage } : {}) }] as const;
  });
  const before = lines.find(([, kind]) => kind === "action")?.[0] ?? 100;
  return {
    marks: [
      ...tools.map((words, index) => [before - 10 + index / 10, "tool", { words }] as const),
      ...consumables.map((words, index) => [before - 5 + index / 10, "consumable", { words }] as const),
      ...lines,
    ],
    stills: lines.filter(([, kind]) => kind === "action").map(([at]) => `action@${at}`),
  };
}

function cautionFields(words: string, avoid: string) {
  const rated = { harms: "person", severity: "serious", likelihood: "could" };
  return { words, avoid, ...rated, sourceNote: "Common practice, no source" };
}
