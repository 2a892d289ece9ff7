"use strict";
// What is ticked stays ticked on this device for this very sheet; one made anew has another digest and begins unticked.
(function () {
  var key = "manchet " + document.body.dataset.sheet, boxes = document.querySelectorAll("input[type=checkbox]"), kept = "";
  try { kept = localStorage.getItem(key) || ""; } catch (e) { return; }
  boxes.forEach(function (box, n) {
    box.checked = kept[n] === "1";
    box.addEventListener("change", function () {
      var now = Array.prototype.map.call(boxes, function (b) { return b.checked ? "1" : "0"; }).join("");
      try { localStorage.setItem(key, now); } catch (e) { /* a private window keeps nothing */ }
    });
  });
})();
