// Getting a file out of the page: a link with the bytes behind it, which works in every browser and from a stick.

const KEEP_MS = 60_000;

function address(blob: Blob): string {
  const url = URL.createObjectURL(blob);
  // Some browsers start a download late; an address taken away at once would save an empty file.
  setTimeout(() => URL.revokeObjectURL(url), KEEP_MS);
  return url;
}

export function save(name: string, blob: Blob): void {
  const link = document.createElement("a");
  link.href = address(blob);
  link.download = name;
  link.hidden = true;
  document.body.append(link);
  link.click();
  link.remove();
}

/** An extra: some browsers refuse it for pages opened from a disk, and the download is there for them. */
export function openInTab(blob: Blob): void {
  const link = document.createElement("a");
  link.href = address(blob);
  link.target = "_blank";
  link.rel = "noopener";
  link.hidden = true;
  document.body.append(link);
  link.click();
  link.remove();
}
