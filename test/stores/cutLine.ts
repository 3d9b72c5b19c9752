import { type AddressInfo, connect, createServer, type Socket } from "node:net";

/** Where a line is cut: after so many bytes of a request, or when the first byte of its answer comes back. */
export type Cut = { readonly afterBytes: number } | "before the answer" | null;

/** A line to a server that breaks when it is told to. */
export type CutLine = {
  readonly address: string;
  /** How the next connections break, one after the other; those after them hold. */
  cuts: Cut[];
  readonly close: () => Promise<void>;
};

export async function cutLine(to: string): Promise<CutLine> {
  const port = Number(new URL(to).port);
  const open = new Set<Socket>();
  const line: { cuts: Cut[] } = { cuts: [] };
  const server = createServer((near) => {
    const cut = line.cuts.shift() ?? null;
    const far = connect(port, "127.0.0.1");
    const broken = () => {
      near.destroy();
      far.destroy();
    };
    for (const socket of [near, far]) {
      open.add(socket);
      socket.on("error", () => {});
      socket.on("close", broken);
    }
    let bytes = 0;
    near.on("data", (piece) => {
      bytes += piece.length;
      if (typeof cut === "object" && cut !== null && bytes >= cut.afterBytes) {
        // What came before the cut arrives: a server may see half a request.
        far.write(piece.subarray(0, Math.max(0, piece.length - (bytes - cut.afterBytes))), () => setTimeout(broken, 5));
        near.pause();
      } else far.write(piece);
    });
    far.on("data", (piece) => {
      if (cut === "before the answer") broken();
      else near.write(piece);
    });
  });
  await new Promise<void>((resume) => server.listen(0, "127.0.0.1", resume));
  return Object.assign(line, {
    address: `http://localhost:${(server.address() as AddressInfo).port}`,
    close: async () => {
      for (const socket of open) socket.destroy();
      await new Promise((resume) => server.close(resume));
    },
  });
}
