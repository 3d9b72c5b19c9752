import { memoryJournal, memoryStore } from "../../src/stores/memory.ts";
import { ownerCardsContract } from "./ownerCardsContract.ts";
import { storeContract, workshop } from "./storeContract.ts";

storeContract("memory", async () => memoryStore(workshop));
ownerCardsContract("memory", async () => memoryJournal(workshop));
