import type { Server } from "node:http";

export function serveFolder(
  folder: string,
  options?: { firstPort?: number },
): Promise<{ address: string; close: () => void; server: Server }>;
