import type { Caution } from "../../mechanics/tables/methodCautions.ts";

/** What to mind, in one sentence, at the step where it hurts. */
export const cautionSentences: Readonly<Record<Caution, string>> = {
  "engine off and key away":
    "Engine off and the key with you; a hybrid or stop-start may start by itself: ready mode off.",
  "lift or stands first": "Lift locked or stands in, never on a jack alone.",
  "hot oil": "Oil above 60 °C scalds: wait until it is hand-warm, or arm gloves.",
  "cold and cap first": "Cooling system cold, and the cap off first.",
  "wheel and hub held": "Chocks and supports in, the wheel held, nobody under a lifted axle; two people for a hub.",
  "propeller and ignition": "Ignition and gear made harmless, and the propeller free to turn without you.",
  "cylinder covered": "Valves or a greased rag between tap and cylinder: what falls in ruins it.",
  "eyes and swarf": "Eyes covered; chips caught in grease, never blown with an air line, and flushed out.",
  "nothing moving behind": "Turn what runs behind the hole once by hand: nothing may touch tap, plug or chips.",
  "fuel and vapour away": "Fuel, solvent and vapour away before anything that sparks.",
  "magnesium burns": "Magnesium chips and dust burn: test the alloy first, no sparks, dry sand at hand, never water.",
  "alloy before welding": "No welding or grinding before the alloy is known.",
  "battery off": "Battery off before welding.",
  "fumes of cleaner": "No chlorinated cleaner near an arc or a flame: it turns to toxic gas.",
  "solvent aired": "Solvent only with air about, and no mist of it near anything hot.",
  "sealant on skin": "Sealant off skin and eyes, with air about.",
  "sensors and strainers": "None where it can reach a sensor, a strainer or a gallery: thin on the seat, none inside.",
  "cure before it runs": "Neither filled, tilted, started nor driven before it has cured.",
  "resin on skin": "Resin and bonding compound off skin and eyes; no grinding of it without a mask.",
  "old fibre dust": "An old fibre ring may hold asbestos: lift it off wet, don't scrape it dry.",
  "do not start": "DO NOT START hangs on the wheel until it is out, and the machine is locked.",
  "pump limited": "Air and vacuum limited at the pump: seals are spoilt far below tyre pressure.",
  "waste oil caught": "A pan large enough under it, gloves on; oil to the waste oil, none to drain, ground or water.",
  "oil on the road": "A drop on a road is an offence in many places and a danger to riders: not driven while it drips.",
  "next man told": "A tag at the plug: what is not as it was, and how hard it may be pulled.",
};
