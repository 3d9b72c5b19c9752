import type { JobSheet, Notice } from "../../journal/job/jobSheet.ts";
import { choice } from "../sums/sumField.ts";
import type { NoticeActName } from "../words/actWords.ts";
import { noticedCommon, noticeFieldWords, settledCommon } from "../words/noticeWords.ts";
import { type Act, actForm, dayIn } from "./act.ts";
import { dayField } from "./dayField.ts";

/** Another complaint or finding, with a look today or on a day, and what came of it. */
export const noticeActs: Readonly<Record<NoticeActName, Act>> = {
  noticed: {
    form: ({ today }) => {
      const look = dayField(today, ["0", "1", "14", "90"]);
      return actForm(
        "noticed",
        { noticed: { type: "text", common: noticedCommon }, look: look.field },
        noticeFieldWords,
        { choiceWords: look.words, given: { look: today } },
      );
    },
    read: (it, { today, fresh }) => {
      it.want("noticed", "look");
      const look = dayIn(it, "look");
      if (look !== null && look < today) it.refuse("look", `a day from ${today} on`);
      return {
        type: "AlsoNoticed",
        notice: `also-${fresh}`,
        words: it.text("noticed"),
        look: look === today ? "today" : look,
      };
    },
    // What came of it goes by its name: one that was written wrongly is withdrawn.
    texts: () => null,
  },

  settled: {
    form: ({ sheet }) => {
      const open = openNotices(sheet);
      const [only] = open.length === 1 ? open : [];
      return actForm(
        "settled",
        {
          notice: choice(...open.map(({ notice }) => notice)),
          settled: { type: "text", common: settledCommon },
        },
        noticeFieldWords,
        {
          choiceWords: Object.fromEntries(open.map(({ notice, words }) => [notice, words])),
          given: only ? { notice: only.notice } : {},
        },
      );
    },
    read: (it) => {
      it.want("notice", "settled");
      return { type: "NoticeSettled", notice: it.text("notice"), words: it.text("settled") };
    },
    texts: (fact) => (fact.type === "NoticeSettled" ? { notice: fact.notice, settled: fact.words } : null),
  },
};

/** What was also noticed and is not settled, in the order in which it was. */
export const openNotices = ({ notices }: JobSheet): readonly Notice[] =>
  notices.filter(({ settled }) => settled === null);
