/** What is made when it is first asked for, and then kept. Nothing that was made may be null: that would be made again. */
export function once<T extends object>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}
