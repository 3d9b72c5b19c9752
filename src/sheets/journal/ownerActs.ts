import { choice } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";
import type { OwnerActName } from "../words/actWords.ts";
import {
  anotherOwner,
  cardFirst,
  erasedCommon,
  machineFirst,
  newOwnersName,
  oneLine,
  ownerFieldWords,
  theSame,
} from "../words/ownerCardWords.ts";
import { type Act, type Around, actForm, ownWords, type PlainCard, type PlainFact } from "./act.ts";

/** Whose the machine is. The journal gets the owner's identity alone; what is known of him as a person goes on his card. */
export const ownerActs: Readonly<Record<OwnerActName, Act>> = {
  owner: {
    form: ({ owner, sheet }) =>
      actForm(
        "owner",
        {
          ...(owner ? { hands: choice(theSame, anotherOwner) } : {}),
          name: ownWords,
          telephone: ownWords,
          plate: ownWords,
        },
        ownerFieldWords,
        {
          personal: true,
          given: owner
            ? {
                hands: theSame,
                name: owner.name,
                telephone: owner.telephone ?? "",
                plate: owner.plates.find(({ machine }) => machine === sheet.machine)?.plate ?? "",
              }
            : {},
        },
      ),
    read: (it, around): readonly PlainFact[] => {
      it.want("name");
      for (const field of ["name", "telephone", "plate"]) {
        const text = it.text(field);
        if (text !== null && !/^[^\p{Cc}]{1,120}$/u.test(text)) it.refuse(field, oneLine);
      }
      const { machine } = around.sheet;
      if (machine === null) it.refuse("name", machineFirst);
      const known = around.owner;
      if (known && !isNew(it, around)) return [];
      if (known && it.text("name") === known.name) it.refuse("name", newOwnersName);
      const owner = ownerOf(it, around);
      return [
        { type: "OwnerMet", owner },
        { type: "MachineChangedHands", machine, owner },
      ];
    },
    card: (it, around): PlainCard | null => {
      const { machine } = around.sheet;
      const [name, telephone, plate] = [it.text("name"), it.text("telephone"), it.text("plate")];
      if (name === null || machine === null) return null;
      const others = isNew(it, around) ? [] : (around.owner?.plates.filter((known) => known.machine !== machine) ?? []);
      return {
        owner: ownerOf(it, around),
        name,
        ...(telephone === null ? {} : { telephone }),
        plates: [...others, ...(plate === null ? [] : [{ machine, plate }])],
      };
    },
    texts: () => null,
  },

  erased: {
    form: () => actForm("erased", { erased: { type: "text", common: erasedCommon } }, ownerFieldWords),
    read: (it, { owner }) => {
      it.want("erased");
      if (!owner) it.refuse("erased", cardFirst);
      return { type: "OwnerErased", owner: owner?.owner, why: it.text("erased") };
    },
    texts: () => null,
  },
};

const isNew = (it: Typed, { owner }: Around): boolean => owner === null || it.text("hands") === anotherOwner;

const ownerOf = (it: Typed, around: Around): string =>
  around.owner && !isNew(it, around) ? around.owner.owner : `o-${around.fresh}`;
