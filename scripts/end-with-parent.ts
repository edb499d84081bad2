/** A signal that ends npm alone ends the shell between npm and this program, and would leave a server behind. */
export function endWithParent(end: () => void): void {
  if (!process.env.npm_lifecycle_event) return;
  const parent = process.ppid;
  setInterval(() => {
    if (process.ppid !== parent) end();
  }, 500).unref();
}
