/* Before the first line is drawn: light or dark paper, as the reader chose or as the device has it. A plain script, so that nothing flashes. */
(() => {
  "use strict";
  const device = matchMedia("(prefers-color-scheme: dark)");

  function chosen() {
    try {
      return localStorage.getItem("rimeward.paper");
    } catch {
      return null; // a browser that keeps nothing
    }
  }

  function dress() {
    const paper = chosen() || (device.matches ? "night" : "day");
    if (document.documentElement.dataset.paper !== paper) {
      document.documentElement.dataset.paper = paper;
      dispatchEvent(new Event("dressed"));
    }
  }

  device.addEventListener("change", dress);
  addEventListener("dress", dress);
  dress();
})();
