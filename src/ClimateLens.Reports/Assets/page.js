// Draws the charts and prepares the page for print. Everything else on the page stands without this script.
(function () {
  "use strict";
  const printWidth = 660; // CSS pixels that fit between the margins of A4 and of Letter
  const printHeight = { panels1: 170, panels3: 390 };
  const plots = [];

  function draw(place) {
    const figure = JSON.parse(document.getElementById(place.dataset.figure).textContent);
    figure.data.forEach(function (trace) {
      if (!trace.text) {
        trace.text = figure.labels;
      }
    });
    const config = { responsive: true, displayModeBar: false, displaylogo: false, showTips: false, doubleClick: false };
    return Plotly.newPlot(place, figure.data, figure.layout, config).then(function () {
      plots.push(place);
    });
  }

  function forPaper() {
    document.querySelectorAll("details:not(.screen):not([open])").forEach(function (fold) {
      fold.open = true;
      fold.dataset.opened = "print";
    });
    plots.forEach(function (place) {
      Plotly.relayout(place, { width: printWidth, height: printHeight[place.classList[1]], autosize: false });
    });
  }

  function forScreen() {
    document.querySelectorAll("details[data-opened]").forEach(function (fold) {
      fold.open = false;
      delete fold.dataset.opened;
    });
    plots.forEach(function (place) {
      Plotly.relayout(place, { width: null, height: null, autosize: true });
    });
  }

  const places = Array.from(document.querySelectorAll("[data-figure]"));
  if (typeof Plotly === "undefined") {
    return; // the library's file is missing: the notes in place of the charts stay visible
  }

  document.documentElement.classList.add("drawing");
  Promise.all(places.map(draw)).then(function () {
    document.documentElement.dataset.charts = String(plots.length);
  });
  window.addEventListener("beforeprint", forPaper);
  window.addEventListener("afterprint", forScreen);
})();
