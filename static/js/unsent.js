// An answer that does not reach the site is kept, told, and sent once the site can be reached.
//
// It is kept in this browser under the person and the question, so that nobody else at the same
// computer sees or sends it. Its address has the question's token: sent twice, it counts once. It
// is kept before it is sent, and goes when the site has acknowledged it or given it back with what
// is wrong. Whatever else the site says, the form stays as it stands.
(() => {
  "use strict";
  const { person } = document.currentScript.dataset;
  const WHO = "run-up person"; // whose page was opened last: pages of others send nothing then
  const OURS = `run-up unsent ${person} `;
  const AWAY = [502, 503, 504]; // said by the site without its database, by a proxy without the site
  const [SHORTEST, LONGEST] = [2, 60]; // seconds between two tries
  const SOON = "as soon as the site can be reached.";
  const inFlight = new WeakMap(); // by form
  const waiting = new Map(); // by address: what this page is to send

  // What is kept. Where the browser keeps nothing, the page does while it is open.

  const safely = (doing) => {
    try {
      return doing();
    } catch {
      return null;
    }
  };
  const find = (path) => safely(() => JSON.parse(localStorage.getItem(OURS + path)));
  const drop = (path) => safely(() => localStorage.removeItem(OURS + path));
  const keep = ({ path, fields, words, picture, refused }) => {
    if (picture && !words) return false; // a picture has no room there
    const text = JSON.stringify({ fields, words, picture, refused });
    return safely(() => localStorage.setItem(OURS + path, text) ?? true) ?? false;
  };
  const keptPaths = () => {
    const keys = safely(() => Object.keys(localStorage)) ?? [];
    return keys.filter((key) => key.startsWith(OURS)).map((key) => key.slice(OURS.length));
  };
  const come = (who) => safely(() => localStorage.setItem(WHO, who));
  const anotherCame = () => (safely(() => localStorage.getItem(WHO)) ?? person) !== person;

  const taken = (form) => {
    const data = new FormData(form);
    const areas = [...form.querySelectorAll("textarea")];
    data.delete("csrfmiddlewaretoken"); // may be too old when it is sent; the cookie's is not
    return {
      path: form.getAttribute("action"),
      data,
      fields: [...data].filter(([, value]) => typeof value === "string"),
      words: areas.map((area) => area.value.trim()).join("\n\n"),
      picture: [...data.values()].some((value) => value instanceof File && value.size > 0),
      refused: 0,
      tries: 0,
      near: true, // somebody was at this form a moment ago
    };
  };

  // The form of a question, where it stands on this page.

  const formOf = (path) => document.querySelector(`form[data-answer][action="${path}"]`);
  const fieldsOf = (form) => [...form.querySelectorAll(":is(input, select, textarea, button):not(.unsent *)")];
  const freeze = (form, still) => {
    for (const field of fieldsOf(form)) field.disabled = still;
  };
  const fill = (form, fields) => {
    const left = new Map(fields.map(([name]) => [name, []]));
    for (const [name, value] of fields) left.get(name).push(value);
    for (const field of fieldsOf(form)) {
      const given = left.get(field.name) ?? [];
      if (["radio", "checkbox"].includes(field.type)) field.checked = given.includes(field.value);
      else if (given.length) field.value = given.shift();
      field.dispatchEvent(new Event("input", { bubbles: true }));
    }
  };

  // What is told, and where: in the form, or at the head of another page.

  const made = (name, properties, ...within) => {
    const element = Object.assign(document.createElement(name), properties);
    element.append(...within);
    return element;
  };
  const button = (textContent, onclick) =>
    made("button", { type: "button", className: "linklike", textContent, onclick });
  const link = (textContent, href) => made("a", { textContent, href });
  const hush = (path) => {
    const told = [...document.querySelectorAll(".unsent > .notice")];
    for (const notice of told.filter((each) => each.dataset.of === path)) notice.remove();
  };
  const tell = (path, sentence, ...ways) => {
    hush(path);
    const row = made("div", { className: "row" }, ...ways);
    const notice = made("div", { className: "notice" }, made("p", { textContent: sentence }), row);
    notice.dataset.of = path;
    const region = formOf(path)?.querySelector(".unsent") ?? document.getElementById("unsent");
    region?.append(notice);
    return row;
  };

  const tellWaiting = (kept) => {
    const { path, stored, picture } = kept;
    const tryNow = button("Try now", () => send(kept));
    if (!formOf(path)) {
      const sentence = `An answer of yours is kept here. It’s sent ${SOON}`;
      tell(path, sentence, tryNow, link("To its question", path));
    } else if (stored && !picture) {
      tell(path, `Your answer is kept here. It’s sent ${SOON}`, tryNow, changing(path));
    } else {
      const sentence = `Your answer is kept on this page. Leave it open: it’s sent ${SOON}`;
      tell(path, sentence, tryNow, changing(path));
    }
  };
  const changing = (path) =>
    button("Change it", () => {
      forget(path);
      fieldsOf(formOf(path)).find((field) => field.type !== "hidden")?.focus();
    });
  const tellWithoutPicture = ({ path }) => {
    const sentence = "Words of yours are kept here, without the picture. Choose it again, and send both.";
    tell(path, sentence, ...(formOf(path) ? [] : [link("To the question", path)]), deleting(path));
  };
  const deleting = (path) => button("Delete what is kept", () => forget(path));
  const REFUSED = {
    409: "The question has been replaced. Your answer was not recorded, and it does not count against you.",
    413: "The site did not take your answer: it is too large. Make it smaller, and send it again.",
    422: "An answer that was kept can’t be taken as it stands. Put it right, and send it again.",
  };
  const tellRefused = ({ path, words, refused }) => {
    const here = `The site did not take your answer (${refused}). Send it again later, or copy what you need of it.`;
    const other = `The site did not take an answer that was kept (${refused}). Copy what you need of it.`;
    const row = tell(path, REFUSED[refused] ?? (formOf(path) ? here : other));
    if (formOf(path)) {
      if (refused === 409) row.append(link("To the next question", path));
      if (find(path)) row.append(deleting(path));
      return;
    }
    if (words) row.before(made("blockquote", { className: "kept-words", textContent: words }));
    row.append(link("To its question", path), deleting(path));
  };

  // Waiting and sending.

  const forget = (path) => {
    clearTimeout(waiting.get(path)?.timer);
    waiting.delete(path);
    drop(path);
    hush(path);
    if (formOf(path)) freeze(formOf(path), false);
  };
  const wait = (kept) => {
    waiting.set(kept.path, kept);
    const form = formOf(kept.path);
    if (form) freeze(form, true);
    tellWaiting(kept);
    if (form && kept.near) form.querySelector(".unsent button").focus();
    kept.near = false;
  };
  const later = (kept, asked) => {
    const pause = Math.max(asked, Math.min(LONGEST, SHORTEST * 2 ** kept.tries));
    kept.tries += 1;
    kept.renewed = false;
    const apart = 1 + Math.random() / 4; // a whole class does not come back at once
    kept.timer = setTimeout(send, pause * apart * 1000, kept);
  };
  const send = async (kept) => {
    const { path } = kept;
    if (kept.sending || waiting.get(path) !== kept) return;
    clearTimeout(kept.timer);
    if (anotherCame()) later(kept, LONGEST);
    else if (kept.stored && !find(path)) forget(path); // sent, or taken back, in another window
    else {
      kept.sending = true;
      const came = await post(kept).catch(() => null);
      kept.sending = false;
      if (waiting.get(path) === kept) settle(kept, came);
    }
  };
  const post = async ({ path, data, fields, picture }) => {
    const token = document.cookie.match(/(?:^|; )csrftoken=([^;]+)/)?.[1] ?? "";
    const headers = { "HX-Request": "true", "X-CSRFToken": token };
    const body = picture ? data : new URLSearchParams(fields);
    const answer = await fetch(path, { method: "POST", headers, body });
    return { answer, status: answer.status, text: await answer.text() };
  };
  // What answers in the site's stead, as the sign-in page of a network does, has taken nothing.
  const isAway = (status, text, path) =>
    !status || AWAY.includes(status) || (status < 400 && !text.includes(`data-answered="${path}"`));
  const isPutOff = (status, text, path) => status === 429 || isAway(status, text, path);

  const settle = (kept, came) => {
    const { path } = kept;
    const { answer, status = 0, text = "" } = came ?? {};
    const signIn = answer?.headers.get("HX-Redirect");
    if (signIn) tellSignIn(path, signIn);
    else if (status === 403 && !kept.renewed) renew(kept);
    else if (isPutOff(status, text, path)) {
      later(kept, Number(answer?.headers.get("Retry-After") ?? 0));
    } else {
      const practice = formOf(path)?.closest(".practice");
      const near = practice?.contains(document.activeElement);
      forget(path);
      if (status < 400) show(path, text, practice, near);
      else if (status === 422 && practice) put(practice, text, near);
      else refuse({ ...kept, refused: status });
      for (const other of waiting.values()) send(other); // the site is back
    }
  };
  const put = (practice, text, near) => {
    const fragment = near ? text : text.replaceAll(" autofocus", ""); // whoever reads on is left there
    const how = { swapStyle: "outerHTML", swapDelay: 0, settleDelay: 0 };
    htmx.swap(practice, fragment, near ? { ...how, show: "top" } : how);
  };
  const show = (path, text, practice, near) => {
    if (practice) put(practice, text, near);
    if (!near) tell(path, "An answer that was kept is sent.", link("See what came of it", path));
  };
  const refuse = (kept) => {
    keep(kept);
    tellRefused(kept);
  };

  // The form's token goes when somebody signs in. The same person gets the new one with a page.

  const renew = async (kept) => {
    const { path } = kept;
    kept.renewed = true; // refused once more, it was not for the token
    const page = await fetch(path).catch(() => null);
    const opened = new DOMParser().parseFromString((await page?.text().catch(() => "")) ?? "", "text/html");
    const who = opened.querySelector("script[data-person]")?.dataset.person;
    if (waiting.get(path) !== kept) return;
    if (who === person) {
      come(person);
      send(kept);
    } else if (who) {
      const sentence = "Somebody else has signed in here. Your answer is kept, and sent when you sign in again.";
      tell(path, sentence, ...(formOf(path) ? [changing(path)] : []));
      later(kept, LONGEST);
    } else if (page?.ok && page.redirected) tellSignIn(path, page.url);
    else later(kept, 0);
  };
  const tellSignIn = (path, address) =>
    tell(path, "Your answer is kept here. Sign in again, and it’s sent.", link("Sign in", address));

  // What happens on the page.

  const takeUp = (path) => {
    const form = formOf(path);
    const kept = waiting.get(path) ?? { ...find(path), path, stored: true, tries: 0 };
    if (form) fill(form, kept.fields);
    if (kept.refused) tellRefused(kept);
    else if (kept.picture && !kept.data) tellWithoutPicture(kept);
    else {
      wait(kept);
      send(kept);
    }
  };
  const answered = ({ detail }) => {
    const form = detail.requestConfig.elt;
    return form.matches("form[data-answer]") ? form : null;
  };
  const isSentOn = (xhr) => Boolean(xhr.getResponseHeader("HX-Redirect")); // to sign in again
  const isGivenBack = (xhr) =>
    xhr.status === 422 || (xhr.getResponseHeader("HX-Reswap") && !xhr.getResponseHeader("HX-Retarget"));
  const isLeft = (xhr, path) => {
    const { status, responseText } = xhr;
    return !isSentOn(xhr) && !isGivenBack(xhr) && (status >= 400 || isAway(status, responseText, path));
  };

  document.addEventListener("htmx:beforeRequest", (event) => {
    const form = answered(event);
    if (!form) return;
    const kept = taken(form);
    hush(kept.path);
    kept.stored = keep(kept);
    inFlight.set(form, kept);
  });
  document.addEventListener("htmx:beforeOnLoad", (event) => {
    const kept = inFlight.get(event.detail.requestConfig.elt);
    if (kept && isLeft(event.detail.xhr, kept.path)) event.preventDefault(); // the form stays
  });
  document.addEventListener("htmx:afterRequest", (event) => {
    const { elt } = event.detail.requestConfig;
    const { xhr } = event.detail;
    const kept = inFlight.get(elt);
    inFlight.delete(elt);
    if (!kept || isSentOn(xhr)) return;
    if (!isLeft(xhr, kept.path)) drop(kept.path);
    else if (xhr.status === 403 || isPutOff(xhr.status, xhr.responseText, kept.path)) {
      wait(kept);
      if (xhr.status === 403) renew(kept);
      else later(kept, Number(xhr.getResponseHeader("Retry-After") ?? 0));
    } else refuse({ ...kept, refused: xhr.status });
  });
  document.addEventListener("htmx:load", ({ target }) => {
    if (target === document.body) keptPaths().forEach(takeUp);
    else {
      const forms = [...target.querySelectorAll("form[data-answer]")];
      const here = new Set([...keptPaths(), ...waiting.keys()]);
      forms.map((form) => form.getAttribute("action")).filter((path) => here.has(path)).forEach(takeUp);
    }
  });
  addEventListener("online", () => {
    for (const kept of waiting.values()) send(kept);
  });

  let warned = false;
  document.addEventListener("submit", (event) => {
    if (!event.target.matches("form[data-signs-out]")) return;
    const unsent = new Set([...keptPaths(), ...waiting.keys()]);
    if (unsent.size && !warned) {
      event.preventDefault();
      warned = true;
      tell("sign-out", "An answer of yours is not sent yet. Signing out deletes it: sign out again if it may go.");
    } else {
      unsent.forEach(forget);
      come("");
    }
  });

  come(person);
})();
