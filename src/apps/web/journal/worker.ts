import { noPicture } from "../../../sheets/words/browserStoreWords.ts";
import { today } from "../kit/clock.ts";
import { dayOf } from "../kit/clockTexts.ts";
import { faultSentence } from "./faultSentence.ts";
import { type Keeper, keeper, keepPairing, keptPairing } from "./keeper.ts";
import { notPaired, type Reply, type Request, type Shown, type View } from "./messages.ts";
import { paired, pinProof } from "./pair.ts";
import { formOf, withdrawn, written } from "./writing.ts";

/** The journal beside the page: it keeps, reads, writes and exchanges, and hands back words and drawings. */
const page = self as unknown as { postMessage(reply: Reply): void };

let open: Keeper | null = null;
let view: View | null = null;
/** Opened once; what is asked before waits for it. */
let opening: Promise<void> = opened();

addEventListener("message", async ({ data }: MessageEvent<Request>) => {
  await opening;
  try {
    await answer(data);
  } catch (fault) {
    if ("id" in data) told(data.id, { type: "trouble", sentence: faultSentence(fault) });
  }
});

// What stands grows old by itself: minutes pass, a cure ends.
setInterval(() => void show(), 20_000);

async function answer(request: Request): Promise<void> {
  switch (request.ask) {
    case "look":
      view = request.view;
      page.postMessage({ about: "status", status: open?.status() ?? notPaired });
      await show();
      return;
    case "wake":
      open?.wake();
      await show();
      return;
    case "pair": {
      const pairing = await paired(request.code, request.name);
      await keepPairing(pairing);
      opening = opened();
      await opening;
      told(request.id, { type: "written", job: null });
      return;
    }
    case "pin": {
      const pairing = await keptPairing();
      if (!open || !pairing) return;
      open.proven(request.person, await pinProof(pairing.token, request));
      told(request.id, { type: "written", job: null });
      return;
    }
    case "form":
      if (open) page.postMessage({ about: "form", id: request.id, form: formOf(open, request.draft) });
      return;
    case "write":
      if (open) told(request.id, await written(open, request.draft));
      return;
    case "bring":
      if (open) {
        const { portForBench } = await weighing();
        page.postMessage({ about: "brought", id: request.id, brought: portForBench(open, request) });
      }
      return;
    case "weighed":
      if (open) told(request.id, await (await weighing()).weighingWritten(open, request));
      return;
    case "take": {
      const photo = await open?.take(request.file);
      if (photo) page.postMessage({ about: "taken", id: request.id, photo });
      else told(request.id, { type: "trouble", sentence: noPicture });
      return;
    }
    case "drop":
      await open?.journal.photos.drop(request.photo);
      return;
    case "picture":
      page.postMessage({
        about: "picture",
        id: request.id,
        picture: (await open?.picture(request.photo)) ?? null,
      });
      return;
    case "withdraw":
      if (open) told(request.id, await withdrawn(open, request));
      return;
    default:
      request satisfies never;
  }
}

/** The engine comes with it: not before something is weighed. */
const weighing = () => import("./weighing.ts");

const told = (id: number, outcome: Extract<Reply, { about: "outcome" }>["outcome"]): void =>
  page.postMessage({ about: "outcome", id, outcome });

async function opened(): Promise<void> {
  open?.end();
  open = null;
  try {
    const pairing = await keptPairing();
    if (pairing) open = await keeper(pairing, changed, faultSentence);
    page.postMessage({ about: "status", status: open?.status() ?? notPaired });
  } catch (fault) {
    page.postMessage({ about: "status", status: { ...notPaired, trouble: faultSentence(fault) } });
  }
}

function changed(): void {
  if (!open) return;
  page.postMessage({ about: "status", status: open.status() });
  void show();
}

async function show(): Promise<void> {
  if (!open || !view) return;
  const looked = view;
  const shown = await shownOf(open, looked);
  // Another page may have been opened while this one was drawn.
  if (looked === view) page.postMessage({ about: "view", view: looked, shown });
}

async function shownOf({ reader, journal, ownerOf }: Keeper, view: View): Promise<Shown[keyof Shown]> {
  const now = new Date().toISOString();
  const shop = reader.shop();
  switch (view.name) {
    case "standing": {
      const { standingShown } = await import("../../../sheets/journal/standingShown.ts");
      return standingShown(reader.sheets(), shop, now);
    }
    case "job": {
      const { jobShown } = await import("../../../sheets/journal/jobShown.ts");
      const entries = await journal.store.ofJob(view.job as never);
      const sheet = reader.sheet(view.job as never);
      return entries.length === 0 ? null : jobShown(sheet, entries, shop, now, ownerOf(sheet.machine), reader.sheets());
    }
    case "port": {
      const { passportShown } = await import("../../../sheets/journal/passportShown.tsx");
      return passportShown(view.port, reader.sheets(), shop);
    }
    case "due": {
      const { dueShown } = await import("../../../sheets/journal/dueShown.ts");
      return dueShown(reader.sheets(), shop, today(), dayOf);
    }
    case "held": {
      const { heldShown } = await import("../../../sheets/journal/heldShown.tsx");
      return heldShown(reader.sheets());
    }
    default:
      return view satisfies never;
  }
}
