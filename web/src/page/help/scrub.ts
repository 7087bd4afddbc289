// What the program or the browser said of a fault, without what it may have said of the data. Kept are the place in the program
// (file:line:column) and the words that such messages are made of; whatever else stands in it becomes a dash, and a number a #.

const PLACE = /\bpanicked at ((?:[A-Za-z0-9_.-]+[\\/])*[A-Za-z0-9_-]+\.rs:\d+(?::\d+)?)/;

// Words of Rust's panics and of the browsers' errors, taken from what they print; a name or a cell is not among them, and
// where it happens to be one, it tells nothing.
const KNOWN = new Set(
  (
    "a abort already an and argument arguments array assertion at attempt be big borrow borrowed bounds buffer byte but by called calculate cannot capacity char " +
    "code could data decode denied detached divide enough entered entry error err exceeded exhausted explicit fail failed failure fetch file for found function has in " +
    "index infinity input instance integer internal invalid is large left len length limit maximum memory message module multiply mutably negate negative none not " +
    "notfounderror notreadableerror null number object of on operation option out overflow panic panicked parse permission properties property quota quotaexceedederror " +
    "range rangeerror read recursive remainder request result right runtimeerror securityerror set shift size slice some stack start state string subtract syntaxerror " +
    "table than the to typeerror undefined unexpected unreachable unsafe unwrap use utf value vec was webassembly with without word worker write yet zero " +
    "add allocation compileerror connection datacloneerror domexception encoding expect expected five greater implemented answer did seconds stopped within ends begins past"
  ).split(" "),
);

export function scrubbed(said: string): string {
  const place = PLACE.exec(said)?.[1] ?? "";
  // Only the last rooms of the path: what stands before them is where the program was made.
  const short = place.split(/[\\/]/).slice(-3).join("/");
  const rest = place === "" ? said : said.replace(place, " ");
  const words = rest
    .replace(/(["'`])(?:(?!\1).)*\1/gs, " … ")
    .replace(/[“„«「『‘‚][^”“»」』’]*[”“»」』’]/gs, " … ")
    .replace(/::/g, " ")
    .split(/[\s,;:.()[\]{}<>=!&|/\\]+/)
    .filter((word) => word !== "")
    .map((word) => (/^#?\d+$/.test(word) ? "#" : KNOWN.has(word.toLowerCase()) ? word.toLowerCase() : "…"));
  const told = words.filter((word, at) => word !== "…" || words[at - 1] !== "…").join(" ");
  return short === "" ? told : `${short} ${told}`;
}

/** Where in the page's own script an error came up: lines and columns alone, since the address of the file says whose computer it is. */
export function placesIn(stack: string): string {
  return [...stack.matchAll(/:(\d+):(\d+)\)?$/gm)].slice(0, 12).map(([, line, column]) => `${line}:${column}`).join(" ");
}
