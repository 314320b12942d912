// Shows new events as they are recorded: fetches this page again and swaps the parts that differ, without a jump.
(() => {
  const main = document.getElementById("main");
  if (!main || !window.EventSource || main.querySelector("form[method=post]")) return;
  const types = ("birth cleanliness-scored navel-treated navel-checked colostrum-fed blood-tested tag-fitted " +
    "tissue-sampled sample-sent sample-result registered castrated disbudded illness-found recovered treated " +
    "vaccinated moved weighed weaned left died pen-bedded pen-cleaned noted farm-described retracted amended").split(" ");
  let waiting = 0;

  // The first part that is still in view keeps its place on the screen.
  const firstSeen = () => [...main.children].find(part => part.getBoundingClientRect().bottom > 0);

  const swap = fresh => {
    const before = firstSeen();
    const place = before ? [...main.children].indexOf(before) : -1;
    const top = before ? before.getBoundingClientRect().top : 0;
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
      const at = focus ? [...old.querySelectorAll("*")].filter(one => one.tabIndex >= 0).indexOf(focus) : -1;
      old.replaceWith(part);
      const again = [...part.querySelectorAll("*")].filter(one => one.tabIndex >= 0)[at];
      if (again) again.focus({ preventScroll: true });
    });
    while (main.children.length > parts.length) main.lastElementChild.remove();
    const now = place < 0 ? null : main.children[place];
    if (now) window.scrollBy(0, now.getBoundingClientRect().top - top);
  };

  const look = async () => {
    waiting = 0;
    const answer = await fetch(location.href, { headers: { Accept: "text/html" } }).catch(() => null);
    if (!answer || !answer.ok) return;
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const fresh = page.getElementById("main");
    if (!fresh) return;
    swap(fresh);
    main.dataset.sequence = fresh.dataset.sequence;
    const footer = document.querySelector("footer");
    const newer = page.querySelector("footer");
    if (footer && newer) footer.replaceWith(newer);
  };

  // A browser has six connections to a server, for all its tabs together: only the page that is seen keeps one.
  let feed;
  const stop = () => { if (feed) feed.close(); };
  const listen = () => {
    stop();
    if (document.hidden) return;
    feed = new EventSource("/api/v1/events/live?after=" + main.dataset.sequence);
    types.forEach(type => feed.addEventListener(type, () => { waiting = waiting || setTimeout(look, 700); }));
  };
  addEventListener("pagehide", stop);
  addEventListener("pageshow", listen);
  document.addEventListener("visibilitychange", listen);
})();
