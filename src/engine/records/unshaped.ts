/** Fields of what a file says, before anything is known of its shape. */

export function fieldOf(value: unknown, name: string): unknown {
  return typeof value === "object" && value !== null ? (value as Record<string, unknown>)[name] : undefined;
}

export function listOf(value: unknown, name: string): readonly unknown[] {
  const field = fieldOf(value, name);
  return Array.isArray(field) ? field : [];
}
