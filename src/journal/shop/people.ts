import type { FactOf } from "../facts/fact.ts";
import type { DeviceId, OwnerId, PersonId } from "../facts/ids.ts";
import type { Projection } from "../projection.ts";

export type Person = {
  readonly person: PersonId;
  readonly called: string;
  readonly role: string | null;
  readonly left: boolean;
  /** His finger as a dipstick, as it was measured; null where nobody did. */
  readonly tipToCrease: string | null;
};

export type Device = { readonly device: DeviceId; readonly called: string; readonly left: boolean };

export type People = {
  readonly workshop: Omit<FactOf<"WorkshopNamed">, "type"> | null;
  readonly persons: Readonly<Record<PersonId, Person>>;
  readonly devices: Readonly<Record<DeviceId, Device>>;
  readonly erasedOwners: readonly OwnerId[];
};

/** The workshop, its people and its devices. */
export const people: Projection<People> = {
  empty: { workshop: null, persons: {}, devices: {}, erasedOwners: [] },

  apply(state, { fact }) {
    const changed = (person: PersonId, changes: Partial<Person>): People => {
      const known = state.persons[person] ?? { person, called: person, role: null, left: false, tipToCrease: null };
      return { ...state, persons: { ...state.persons, [person]: { ...known, ...changes } } };
    };
    switch (fact.type) {
      case "WorkshopNamed": {
        const { type: _, ...workshop } = fact;
        return { ...state, workshop };
      }
      case "PersonJoined":
        return changed(fact.person, { called: fact.called, role: fact.role ?? null, left: false });
      case "PersonLeft":
        return changed(fact.person, { left: true });
      case "FingerMeasured":
        return changed(fact.person, { tipToCrease: fact.tipToCrease });
      case "DeviceJoined": {
        const { device, called } = fact;
        return { ...state, devices: { ...state.devices, [device]: { device, called, left: false } } };
      }
      case "DeviceLeft": {
        const known = state.devices[fact.device] ?? { device: fact.device, called: fact.device, left: false };
        return { ...state, devices: { ...state.devices, [fact.device]: { ...known, left: true } } };
      }
      case "OwnerErased":
        return { ...state, erasedOwners: [...state.erasedOwners, fact.owner] };
      default:
        return state;
    }
  },
};
