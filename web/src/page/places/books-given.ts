// Which rule books an inspection goes by, beside the bands and halogen limits that are always computed.

import type { BookOffer, OffersView } from "../../shared/door";
import { controlId, record, refusalLine } from "../acts-given";
import { escaped, listedNames } from "../act-kinds";
import { givenBy, standing } from "../acts-in-force";
import { ofBook } from "../book-words";
import { el, focusIn, type Child } from "../elements";
import { stillHere } from "../hand";
import { undoAll } from "../inspection";
import { limitAnswer } from "../rows";
import { rowForm, rowsGiven } from "../row-form";
import { change, state } from "../state";
import { inRow, say } from "../words";
import { lazyFold } from "./lazy-fold";

const REFUSAL = "books-given";

/** The names as they were given: an id, or an id with digits of a digest. */
function namedNow(): string[] {
  return listedNames(standing("books", "")?.value ?? "");
}

function idOf(name: string): string {
  return name.split("@")[0] ?? name;
}

async function nameBooks(names: string[], refusal: HTMLElement): Promise<void> {
  if (names.join("\n") === namedNow().join("\n")) return;
  if (names.length > 0) {
    await record({ kind: "books", value: names.map(escaped).join("|") }, refusal);
    return;
  }
  const acts = (state.summary?.acts ?? []).filter((act) => act.kind === "books" && !act.undone);
  if ((await undoAll(acts.map((act) => act.number))).length > 0) change({ event: say("page-event-books-none") });
}

export function booksGiven(offers: OffersView): Child {
  const refusal = refusalLine(REFUSAL);
  const act = standing("books", "");
  const boxes = new Map<BookOffer, HTMLInputElement>();
  for (const book of offers.books) {
    const box = el("input", { type: "checkbox", id: controlId("book-named", book.id), checked: book.named || book.loaded });
    box.disabled = book.loaded;
    box.addEventListener("change", () => {
      box.dataset["dirty"] = "yes";
    });
    boxes.set(book, box);
  }
  const send = (): void => {
    const kept = namedNow().filter((name) => [...boxes].some(([book, box]) => book.id === idOf(name) && box.checked));
    const added = [...boxes].filter(([book, box]) => box.checked && !book.named && !book.loaded).map(([book]) => book.id);
    for (const box of boxes.values()) delete box.dataset["dirty"];
    void nameBooks([...kept, ...added], refusal);
  };
  const named = offers.books.filter((book) => book.named || book.loaded).length;
  return [
    ...offers.books.filter((book) => book.problem !== "").map((book) => problem(book, refusal)),
    el(
      "details",
      { id: "books-to-name", class: "fold fold-inner", open: named > 0 },
      el("summary", {}, say("page-books-named", { n: named, of: offers.books.length })),
      el(
        "form",
        {
          id: "books-given",
          class: "act-form",
          on: {
            submit: (event) => {
              event.preventDefault();
              send();
            },
          },
        },
        ...[...boxes].map(([book, box]) => row(book, box)),
        el("div", { class: "form-send" }, el("button", { type: "submit", id: "books-send", class: "second" }, say("page-books-send"))),
      ),
    ),
    refusal,
    ...offers.books.filter((book) => (book.named || book.loaded) && book.questions.length > 0).map(questions),
    act === null ? null : el("p", { class: "given" }, el("span", {}, say("page-act-in-force", { value: inRow(namedNow()) }), " ", givenBy(act))),
  ];
}

/** Some limits hold only for certain goods: what they ask, once for everything. A settings file can answer part by part. */
function questions(book: BookOffer): HTMLElement {
  return el(
    "div",
    { class: "per-lot" },
    el("h3", {}, ofBook(book.title)),
    ...book.questions.map((one) =>
      el(
        "div",
        {},
        el("p", {}, ofBook(one.text)),
        rowsGiven(limitAnswer(book.id, one.row), "", "books-to-name"),
        rowForm(limitAnswer(book.id, one.row), { target: "", about: inRow([book.title, one.row]) }),
      ),
    ),
  );
}

function row(book: BookOffer, box: HTMLInputElement): HTMLElement {
  const [, ...rest] = book.about;
  const aboutId = `${box.id}-about`;
  box.setAttribute("aria-describedby", aboutId);
  return el(
    "div",
    { class: "book-row" },
    el("label", { class: "field-check", for: box.id }, box, ofBook(book.title)),
    el(
      "div",
      { id: aboutId, class: "book-about" },
      book.about.length === 0 ? el("p", { class: "quiet" }, say("page-book-not-here")) : el("p", { class: "quiet" }, book.about[0] ?? ""),
      rest.length === 0 ? null : el("p", { class: "quiet" }, rest[0] ?? "", " ", book.from_memory ? el("span", { class: "flag" }, say("page-exemption-from-memory")) : null),
      book.loaded ? el("p", { class: "quiet" }, say("page-book-loaded")) : null,
    ),
    book.note === "" ? null : lazyFold(`${box.id}-note`, "fold fold-inner", false, [el("span", { class: "quiet" }, say("page-book-note"), el("span", { class: "heard" }, ` ${book.title}`))], () => [el("p", { class: "hint" }, ofBook(book.note))]),
  );
}

/** A book that is named and can't be gone by: one press settles it. */
function problem(book: BookOffer, refusal: HTMLElement): HTMLElement {
  const without = (): string[] => namedNow().filter((name) => idOf(name) !== book.id);
  const as = (names: string[]): void => {
    const here = stillHere();
    void nameBooks(names, refusal).then(() => here() && focusIn("books-to-name"));
  };
  return el(
    "div",
    { class: "per-lot", "data-missing": "yes" },
    el("p", {}, el("strong", {}, ofBook(book.title)), " ", say(book.problem === "differs" ? "page-book-differs" : "page-book-missing")),
    el(
      "div",
      { class: "form-send" },
      book.problem === "differs"
        ? el("button", { type: "button", id: controlId("book-take", book.id), class: "second", on: { click: () => as([...without(), book.id]) } }, say("page-book-take-this"), el("span", { class: "heard" }, ` ${book.title}`))
        : null,
      el("button", { type: "button", id: controlId("book-strike", book.id), class: "tool", on: { click: () => as(without()) } }, say("page-book-strike"), el("span", { class: "heard" }, ` ${book.title}`)),
    ),
  );
}
