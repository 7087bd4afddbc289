// The photographs of one reading: which shows it, where on it was measured, and which may.

import type { DetailView, PhotoJoin, PhotoView } from "../shared/door";
import { joinedFields, readingTarget } from "./act-kinds";
import { controlId, record, refusalLine } from "./acts-given";
import { byId, el, type Child } from "./elements";
import { undoAll } from "./inspection";
import { addressOf, framed, spotPad } from "./photo-spot";
import { state } from "./state";
import { say } from "./words";

export function photosOf(detail: DetailView): Child {
  const view = state.photos;
  const target = readingTarget(detail.row.source, detail.row.line);
  if (view === null) return null;
  const missing = view.missing.filter((one) => one.target === target);
  if (view.photos.length === 0 && missing.length === 0) return null;
  const shows = view.photos.flatMap((photo) => photo.joined.filter((join) => join.target === target).map((join) => ({ photo, join })));
  const others = view.photos.filter((photo) => shows.every((one) => one.photo !== photo));
  const offered = others.filter((photo) => photo.offered.some((offer) => offer.index === detail.row.index));
  return el(
    "section",
    { class: "photos", "aria-labelledby": "photos-heading" },
    el("h3", { id: "photos-heading", tabindex: -1 }, say("page-photos-heading")),
    shows.length === 0 ? el("p", { class: "quiet" }, say("page-photos-none-here")) : null,
    ...shows.map(({ photo, join }) => shown(photo, join)),
    ...missing.map((one) => el("p", { class: "problem" }, one.text, " ", one.remedy, " ", leave(one.target, one.file, one.file))),
    ...offered.map((photo) => offer(photo, target)),
    choose(others, target),
  );
}

/** Everything that was said of this file and target, so that taking it back leaves nothing of it. */
function actsOf(target: string, file: string): number[] {
  const prefix = joinedFields({ file });
  const acts = state.summary?.acts ?? [];
  return acts.filter((act) => act.kind === "photo" && act.target === target && !act.undone && (act.value === prefix || act.value.startsWith(`${prefix};`))).map((act) => act.number);
}

async function toHeading(): Promise<void> {
  // The detail is drawn anew with the answer in force; its heading outlives that.
  byId("detail-heading").focus({ preventScroll: true });
}

function leave(target: string, file: string, name: string): HTMLElement {
  const off = async (): Promise<void> => {
    await undoAll(actsOf(target, file));
    await toHeading();
  };
  return el("button", { type: "button", class: "tool", on: { click: () => void off() } }, say("page-photo-leave"), el("span", { class: "heard" }, ` ${name}`));
}

function shown(photo: PhotoView, join: PhotoJoin): HTMLElement {
  const id = controlId("photo", join.target, photo.sha256);
  const refusal = refusalLine(id);
  const said = (spot: Record<string, string>): Promise<boolean> => record({ kind: "photo", target: join.target, value: joinedFields({ file: join.file, sha256: photo.sha256, ...spot }) }, refusal);
  const without = async (): Promise<void> => {
    if (await said({})) await toHeading();
  };
  return el(
    "div",
    { class: "photo" },
    spotPad(photo, join, id, (at) => void said({ x: String(at.x), y: String(at.y) })),
    refusal,
    el("p", { class: "quiet" }, photo.name),
    el(
      "div",
      { class: "choices" },
      join.x === null ? null : el("button", { type: "button", class: "tool", on: { click: () => void without() } }, say("page-photo-no-mark"), el("span", { class: "heard" }, ` ${photo.name}`)),
      leave(join.target, join.file, photo.name),
    ),
  );
}

function offer(photo: PhotoView, target: string): HTMLElement {
  const refusal = refusalLine(controlId("photo-offer", target, photo.sha256));
  const take = async (): Promise<void> => {
    if (await record({ kind: "photo", target, value: joinedFields({ file: photo.name, sha256: photo.sha256 }) }, refusal)) await toHeading();
  };
  return el(
    "div",
    { class: "photo photo-offer" },
    framed(photo, el("div", { class: "shot-frame" }, el("img", { src: addressOf(photo), alt: say("page-photo-alt", { file: photo.name }) }))),
    el("p", {}, say(`page-photo-offered-${photo.offered_from}`, { file: photo.name })),
    photo.ambiguous ? el("p", { class: "doubt" }, say("page-photo-ambiguous", { n: photo.offered.length + photo.offered_more })) : null,
    el("button", { type: "button", class: "second", on: { click: () => void take() } }, say("page-photo-take"), el("span", { class: "heard" }, ` ${photo.name}`)),
    refusal,
  );
}

/** Any photograph at all, since a name may say nothing. */
function choose(photos: PhotoView[], target: string): Child {
  if (photos.length === 0) return null;
  const id = controlId("photo-choice", target);
  const refusal = refusalLine(id);
  const list = el("select", { id }, el("option", { value: "" }, say("page-photo-choose-none")), ...photos.map((photo, at) => el("option", { value: String(at) }, photo.name)));
  const take = async (): Promise<void> => {
    const photo = list.value === "" ? undefined : photos[Number(list.value)];
    if (photo === undefined) return;
    if (await record({ kind: "photo", target, value: joinedFields({ file: photo.name, sha256: photo.sha256 }) }, refusal)) await toHeading();
  };
  return el(
    "form",
    {
      class: "control",
      on: {
        submit: (event) => {
          event.preventDefault();
          void take();
        },
      },
    },
    el("label", { for: id }, say("page-photo-choose")),
    el("div", { class: "entry" }, list, el("button", { type: "submit", class: "tool" }, say("page-act-give"), el("span", { class: "heard" }, ` ${say("page-photo-choose")}`))),
    refusal,
  );
}
