// The rule books: those the readings are held against, those on the shelf, and each in plain words.

import type { ShelfBook } from "../../shared/door";
import { controlId } from "../acts-given";
import { ofBook } from "../book-words";
import { el, type Child } from "../elements";
import { fetchExplained, fetchShelf } from "../looking";
import { say } from "../words";
import { askedFor, lazyFold } from "./lazy-fold";

const DIGITS_SHOWN = 12;

export function booksFold(): HTMLElement {
  return lazyFold("rule-books", "fold", false, [say("page-shelf")], () => [askedFor(fetchShelf, shelf)]);
}

function shelf(books: ShelfBook[]): Child[] {
  const used = books.filter((book) => book.in_force);
  const idle = books.filter((book) => !book.in_force);
  const group = (id: string, heading: string, list: ShelfBook[]): Child =>
    list.length === 0 ? null : el("section", { class: "books", "aria-labelledby": id }, el("h3", { id }, heading), ...list.map(book));
  return [group("shelf-used", say("page-shelf-used", { n: used.length }), used), group("shelf-idle", say("page-shelf-idle", { n: idle.length }), idle)];
}

function book(of: ShelfBook): HTMLElement {
  return lazyFold(
    controlId("shelf", of.id),
    "fold",
    false,
    [el("span", { class: "book-title" }, ofBook(of.title), " ", el("span", { class: "quiet" }, say("page-shelf-edition", { edition: of.edition })))],
    () => [
      el(
        "dl",
        { class: "facts" },
        of.jurisdiction === "" ? null : [el("dt", {}, say("page-shelf-where")), el("dd", {}, ofBook(of.jurisdiction))],
        el("dt", {}, say("page-shelf-days")), el("dd", {}, of.days),
        el("dt", {}, say("page-book-confidence")), el("dd", {}, of.confidence),
        el("dt", {}, say("page-book-id")), el("dd", {}, el("code", {}, of.id)),
        el("dt", {}, say("page-source-digest")), el("dd", {}, el("code", { title: of.sha256 }, `${of.sha256.slice(0, DIGITS_SHOWN)}\u2026`)),
      ),
      askedFor(
        () => fetchExplained(of.id),
        (lines) => [el("ul", { class: "book-rows" }, ...lines.map((line) => el("li", {}, line)))],
      ),
    ],
  );
}
