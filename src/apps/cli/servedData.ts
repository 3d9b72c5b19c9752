import { announcedIn, type RunningServer } from "../server/runningServer.ts";
import { mistaken } from "./mistake.ts";

/**
 * Asks the server that runs on a data folder, as the workshop's own screen, and gives what it answers; null for nothing.
 * @throws InputMistake if none runs there
 */
export async function askServer(folder: string, method: string, path: string): Promise<unknown> {
  const running = announcedIn(folder);
  const answer = running && (await asked(running, method, path));
  // After a kill the word that the server left stays, and may lead to another program by now.
  if (!answer || answer.status === 401 || answer.status === 404)
    throw mistaken("--data", folder, "a folder that is served at the moment: npx turnsleft start with the same --data");
  const text = await answer.text();
  if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${text}`);
  return text === "" ? null : JSON.parse(text);
}

async function asked({ address, key }: RunningServer, method: string, path: string): Promise<Response | null> {
  try {
    return await fetch(`${address}api${path}`, { method, headers: { authorization: `Bearer ${key}` } });
  } catch {
    return null;
  }
}
