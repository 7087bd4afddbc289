// The yardstick: what a careful JavaScript page would do with the same file in a worker. Papa Parse stands in front of
// this text. It knows the invented table's shape, where the program has to find it out.
//
// Numbers are kept as whole hundredths of mg/kg in plain doubles: the table has no finer ones, sums of squares stay far
// below 2^53, and so a tie is a tie here too.

const OUTCOMES = ["BL", "X", "not_capable", "detection_too_high", "no_uncertainty", "not_measured", "OL", "not_applicable"];
const [BL, X, NOT_CAPABLE, DETECTION_TOO_HIGH, NO_UNCERTAINTY, NOT_MEASURED, OL, NOT_APPLICABLE] = OUTCOMES.keys();
const [NUMBER, BELOW, NOT_DETECTED, MISSING] = [0, 1, 2, 3];
const [POLYMER, METAL, COMPOSITE] = [0, 1, 2];
const CLASSES = new Map([["polymer", POLYMER], ["metal", METAL], ["composite", COMPOSITE]]);

// IEC 62321-3-1:2013, table of screening limits, in mg/kg: polymer, metal, composite. No high edge: Infinity.
const SCREENED = [
  { name: "Cd", low: [70, 70, 0], high: [130, 130, 150] },
  { name: "Pb", low: [700, 700, 500], high: [1300, 1300, 1500] },
  { name: "Hg", low: [700, 700, 500], high: [1300, 1300, 1500] },
  { name: "Cr", low: [700, 700, 500], high: [Infinity, Infinity, Infinity] },
  { name: "Br", low: [300, 300, 250], high: [Infinity, Infinity, Infinity] },
];
const [CD, BR] = [0, 4];
const LOW = Float64Array.from(SCREENED.flatMap(({ low }) => low), (limit) => limit * 100);
const HIGH = Float64Array.from(SCREENED.flatMap(({ high }) => high), (limit) => limit * 100);
// Plumbline's own condition: a composite's Cd detection limit above half the legal 100 mg/kg clears nothing.
const CD_COMPOSITE_DETECTION = 50 * 100;

// IEC 61249-2-21:2003 (restated by a secondary source): Cl 900, Br 900, total 1500 mg/kg; k = 3 is Plumbline's own.
const HALOGEN_LIMIT = 900 * 100;
const TOTAL_LIMIT = 1500 * 100;

const JUDGED = ["Cd", "Pb", "Hg", "Cr", "Br", "Cl"];

/** A non-detect at D has s = D/3, so 3 s is D. */
function screened(substance, material, state, x, s) {
  if (substance === BR && material === METAL) return NOT_APPLICABLE;
  if (state === MISSING) return NOT_MEASURED;
  const composite_cd = substance === CD && material === COMPOSITE;
  const at = substance * 3 + material;
  const low = LOW[at];
  if (state === NOT_DETECTED) return DETECTION_TOO_HIGH;
  if (state === BELOW) return (composite_cd ? x <= CD_COMPOSITE_DETECTION : 2 * x <= low) ? BL : DETECTION_TOO_HIGH;
  if (s === 0) return NO_UNCERTAINTY;
  if (x - 3 * s >= HIGH[at]) return OL;
  // The table has no column of detection limits for numbers, so a composite's Cd can't be cleared by one.
  if (composite_cd) return X;
  if (3 * s >= low) return NOT_CAPABLE;
  return x + 3 * s <= low ? BL : X;
}

function inClass(material, outcome) {
  return outcome === BL && material !== POLYMER ? X : outcome;
}

function halogen(material, state, x, s) {
  if (material === METAL) return NOT_APPLICABLE;
  if (state === MISSING) return NOT_MEASURED;
  if (state === NOT_DETECTED) return DETECTION_TOO_HIGH;
  if (state === BELOW) return inClass(material, 2 * x <= HALOGEN_LIMIT ? BL : DETECTION_TOO_HIGH);
  if (s === 0) return NO_UNCERTAINTY;
  if (x - 3 * s > HALOGEN_LIMIT) return OL;
  return inClass(material, x + 3 * s <= HALOGEN_LIMIT ? BL : X);
}

function total(material, state_a, a, s_a, state_b, b, s_b) {
  if (material === METAL) return NOT_APPLICABLE;
  const alone = (state_a === NUMBER && s_a !== 0 && a - 3 * s_a > TOTAL_LIMIT) || (state_b === NUMBER && s_b !== 0 && b - 3 * s_b > TOTAL_LIMIT);
  if (alone) return OL;
  if (state_a === MISSING || state_b === MISSING) return NOT_MEASURED;
  if ((state_a === NUMBER && s_a === 0) || (state_b === NUMBER && s_b === 0)) return NO_UNCERTAINTY;
  if (state_a === NOT_DETECTED || state_b === NOT_DETECTED) return DETECTION_TOO_HIGH;
  // From (censored = 0, its s left out) to (censored = D, D/3 as its s); squares of 3 s.
  let low = 0;
  let low_square = 0;
  if (state_a === NUMBER) {
    low += a;
    low_square += 9 * s_a * s_a;
  }
  if (state_b === NUMBER) {
    low += b;
    low_square += 9 * s_b * s_b;
  }
  const high = a + b;
  const high_square = (state_a === NUMBER ? 9 * s_a * s_a : a * a) + (state_b === NUMBER ? 9 * s_b * s_b : b * b);
  const over = low - TOTAL_LIMIT;
  if (over > 0 && over * over > low_square) return OL;
  const room = TOTAL_LIMIT - high;
  return inClass(material, room >= 0 && room * room >= high_square ? BL : X);
}

