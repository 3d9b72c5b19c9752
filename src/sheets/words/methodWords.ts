import type { MethodNumber } from "../../mechanics/tables/methodEstimates.ts";

/** What a method is, when it is right and what it needs, for somebody who reads up on it before he begins. */
export type MethodWords = {
  readonly name: string;
  readonly file: string;
  readonly what: string;
  readonly rightWhen: string;
  readonly needs: string;
};

const words = (name: string, what: string, rightWhen: string, needs: string): MethodWords => ({
  name,
  file: name.toLowerCase().replaceAll(/[^a-z]+/g, "-"),
  what,
  rightWhen,
  needs,
});

export const methodWords: Readonly<Record<MethodNumber, MethodWords>> = {
  R0: words(
    "Ordinary reseal",
    "The same plug with a new seal, pulled to the book figure.",
    "At least four fifths of the healthy turns, clean and snug, no crack. Most days end here.",
    "A new seal. Count the washers that came off: an old one often stays on the case.",
  ),
  R1: words(
    "New plug",
    "A new plug and a new seal in a hole that is sound; where the window with its own seal is still open on a hurt thread, the same joint at a lower torque, with a tag.",
    "The plug is rounded, stretched or foreign and the hole is fine; or the hole is hurt and its own seal still closes below the careful limit.",
    "The right thread, reach and head; for the lower torque a count by hand, a good wrench and a tag.",
  ),
  R2: words(
    "First thread cleaned",
    "The first thread rolled back with a restorer, which presses the metal back where a cutting tap would take it off.",
    "Dirt, a folded first crest, a light cross-start: no more than about a turn and a half hurt.",
    "A restorer of the right pitch, started from the good end; greased flutes. Then count again and weigh again.",
  ),
  R3: words(
    "Longer plug",
    "A longer plug that bites in thread the old one never reached. Passing right through, its lead-in wastes no turn.",
    "Good thread behind the end of the present plug, and room behind the wall.",
    "The depth of the hole, the plug's length under its head and the room behind, measured; the shaft turned once by hand.",
  ),
  R4: words(
    "Another seal",
    "The same plug on a seal that needs less clamp, or that takes less of the thread.",
    "The window is empty only because of the seal.",
    "A flat clean seat 2 to 3 mm wide; rubber that suits fluid and heat; for an O-ring a chamfer cut for it.",
  ),
  R5: words(
    "Sealant on what is left",
    "No washer: sealant under the head and on the remaining turns. It seals, it is no thread, and it has an end date.",
    "Nothing better is possible or wanted, at least two turns are counted (three under oil), the joint can be dry, and nothing bad happens if it weeps.",
    "Dry, degreased, 5 °C or more, time to cure, a sealant whose label names this fluid; a tag and a day to look again.",
  ),
  R6: words(
    "Self-cutting plug",
    "An oversize plug that cuts its own way. It ruins the next size, leaves loose chips and cracks castings.",
    "To get home on a thin steel pan, and never otherwise.",
    "Nothing but the plug: that is its whole appeal.",
  ),
  R7: words(
    "Next size",
    "The hole drilled and tapped to the next size that clears the torn thread, with a new plug and a larger ring.",
    "Wall enough, tap and plug in hand, straight access.",
    "At least 2.5 mm of wall left in alloy, better a quarter of the new diameter; depth for the healthy turns; room behind for the tap's point.",
  ),
  R8: words(
    "Wire coil",
    "A coil of wire wound into a larger thread brings back the old one in steel. The original plug stays.",
    "The port is opened often, the boss is clean, and it is at least one diameter deep.",
    "The coil's own tap and drill, depth for a coil and its set-down, wall; sealant outside, as oil creeps along the windings.",
  ),
  R9: words(
    "Solid bushing",
    "A steel bush with a shoulder, locked in a larger thread. It gives the seal a new face.",
    "Badly torn holes, spark plugs, ports under oil, hot or shaken ones.",
    "Wall for the outer thread, 1.2 mm of its own around the plug's thread, 8 mm of depth; a square start and a lock.",
  ),
  R10: words(
    "Bonded bush",
    "A bush turned for the part, bonded and pinned, or let in from inside.",
    "An odd size or a thin wall, with the cover off.",
    "A lathe, a fit of 0.05 to 0.1 mm, a compound rated above the heat of the case.",
  ),
  R11: words(
    "Cast thread",
    "A thread cast in filled resin around a greased plug. It gets a machine through the season and lets go whole.",
    "No pressure, a case that stays below about 80 °C, no room to cut, an old machine.",
    "Bone-dry, roughened metal for it to key in, and twelve to twenty-four hours.",
  ),
  R12: words(
    "Expanding bung",
    "A rubber bung that swells in the bore. It keeps the fluid in while the machine stands.",
    "From the yard to the workshop, or while the part is on its way; not running.",
    "A bore in its range, the level drawn below it where that can be, a locked machine and a day to take it out.",
  ),
  R13: words(
    "Closed for good",
    "The opening closed for ever, and another used to fill, drain or check.",
    "The port is not needed and another way has been proven before this one is closed.",
    "A proven other way to fill and to check the level; a tag that says where it is now.",
  ),
  R14: words(
    "Welded and re-cut",
    "The boss welded up, dressed and cut anew.",
    "A torn or cracked boss, the part off and clean, and an alloy that welds.",
    "The alloy known, the part stripped, somebody who welds castings; pressure die-castings and magnesium by a specialist or not at all.",
  ),
  R15: words(
    "Adaptor plate",
    "A plate with a new opening, bolted over a gasket to the flat around the damage.",
    "A big flat around and no metal left in the hole.",
    "Three or four small sound holes or places for them, and a flat for the gasket.",
  ),
  R16: words(
    "Stud and nut",
    "A stud and a nut, or a bolt right through, so that the casting is spared at every later undoing.",
    "A bolt in a casting, its back in reach, that is often undone, and only by the maker's procedure.",
    "A sound thread for the stud, or the back side within reach of a nut. It closes no opening.",
  ),
  R17: words(
    "New part",
    "The pan, cover, case half or head replaced, used or new.",
    "Cracked, the wall gone, a safety item, or the price near that of the repairs.",
    "The part. A used one is looked at for the same disease first.",
  ),
  R18: words(
    "Left and watched",
    "Left as it is, counted in drops now and looked at again on a named day.",
    "A weep only, above the level, and the owner decides.",
    "A number of drops in a time, and the day of the next look.",
  ),
};
