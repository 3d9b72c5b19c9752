import { choice, type SumFields } from "../sums/sumField.ts";
import { type MachineActName, machineFieldWords } from "../words/actWords.ts";
import { workshopFieldWords } from "../words/workshopWords.ts";
import { type Act, actForm, answerTo, ownWords, photosIn, photosText, saidYes, yesNo } from "./act.ts";
import { unitFields, unitIn } from "./machineChoice.ts";

const papers = ["owner's sheet", "next hand's card", "tag", "bay card", "file", "case page"] as const;

/** What is written down of the machine as a whole. */
export const machineActs: Readonly<Record<MachineActName, Act>> = {
  note: act(
    "note",
    { words: ownWords },
    (it) => {
      it.want("words");
      return { type: "NoteWritten", words: it.text("words"), photos: photosIn(it) };
    },
    (fact) => (fact.type === "NoteWritten" ? { words: fact.words, photos: photosText(fact.photos) } : null),
  ),

  paper: act(
    "paper",
    { paper: choice(...papers) },
    (it) => {
      it.want("paper");
      return { type: "PaperIssued", paper: it.chosen("paper", papers) };
    },
    (fact) => (fact.type === "PaperIssued" ? { paper: fact.paper } : null),
  ),

  nearMiss: act(
    "nearMiss",
    { words: ownWords },
    (it) => {
      it.want("words");
      return { type: "NearMiss", words: it.text("words") };
    },
    (fact) => (fact.type === "NearMiss" ? { words: fact.words } : null),
  ),

  released: act(
    "released",
    { words: ownWords },
    (it) => ({ type: "MachineReleased", words: it.text("words") }),
    () => null,
  ),

  left: act(
    "left",
    { words: ownWords, signed: yesNo },
    (it) => {
      it.want("words", "signed");
      return { type: "MachineLeftNotRunning", carriedBy: it.text("words"), signedFor: answerTo(it, "signed") };
    },
    (fact) =>
      fact.type === "MachineLeftNotRunning" ? { words: fact.carriedBy, signed: saidYes(fact.signedFor) } : null,
  ),

  done: act(
    "done",
    { words: ownWords },
    (it) => ({ type: "JobClosed", words: it.text("words") }),
    () => null,
  ),

  unitNoted: {
    form: () => actForm("unitNoted", unitFields, workshopFieldWords),
    read: (it, { sheet, fresh }) => {
      // Its ports are told from those of the units before it.
      const is = unitIn(it, `${sheet.machine}-${fresh}`);
      return [
        { type: "UnitNoted", machine: sheet.machine, is },
        { type: "UnitIdentified", is },
      ];
    },
    texts: () => null,
  },

  follows: act(
    "follows",
    { earlier: ownWords, words: ownWords },
    (it, { sheet }) => {
      it.want("earlier");
      const earlier = it.text("earlier");
      if (earlier !== null && (!/^[A-Za-z0-9][A-Za-z0-9_.-]{0,63}$/.test(earlier) || earlier === sheet.job))
        it.refuse("earlier", "the number of an earlier job, as 0271");
      return { type: "JobFollows", earlier, words: it.text("words") };
    },
    (fact) => (fact.type === "JobFollows" ? { earlier: fact.earlier, words: fact.words ?? "" } : null),
  ),
};

function act(name: MachineActName, fields: SumFields, read: Act["read"], texts: Act["texts"]): Act {
  return {
    form: () => actForm(name, fields, machineFieldWords, { photos: name === "note" ? "last" : null }),
    read,
    texts,
  };
}
