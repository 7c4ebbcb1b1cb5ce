export const neededNode: string;
export function isNodeNewEnough(version: string): boolean;
export function requireNode(version?: string): void;
