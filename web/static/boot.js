// Starts the reckoner and keeps it for use without a network. A plain script, so that a page opened from a file works too.
(() => {
  "use strict";

  const page = document.documentElement;
  const program = document.currentScript.dataset.program;
  const fromFile = location.protocol === "file:";

  // What the system prefers, beside the look that may be chosen: before anything is seen, so that no page flashes.
  const dark = window.matchMedia("(prefers-color-scheme: dark)");
  const prefer = () => {
    page.dataset.system = dark.matches ? "dark" : "light";
  };
  dark.addEventListener("change", prefer);
  prefer();

  // The only two scripts that are ever loaded from here.
  const allowed = (name) => {
    if (name !== "sw.js" && name !== "from-file.js") throw new TypeError(name);
    return name;
  };
  const addresses = window.trustedTypes
    ? window.trustedTypes.createPolicy("reckoner", { createScriptURL: allowed })
    : { createScriptURL: allowed };

  // --- The program ---------------------------------------------------------------------------------------------------

  const bytesFromFile = () =>
    new Promise((done, failed) => {
      const script = document.createElement("script");
      script.src = addresses.createScriptURL("from-file.js");
      script.onload = () => done(Uint8Array.from(atob(window.reckonerProgram), (c) => c.charCodeAt(0)));
      script.onerror = () => failed(new Error("from-file.js is missing"));
      document.head.append(script);
    });

  const bytes = fromFile ? bytesFromFile() : fetch(program, { credentials: "same-origin" });

  const start = async () => {
    try {
      await wasm_bindgen({ module_or_path: await bytes });
    } catch (error) {
      console.error(error);
      const place = document.getElementById("app");
      const said = document.createElement("p");
      said.setAttribute("role", "alert");
      said.textContent =
        "The reckoner did not start. Your build books are untouched. Open this page again; if it still does not start, " +
        "the browser may be too old to run it.";
      place.replaceChildren(said);
    }
  };

  // --- Tables that do not fit ------------------------------------------------------------------------------------------

  // A table wider than its place is read row by row: each figure gets the name of its column, and the style stacks them.
  const fitted = new WeakMap();
  const fit = (hold) => {
    const table = hold.querySelector(".table:not(.compared)");
    const now = hold.clientWidth + (table?.textContent ?? "");
    if (!table || !hold.clientWidth || fitted.get(hold) === now) return;
    fitted.set(hold, now);
    table.classList.remove("stacked");
    if (hold.scrollWidth <= hold.clientWidth) return;
    const heads = [...table.tHead.rows[0].cells].map((head) => head.textContent);
    for (const row of table.tBodies[0].rows) {
      [...row.cells].forEach((cell, at) => cell.tagName === "TD" && (cell.dataset.head = heads[at] ?? ""));
    }
    table.classList.add("stacked");
  };

  const fitTables = () => {
    let due = 0;
    const soon = () => {
      cancelAnimationFrame(due);
      due = requestAnimationFrame(() => document.querySelectorAll(".table-hold").forEach(fit));
    };
    new MutationObserver(soon).observe(document.body, { childList: true, subtree: true, characterData: true });
    addEventListener("resize", soon);
  };

  // --- Use without a network -----------------------------------------------------------------------------------------

  const tell = (state) => {
    page.dataset.offline = state;
    document.dispatchEvent(new Event("offlinestate"));
  };

  // "Ready" is said only when the worker has found every file in its store.
  const check = (worker) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = (answer) => {
      if (page.dataset.offline === "fetching" || page.dataset.offline === "unavailable") {
        tell(answer.data === true ? "ready" : "unavailable");
      }
    };
    worker.postMessage("complete?", [channel.port2]);
  };

  const follow = (registration, worker) => {
    const look = () => {
      if (worker.state === "installed" && registration.active) tell("waiting");
      else if (worker.state === "activated") check(worker);
      else if (worker.state === "redundant" && page.dataset.offline === "fetching") tell("unavailable");
    };
    worker.addEventListener("statechange", look);
    look();
  };

  const keep = async () => {
    const container = navigator.serviceWorker;
    let accepted = false;
    const controlled = Boolean(container.controller);
    container.addEventListener("controllerchange", () => {
      if (accepted) location.reload();
      else if (controlled) tell("replaced");
    });
    tell("fetching");
    const registration = await container.register(addresses.createScriptURL("sw.js"), { updateViaCache: "none" });
    document.addEventListener("acceptnewversion", () => {
      if (!registration.waiting) return location.reload();
      accepted = true;
      registration.waiting.postMessage("take over");
    });
    registration.addEventListener("updatefound", () => follow(registration, registration.installing));
    if (registration.installing) follow(registration, registration.installing);
    if (registration.waiting && registration.active) tell("waiting");
    else if (registration.active) check(registration.active);
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState === "visible") registration.update().catch(() => {});
    });
  };

  document.addEventListener("DOMContentLoaded", () => {
    start();
    fitTables();
    if ("serviceWorker" in navigator && !fromFile) {
      keep().catch((error) => {
        console.warn(error);
        tell("unavailable");
      });
    }
  });
})();
