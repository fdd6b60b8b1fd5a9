/** Runs a script of this page's own origin. Rejects when it cannot be fetched. */
export function loadScript(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`${address} did not load`));
    document.head.append(script);
  });
}
