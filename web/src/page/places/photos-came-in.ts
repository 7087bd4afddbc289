// The photographs that came in: what each shows, what it may show, and those that were named and are not here.

import type { PhotoView, PhotosView } from "../../shared/door";
import { joinedFields } from "../act-kinds";
import { el, focusIn, type Child } from "../elements";
import { stillHere } from "../hand";
import { doAct, removePhoto } from "../inspection";
import { addressOf, framed } from "../photo-spot";
import { state } from "../state";
import { between, say } from "../words";

/** One reading and no other may be meant. */
function clearOffers(view: PhotosView): { photo: PhotoView; target: string }[] {
  return view.photos.flatMap((photo) => (photo.ambiguous ? [] : photo.offered.map((offer) => ({ photo, target: offer.target }))));
}

export function photosCameIn(): Child {
  const view = state.photos;
  if (view === null || (view.photos.length === 0 && view.missing.length === 0)) return null;
  const clear = clearOffers(view);
  const takeAll = async (): Promise<void> => {
    const here = stillHere();
    for (const { photo, target } of clear) await doAct({ kind: "photo", target, value: joinedFields({ file: photo.name, sha256: photo.sha256 }) });
    if (here()) focusIn("photos-in-heading");
  };
  return el(
    "section",
    { id: "photos-in", "aria-labelledby": "photos-in-heading" },
    el("h2", { id: "photos-in-heading", tabindex: -1 }, say("page-photos-in", { n: view.photos.length })),
    el("p", { class: "quiet" }, say("page-photos-lead")),
    ...view.missing.map((one) => el("p", { class: "problem" }, say("page-photo-missing", { text: one.text, about: one.about }), between("gap"), one.remedy)),
    clear.length === 0 ? null : el("button", { type: "button", id: "photos-take-all", class: "second", on: { click: () => void takeAll() } }, say("page-photos-take-all", { n: clear.length })),
    el("ul", { class: "photo-list" }, ...view.photos.map(card)),
  );
}

function card(photo: PhotoView): HTMLElement {
  const more = photo.offered_more === 0 ? null : el("li", {}, say("page-photos-more", { n: photo.offered_more }));
  return el(
    "li",
    { class: "photo-card" },
    framed(photo, el("div", { class: "shot-frame" }, el("img", { src: addressOf(photo), alt: say("page-photo-alt", { file: photo.name }) }))),
    el("p", {}, el("strong", {}, photo.name)),
    photo.joined.length === 0 ? null : el("ul", {}, ...photo.joined.map((join) => el("li", {}, say("page-photo-shows", { about: join.about, marked: join.x === null ? "no" : "yes" })))),
    photo.joined.length > 0 || photo.offered.length > 0 ? null : el("p", { class: "quiet" }, say("page-photo-unmatched")),
    photo.offered.length === 0
      ? null
      : [el("p", photo.ambiguous ? { class: "doubt" } : {}, say(photo.ambiguous ? "page-photo-ambiguous" : `page-photo-offered-${photo.offered_from}`, { n: photo.offered.length + photo.offered_more, file: photo.name })), el("ul", {}, ...photo.offered.map((offer) => el("li", {}, offer.about)), more)],
    el("button", { type: "button", class: "tool", on: { click: () => void removePhoto(photo.name, photo.sha256) } }, say("page-source-remove"), el("span", { class: "heard" }, ` ${photo.name}`)),
  );
}