/** Columns that grow by doubling. */
class Columns {
  constructor(elements, capacity) {
    this.capacity = capacity;
    this.value = elements.map(() => new Float64Array(capacity));
    this.sigma = elements.map(() => new Float64Array(capacity));
    this.state = elements.map(() => new Uint8Array(capacity));
    this.outcome = Array.from({ length: 8 }, () => new Uint8Array(capacity));
    this.material = new Uint8Array(capacity);
  }

  grow() {
    this.capacity *= 2;
    const grown = (old) => {
      const larger = new old.constructor(this.capacity);
      larger.set(old);
      return larger;
    };
    for (const of of ["value", "sigma", "state", "outcome"]) this[of] = this[of].map(grown);
    this.material = grown(this.material);
  }
}

class Pipeline {
  constructor(headings, capacity) {
    this.width = headings.length;
    this.class_column = headings.indexOf("Class");
    this.elements = headings.flatMap((heading, at) => {
      const name = /^(\w+) mg\/kg$/.exec(heading)?.[1];
      return name === undefined ? [] : [{ name, value: at, error: headings.indexOf(`${name} u (1s)`) }];
    });
    this.judged = JUDGED.map((name) => this.elements.findIndex((element) => element.name === name));
    this.columns = new Columns(this.elements, capacity);
    this.counts = new Float64Array(8 * OUTCOMES.length);
    this.rows = 0;
  }

  take(rows, from) {
    const { elements, width, class_column } = this;
    const [cd, pb, hg, cr, br, cl] = this.judged;
    for (let i = from; i < rows.length; i += 1) {
      const cells = rows[i];
      if (cells.length !== width) {
        if (cells.length === 1 && cells[0] === "") continue;
        throw new Error(`a row of ${cells.length} cells`);
      }
      const row = this.rows;
      if (row === this.columns.capacity) this.columns.grow();
      const { value, sigma, state, outcome } = this.columns;
      const material = CLASSES.get(cells[class_column]);
      if (material === undefined) throw new Error(`no class: ${cells[class_column]}`);
      this.columns.material[row] = material;
      for (let e = 0; e < elements.length; e += 1) {
        const text = cells[elements[e].value];
        const error = Math.round(+cells[elements[e].error] * 100);
        if (text.charCodeAt(0) === 60) {
          state[e][row] = error > 0 ? BELOW : NOT_DETECTED;
          value[e][row] = error;
        } else {
          const x = Math.round(+text * 100);
          state[e][row] = text === "" || x !== x ? MISSING : NUMBER;
          value[e][row] = x;
          sigma[e][row] = error;
        }
      }
      const screen = (substance, e) => {
        const judged = screened(substance, material, state[e][row], value[e][row], sigma[e][row]);
        outcome[substance][row] = judged;
        this.counts[substance * 8 + judged] += 1;
      };
      screen(0, cd);
      screen(1, pb);
      screen(2, hg);
      screen(3, cr);
      screen(4, br);
      const chlorine = halogen(material, state[cl][row], value[cl][row], sigma[cl][row]);
      const bromine = halogen(material, state[br][row], value[br][row], sigma[br][row]);
      const sum = total(material, state[cl][row], value[cl][row], sigma[cl][row], state[br][row], value[br][row], sigma[br][row]);
      outcome[5][row] = chlorine;
      outcome[6][row] = bromine;
      outcome[7][row] = sum;
      this.counts[40 + chlorine] += 1;
      this.counts[48 + bromine] += 1;
      this.counts[56 + sum] += 1;
      this.rows += 1;
    }
  }

  counted() {
    const of = (at) => Object.fromEntries(OUTCOMES.map((name, outcome) => [name, this.counts[at * 8 + outcome]]).filter(([, count]) => count > 0));
    return {
      substances: Object.fromEntries(SCREENED.map(({ name }, at) => [name, of(at)])),
      halogens: { Cl: of(5), Br: of(6), total: of(7) },
    };
  }
}

async function digest(file) {
  const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", await file.arrayBuffer()));
  return Array.from(sum, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

function parse(file) {
  return new Promise((settle, fail) => {
    let pipeline = null;
    Papa.parse(file, {
      // Nothing to guess, no quotes to look for, rows as arrays, a slice at a time.
      delimiter: ",",
      newline: "\n",
      header: false,
      dynamicTyping: false,
      fastMode: true,
      chunk: ({ data }) => {
        if (pipeline === null) {
          pipeline = new Pipeline(data[0], 1 << 18);
          pipeline.take(data, 1);
        } else {
          pipeline.take(data, 0);
        }
      },
      complete: () => settle(pipeline),
      error: fail,
    });
  });
}

onmessage = async ({ data: file }) => {
  try {
    // Hashing runs on another thread of the browser while this one parses, as a page that cares about time would do.
    const hashing = digest(file).then((sha256) => {
      postMessage({ kind: "digested" });
      return sha256;
    });
    const pipeline = await parse(file);
    postMessage({ kind: "parsed" });
    postMessage({ kind: "done", sha256: await hashing, rows: pipeline.rows, counts: pipeline.counted() });
  } catch (error) {
    postMessage({ kind: "failed", text: String(error) });
  }
};
