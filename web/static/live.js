// On paper everything is unfolded, also where a style sheet cannot do it.
addEventListener("beforeprint", () => document.querySelectorAll(".fold, .standing-alert details").forEach(one => { one.open = true; }));

// New events: fetches this page again and swaps the parts that differ, without a jump.
(() => {
  const main = document.getElementById("main");
  if (!main || main.querySelector("form[method=post]")) return;
  const types = ("birth cleanliness-scored navel-treated navel-checked colostrum-fed blood-tested tag-fitted " +
    "tissue-sampled sample-sent sample-result registered castrated disbudded illness-found recovered treated " +
    "vaccinated moved weighed weaned left died pen-bedded pen-cleaned noted farm-described retracted amended").split(" ");
  let waiting = 0;

  // It keeps its place on the screen.
  const firstSeen = () => [...main.children].find(part => part.getBoundingClientRect().bottom > 0);

  const stops = part => [...part.querySelectorAll("*")].filter(one => one.tabIndex >= 0);

  const swap = fresh => {
    const before = firstSeen();
    const place = [...main.children].indexOf(before);
    const top = before && before.getBoundingClientRect().top;
    const parts = [...fresh.children];
    parts.forEach((part, i) => {
      const old = main.children[i];
      if (!old) return void main.append(part);
      const open = [...old.querySelectorAll("details")].map(one => one.open);
      const plain = old.cloneNode(true);
      const was = [...part.querySelectorAll("details")];
      plain.querySelectorAll("details").forEach((one, k) => { if (was[k]) one.open = was[k].open; });
      const focus = old.contains(document.activeElement) ? document.activeElement : null;
      if (plain.outerHTML === part.outerHTML || (focus && focus.form)) return;
      was.forEach((one, k) => { if (open.length === was.length) one.open = open[k]; });
      const at = focus ? stops(old).indexOf(focus) : -1;
      old.replaceWith(part);
      stops(part)[at]?.focus({ preventScroll: true });
    });
    while (main.children.length > parts.length) main.lastElementChild.remove();
    const now = main.children[place];
    if (now) window.scrollBy(0, now.getBoundingClientRect().top - top);
  };

  const look = async () => {
    waiting = 0;
    const answer = await fetch(location.href, { cache: "reload" }).catch(() => null);
    if (!answer || !answer.ok) return;
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const fresh = page.getElementById("main");
    swap(fresh);
    main.dataset.sequence = fresh.dataset.sequence;
    document.querySelector("footer").replaceWith(page.querySelector("footer"));
  };

  // A browser has six connections for all its tabs: only the page that is seen keeps one.
  let feed;
  const listen = () => {
    feed?.close();
    if (document.hidden) return;
    feed = new EventSource("/api/v1/events/live?after=" + main.dataset.sequence);
    types.forEach(type => feed.addEventListener(type, () => { waiting = waiting || setTimeout(look, 700); }));
  };
  addEventListener("pagehide", () => feed?.close());
  addEventListener("pageshow", listen);
  document.addEventListener("visibilitychange", listen);
})();
