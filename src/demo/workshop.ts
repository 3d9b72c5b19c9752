import { type Calendar, type Line, on, type Told, telling } from "./script.ts";

export const workshopOfDemo = "hollin-reach";

/** The day of the first calibration certificates: everything else in the demo came later. */
const begun = -400;

/** The day of the calibration of a wrench that counts on a day, as an offset. */
export function calibrationOf(wrench: "TW-1" | "TW-2" | "TW-3", day: number): number {
  const days = { "TW-1": [-485, -120], "TW-2": [-712, -347], "TW-3": [-739, -374] }[wrench];
  return days.filter((it) => it <= day).at(-1) ?? begun;
}

/** Hollin Reach Workshop, its people, tools, shelf and book; all invented. */
export function workshopLines({ day }: Calendar): readonly Line[] {
  const at = telling(null, "maud");
  const certified = (["TW-1", "TW-2", "TW-3"] as const).flatMap((instrument) => [
    { type: "InstrumentCalibrated", instrument, on: day(calibrationOf(instrument, begun)) } as const,
  ]);
  return [
    ...at(
      on(begun, "07:30"),
      { type: "WorkshopNamed", called: "Hollin Reach Workshop", place: "3 Ferry Bank", currency: "cr" },
      { type: "PersonJoined", person: "maud", called: "Maud Tolbeck", role: "owner" },
      { type: "PersonJoined", person: "jory", called: "Jory Anselm", role: "mechanic" },
      { type: "PersonJoined", person: "sefa", called: "Sefa Oyelund", role: "apprentice" },
      { type: "FingerMeasured", person: "jory", tipToCrease: "26 mm" },
      { type: "FingerMeasured", person: "sefa", tipToCrease: "23 mm" },
      { type: "DeviceJoined", device: "bench", called: "Screen by bay 1" },
      { type: "DeviceJoined", device: "phone-jory", called: "Jory's phone" },
      { type: "DeviceJoined", device: "phone-sefa", called: "Sefa's phone" },
      wrench("TW-1", "5 N·m", "25 N·m", "1 N·m"),
      wrench("TW-2", "20 N·m", "120 N·m", "2 N·m"),
      wrench("TW-3", "60 N·m", "340 N·m", "5 N·m"),
      { type: "InstrumentBought", instrument: "C-1", is: { kind: "length", called: "caliper" } },
      {
        type: "InstrumentBought",
        instrument: "P-1",
        is: { kind: "volume", called: "meter pump", readsIn: "US quarts" },
      },
      { type: "InstrumentBought", instrument: "S-1", is: { kind: "volume", called: "60 ml syringe", readsIn: "ml" } },
      {
        type: "InstrumentBought",
        instrument: "V-1",
        is: { kind: "pressure", called: "pressure and vacuum hand pump" },
      },
      { type: "InstrumentBought", instrument: "T-1", is: { kind: "temperature", called: "contact probe" } },
      ...certified,
    ),
    ...at(on(-374, "12:00"), { type: "InstrumentCalibrated", instrument: "TW-3", on: day(-374) }),
    ...at(on(-347, "12:00"), { type: "InstrumentCalibrated", instrument: "TW-2", on: day(-347) }),
    ...at(on(-120, "12:00"), { type: "InstrumentCalibrated", instrument: "TW-1", on: day(-120) }),
    ...at(
      on(begun, "08:00"),
      {
        type: "SealantStocked",
        sealant: "S-A",
        called: "Silicone for gear oil",
        batch: "7",
        shelfDate: day(40),
        labelHours: "24 h",
      },
      { type: "SealantStocked", sealant: "S-B", called: "Anaerobic for plugs", mostGap: "0.25 mm" },
      { type: "FluidStocked", fluid: "F-75W90", called: "Gear oil 75W-90 GL-4", batch: "G-118" },
      { type: "FluidStocked", fluid: "F-80W90", called: "Gear oil 80W-90 GL-5", batch: "G-102" },
      { type: "FluidStocked", fluid: "F-5W30", called: "Engine oil 5W-30", batch: "E-340" },
      { type: "FluidStocked", fluid: "F-COOL", called: "Coolant, premixed", batch: "C-21" },
    ),
  ];
}

const wrench = (instrument: string, least: string, most: string, step: string): Told => ({
  type: "InstrumentBought",
  instrument,
  is: { kind: "wrench", works: "click", least, most, step },
});
