import { type Relation, role, roleBut } from "../relation.ts";

const any = /^/;
const lightSpeed = 299_792_458;

/** Volts, waves and machines, beside Ohm's law. */
export const electricity: readonly Relation[] = [
  {
    says: "A sine wave's peak is 1.414 times its RMS value",
    result: roleBut(/\bpeak\b/, /\bpeak[- ]to[- ]peak|\bp-?p\b|\binverse\b/, "voltage", "current"),
    given: [role(/\br\.?m\.?s\b/, "voltage", "current")],
    of: (rms) => rms * Math.SQRT2,
    not: /\b(?:square wave|pulse|peak inverse)\b/,
    room: 0.06,
    source: "IEC 60050-103",
    examples: [
      {
        entry: {
          text: "339 V",
          what: "peak voltage",
          context: { related: [{ what: "secondary, RMS", text: "240 V" }] },
        },
        wrong: "170 V",
      },
    ],
  },
  {
    says: "The volts lost on the way are those sent less those that arrive",
    result: roleBut(/\bdrop\b/, /\blamp|across\b/, "voltage"),
    given: [
      role(
        /\b(?:supply|battery|source|sending|generator|dynamo|at the (?:board|switchboard|source))\b/,
        "voltage",
      ),
      role(
        /\b(?:at the (?:lamp|load|motor|far end|starter|house|barn)|receiving|arriving|on load|far end)\b/,
        "voltage",
      ),
    ],
    of: (sent, there) => sent - there,
    unsigned: true,
    room: 0.05,
    only: /\bdrop\b/,
    examples: [
      {
        entry: {
          text: "0.6 V",
          what: "volt drop in the cable",
          context: {
            related: [
              { what: "battery", text: "12.4 V" },
              { what: "at the lamp", text: "11.8 V" },
            ],
          },
        },
        wrong: "1.6 V",
      },
    ],
  },
  {
    says: "A charge is the current by the time",
    result: roleBut(any, /\b(?:capacity|rated|nominal|battery|cell)\b/, "charge"),
    given: [roleBut(any, /\bmax(?:imum)?|rated\b/, "current"), role(any, "time")],
    of: (current, time) => current * time,
    only: /\b(?:charge (?:put in|given|taken)|put in|taken out|given out|discharge[d]?)\b/,
    room: 0.06,
    examples: [
      {
        entry: {
          text: "40 Ah",
          what: "charge put in",
          context: {
            related: [
              { what: "current", text: "5 A" },
              { what: "time", text: "8 h" },
            ],
          },
        },
        wrong: "400 Ah",
      },
    ],
  },
  {
    says: "Energy is the power by the time",
    result: role(any, "energy"),
    given: [role(any, "power"), role(any, "time")],
    of: (load, time) => load * time,
    room: 0.06,
    examples: [
      {
        entry: {
          text: "6 kWh",
          what: "energy used",
          context: {
            related: [
              { what: "load", text: "1.5 kW" },
              { what: "for", text: "4 h" },
            ],
          },
        },
        wrong: "60 kWh",
      },
    ],
  },
  {
    says: "A power factor is the watts by the volts and amperes",
    result: role(/\b(?:power factor|p\.?f|cos ?(?:φ|phi))\b/, "number", "ratio"),
    given: [role(any, "power"), role(any, "voltage"), role(any, "current")],
    of: (watts, volts, amperes) => [watts / (volts * amperes), watts / (Math.sqrt(3) * volts * amperes)],
    room: 0.05,
    examples: [
      {
        entry: {
          text: "0.80",
          what: "power factor",
          context: {
            related: [
              { what: "wattmeter", text: "920 W" },
              { what: "voltage", text: "230 V" },
              { what: "current", text: "5 A" },
            ],
          },
        },
        wrong: "0.60",
      },
    ],
  },
  {
    says: "An efficiency is what comes out by what goes in",
    result: role(/\befficiency\b/, "number", "ratio"),
    given: [
      roleBut(
        /\b(?:out(?:put)?|delivered|brake|useful|given)\b/,
        /\bin(?:put)?\b/,
        "power",
        "energy",
        "charge",
      ),
      roleBut(
        /\b(?:in(?:put)?|drawn|taken|absorbed|indicated|consumed|supplied)\b/,
        /\bout(?:put)?\b/,
        "power",
        "energy",
        "charge",
      ),
    ],
    of: (out, into) => out / into,
    room: 0.03,
    examples: [
      {
        entry: {
          text: "75 %",
          what: "efficiency of the motor",
          context: {
            related: [
              { what: "output", text: "1.5 kW" },
              { what: "input", text: "2.0 kW" },
            ],
          },
        },
        wrong: "57 %",
      },
    ],
  },
  {
    says: "A wavelength is the speed of light by the frequency",
    result: roleBut(any, /\b(?:aerial|antenna|wire|coil|winding|mast|feeder)\b/, "length"),
    given: [roleBut(any, /\b(?:mains|hum|audio|intermediate|i\.?f)\b/, "frequency")],
    of: (frequency) => (frequency > 1e5 ? lightSpeed / frequency : Number.NaN),
    only: /\b(?:waves?|wavelengths?|dial|scale|tuning|station|band|wavemeter|transmitter|receiver|wireless)\b/,
    not: /\b(?:half|quarter|aerial|antenna|width|height)\b|\bmm\b|\bcm\b|\binch/,
    room: 0.015,
    source: "speed of light: SI Brochure, 9th edition",
    examples: [
      { entry: { text: "300 m (1,000 kc/s)", what: "dial check point" }, wrong: "200 m (1,000 kc/s)" },
    ],
  },
  {
    says: "A tuned circuit's frequency is one by 2π and the root of its inductance by its capacitance",
    result: role(any, "frequency"),
    given: [role(any, "inductance"), role(any, "capacitance")],
    of: (henry, farad) => 1 / (2 * Math.PI * Math.sqrt(henry * farad)),
    only: /\b(?:tun(?:ed|ing|es)|resonan\w+|trap|tank|oscillat\w+)\b/,
    room: 0.06,
    source: "Thomson's formula",
    examples: [
      {
        entry: {
          text: "1,125 kHz",
          what: "resonance of the tuned circuit",
          context: {
            related: [
              { what: "coil", text: "200 µH" },
              { what: "capacitor", text: "100 pF" },
            ],
          },
        },
        wrong: "112 kHz",
      },
    ],
  },
  {
    says: "A capacitor's reactance is one by 2π, the frequency and the capacitance",
    result: role(/\b(?:reactance|impedance)\b/, "resistance"),
    given: [role(any, "frequency"), role(any, "capacitance")],
    of: (frequency, farad) => 1 / (2 * Math.PI * frequency * farad),
    room: 0.05,
    source: "IEC 60050-131",
    examples: [
      {
        entry: {
          text: "796 Ω",
          what: "reactance of the dropper capacitor",
          context: {
            related: [
              { what: "mains", text: "50 Hz" },
              { what: "capacitor", text: "4 µF" },
            ],
          },
        },
        wrong: "79.6 Ω",
      },
    ],
  },
  {
    says: "A coil's reactance is 2π by the frequency by the inductance",
    result: role(/\breactance\b/, "resistance"),
    given: [role(any, "frequency"), role(any, "inductance")],
    of: (frequency, henry) => 2 * Math.PI * frequency * henry,
    room: 0.05,
    source: "IEC 60050-131",
    examples: [
      {
        entry: {
          text: "3,142 Ω",
          what: "reactance of the choke",
          context: {
            related: [
              { what: "mains", text: "50 Hz" },
              { what: "choke", text: "10 H" },
            ],
          },
        },
        wrong: "314 Ω",
      },
    ],
  },
  {
    says: "A time constant is the resistance by the capacitance",
    result: role(/\btime constant\b/, "time"),
    given: [role(any, "resistance"), role(any, "capacitance")],
    of: (ohm, farad) => ohm * farad,
    room: 0.03,
    examples: [
      {
        entry: {
          text: "10 ms",
          what: "time constant",
          context: {
            related: [
              { what: "resistor", text: "100 kΩ" },
              { what: "capacitor", text: "0.1 µF" },
            ],
          },
        },
        wrong: "100 ms",
      },
    ],
  },
  {
    says: "An oscillator stands off its station by the intermediate frequency",
    result: role(/\boscillator\b/, "frequency"),
    given: [
      role(/\b(?:station|signal|carrier|received|tuned to)\b/, "frequency"),
      role(/\b(?:intermediate|i\.?f)\b/, "frequency"),
    ],
    of: (station, between) => [station + between, Math.abs(station - between)],
    room: 0.002,
    examples: [
      {
        entry: {
          text: "1,465 kc/s",
          what: "local oscillator",
          context: {
            related: [
              { what: "station", text: "1,000 kc/s" },
              { what: "intermediate frequency", text: "465 kc/s" },
            ],
          },
        },
        wrong: "1,645 kc/s",
      },
    ],
  },
  {
    says: "A slip is what the rotor stays behind, by the speed of the field",
    result: role(/\bslip\b/, "ratio", "number"),
    given: [
      role(/\bsynchronous\b/, "rotational speed"),
      roleBut(
        /\b(?:full[- ]load|running|rotor|actual|measured|shaft|motor)\b/,
        /\bsynchronous\b/,
        "rotational speed",
      ),
    ],
    of: (field, rotor) => (field - rotor) / field,
    room: 0.06,
    examples: [
      {
        entry: {
          text: "4 %",
          what: "slip",
          context: {
            related: [
              { what: "synchronous speed", text: "1,500 rpm" },
              { what: "full-load speed", text: "1,440 rpm" },
            ],
          },
        },
        wrong: "40 %",
      },
    ],
  },
  {
    says: "Bars seem to stand still at twice the mains' frequency by their number",
    result: roleBut(any, /\bmotor\b/, "rotational speed"),
    given: [role(any, "frequency"), role(/\b(?:bars|dots|lines|segments)\b/, "number", "count")],
    of: (frequency, bars) => (2 * frequency) / bars,
    only: /\bstrob\w+/,
    room: 0.012,
    examples: [
      {
        entry: {
          text: "77.92 rpm",
          what: "speed at which the strobe stands",
          context: {
            related: [
              { what: "bars", text: "77" },
              { what: "lamp", text: "50 Hz" },
            ],
          },
        },
        wrong: "87.92 rpm",
      },
    ],
  },
];
