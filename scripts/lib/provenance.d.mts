export function parted(value: unknown): { figures: unknown; provenance: unknown };
