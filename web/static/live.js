// On paper everything is unfolded, also where a style sheet cannot do it.
addEventListener("beforeprint", () => document.querySelectorAll(".fold, .standing-alert details").forEach(one => { one.open = true; }));

// New events: fetches this page again and swaps the parts that differ, without a jump.
(() => {
  const main = document.getElementById("main");
  // A page of one form is left alone; in a list, each item with a form of its own is (see merge).
  if (!main || main.querySelector("form[method=post]:not([data-keep] form)")) return;
  const types = ("birth cleanliness-scored navel-treated navel-checked colostrum-fed blood-tested tag-fitted " +
    "tissue-sampled sample-sent sample-result registered castrated disbudded illness-found recovered treated " +
    "vaccinated moved weighed weaned left died pen-bedded pen-cleaned noted farm-described retracted amended").split(" ");
  let waiting = 0;
  let told = 0;

  const stops = part => [...part.querySelectorAll("*")].filter(one => one.tabIndex >= 0);

  // Puts a new part in the place of an old one; folds stay open and the keyboard stays where it was.
  const renew = (old, part) => {
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
  };

  const swap = fresh => {
    const parts = [...fresh.children];
    parts.forEach((part, i) => {
      const old = main.children[i];
      if (!old) return void main.append(part);
      renew(old, part);
    });
    while (main.children.length > parts.length) main.lastElementChild.remove();
  };

  // Somebody has a form of it open, or has typed into it.
  const busy = part => part.querySelector("details[open] form") || part.contains(document.activeElement) && document.activeElement.form
    || [...part.querySelectorAll("input:not([type=hidden]), select")].some(one => one.type === "checkbox"
      ? one.checked !== one.defaultChecked : one.options ? [...one.options].some(o => o.selected !== o.defaultSelected && (o.defaultSelected || o.index))
      : one.value !== one.defaultValue);

  const items = part => part.matches("[data-keep]") || part.querySelector("[data-keep]");

  // Merges a list whose items have forms, item by item. What somebody is busy with stays, whatever came of it elsewhere.
  const merge = (old, fresh, ids) => {
    let next = old.firstElementChild;
    const mates = new Set();
    for (const part of [...fresh.children]) {
      const mate = part.id ? [...old.children].find(one => one.id === part.id) : next && !next.id && next.localName === part.localName ? next : null;
      if (!mate) {
        const elsewhere = part.matches("[data-keep]") && document.getElementById(part.id);
        if (elsewhere && busy(elsewhere)) continue;
        elsewhere?.remove();
        if (items(part) && !part.matches("[data-keep]")) {
          const shell = part.cloneNode(false);
          old.insertBefore(shell, next);
          mates.add(shell);
          merge(shell, part, ids);
          continue;
        }
        old.insertBefore(part, next);
        mates.add(part);
        continue;
      }
      if (mate !== next && !mate.contains(document.activeElement)) old.insertBefore(mate, next);
      else while (next !== mate) { const late = next; next = next.nextElementSibling; old.append(late); }
      next = mate.nextElementSibling;
      if (!mate.matches("[data-keep]") && (items(mate) || items(part))) {
        mates.add(mate);
        merge(mate, part, ids);
      } else {
        if (!busy(mate)) renew(mate, part);
        mates.add(mate.isConnected ? mate : part);
      }
    }
    for (const rest of [...old.children].filter(one => !mates.has(one))) {
      if (!items(rest) || !busy(rest)) rest.remove();
      else if (!rest.matches("[data-keep]")) merge(rest, rest.cloneNode(false), ids);
      else if (!ids.has(rest.id) && !rest.querySelector(".elsewhere")) {
        const note = document.createElement("p");
        note.className = "elsewhere";
        note.setAttribute("role", "status");
        note.textContent = "This was recorded meanwhile, or is due no more. What you typed is kept: look before you send it.";
        rest.querySelector(".todo").append(note);
      }
    }
  };

  // Whatever is seen first keeps its place on the screen.
  const inPlace = change => {
    const keyed = [...main.querySelectorAll("[data-keep]")];
    const seen = (keyed.length ? keyed : [...main.children]).filter(part => part.getBoundingClientRect().bottom > 0)
      .map(part => ({ part, id: part.id, place: [...main.children].indexOf(part), top: part.getBoundingClientRect().top }));
    if (!keyed.length) seen.splice(1);
    change();
    for (const one of seen) {
      const now = one.part.isConnected ? one.part : keyed.length ? document.getElementById(one.id) : main.children[one.place];
      if (now) return window.scrollBy(0, now.getBoundingClientRect().top - one.top);
    }
  };

  // Asks for a page that knows of one event at least; it may lack those that came meanwhile, and is then asked for again.
  const look = async wanted => {
    waiting = 0;
    const answer = await fetch(location.href, { headers: { "Wisp-At-Least": wanted } }).catch(() => null);
    if (!answer || !answer.ok) return;
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const fresh = page.getElementById("main");
    const ids = new Set([...fresh.querySelectorAll("[data-keep]")].map(one => one.id));
    inPlace(() => items(main) || items(fresh) ? merge(main, fresh, ids) : swap(fresh));
    main.dataset.sequence = fresh.dataset.sequence;
    document.querySelector("footer").replaceWith(page.querySelector("footer"));
    if (told > wanted) later();
  };

  const later = () => { waiting = waiting || setTimeout(look, 700, told); };

  // A browser has six connections for all its tabs: only the page that is seen keeps one.
  let feed;
  const listen = () => {
    feed?.close();
    if (document.hidden) return;
    feed = new EventSource("/api/v1/events/live?after=" + main.dataset.sequence);
    types.forEach(type => feed.addEventListener(type, event => {
      told = Number(event.lastEventId);
      later();
    }));
  };
  // What is due changes with the clock alone, too.
  if (document.querySelector("[data-clock]")) setInterval(() => { if (!document.hidden) look(told); }, 300000);
  addEventListener("pagehide", () => feed?.close());
  addEventListener("pageshow", listen);
  document.addEventListener("visibilitychange", listen);
})();
