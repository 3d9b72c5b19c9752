import { closedAtFromText } from "../sums/closedAt.ts";
import type { SumFields } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";
import type { BookedActName } from "../words/actWords.ts";
import { bookedFieldWords, clockAccepted, notEarlier, readyFromCommon, readyToCommon } from "../words/bookedWords.ts";
import { workshopFieldWords } from "../words/workshopWords.ts";
import { type Act, type ActForm, type Around, actForm, dayIn } from "./act.ts";
import { dayField } from "./dayField.ts";
import { bays, machineFields, machineIn, machineTaps } from "./machineChoice.ts";

/** A machine that is to come, and by when it is promised; a promise may be given anew until the machine has left. */
export const bookedActs: Readonly<Record<BookedActName, Act>> = {
  booked: {
    form: (around) => {
      const taps = machineTaps(around);
      return promiseForm("booked", around, machineFields(around), taps);
    },
    read: (it, around) => {
      it.want("machine");
      const { machine, met } = machineIn(it, around);
      return [...met, { type: "JobBooked", machine, ...promiseIn(it, around) }];
    },
    texts: () => null,
  },

  promised: {
    form: (around) => promiseForm("promised", around, {}, { choiceWords: {}, given: {} }),
    read: (it, around) => ({ type: "JobBooked", machine: around.sheet.machine, ...promiseIn(it, around) }),
    // A promise is given anew, or withdrawn: its hours are those of the place where they were said.
    texts: () => null,
  },
};

function promiseForm(
  name: BookedActName,
  { today, sheet }: Around,
  before: SumFields,
  taps: Pick<ActForm, "choiceWords" | "given">,
): ActForm {
  const day = dayField(today, ["0", "1", "2", "7"]);
  return actForm(
    name,
    {
      ...before,
      bay: { type: "text", common: bays },
      readyOn: day.field,
      readyFrom: { type: "text", common: readyFromCommon },
      readyTo: { type: "text", common: readyToCommon },
    },
    { ...workshopFieldWords, ...bookedFieldWords },
    {
      choiceWords: { ...day.words, ...taps.choiceWords },
      given: { ...taps.given, ...(sheet.bay === null ? {} : { bay: sheet.bay }) },
    },
  );
}

function promiseIn(it: Typed, around: Around) {
  it.want("readyOn", "readyFrom", "readyTo");
  const day = dayIn(it, "readyOn");
  const [from, to] = [clockIn(it, "readyFrom", day, around), clockIn(it, "readyTo", day, around)];
  if (from !== null && to !== null && to < from) it.refuse("readyTo", notEarlier);
  return { bay: it.text("bay"), readyFrom: from, readyTo: to };
}

/** A time of that day by the clock of the place, as a moment in UTC; null where it was noted or the day is not known. */
function clockIn(it: Typed, name: string, day: string | null, { moment }: Around): string | null {
  const text = it.text(name);
  if (text === null) return null;
  const at = /^\d{1,2}[:.]\d{2}$/.test(text) ? closedAtFromText(text, day ?? "2000-01-01") : null;
  if (at === null) return it.refuse(name, clockAccepted);
  return day === null ? null : moment(at.toISOString().slice(0, 16));
}
