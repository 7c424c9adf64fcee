// Drives Chromium through pages: node browser.mjs TOOLS BENCH CABINET SHELF LATER PRINTED
//
// TOOLS holds node_modules with playwright-core and axe-core; BENCH, CABINET and SHELF are pages of three
// plans, LATER one of the shelf in another revision; PRINTED is where the PDF of the first one goes. The
// shelf is small: what is the same on every page is tried on that one.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const [tools, ...files] = process.argv.slice(2);
const printed = files.pop();
const [bench, cabinet, shelf, later] = files.map((file) => pathToFileURL(file).href);
const packages = createRequire(join(tools, "node_modules", "here.js"));
const { chromium } = packages("playwright-core");
const axe = readFileSync(packages.resolve("axe-core/axe.min.js"), "utf8");

// A new profile each time, and nothing that would call elsewhere.
const browser = await chromium.launch({
  executablePath: process.env.LEAFWRIGHT_CHROMIUM ?? "/usr/bin/chromium",
  args: [
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
  ],
});

const desk = { viewport: { width: 1280, height: 900 } };
const schemes = ["light", "dark"];
const phone = { viewport: { width: 360, height: 740 }, isMobile: true, hasTouch: true };

/** A page in a browser of its own, where every fault it tells of is one of the test. */
async function opened(url, options = {}) {
  const context = await browser.newContext({ ...desk, ...options });
  const page = await context.newPage();
  const asked = [];
  page.on("request", (request) => asked.push(request.url()));
  page.on("console", (message) => assert.notEqual(message.type(), "error", message.text()));
  page.on("pageerror", (fault) => assert.fail(fault));
  await page.goto(url);
  return { page, context, asked };
}

async function test(name, run) {
  const begun = performance.now();
  try {
    await run();
    console.log(`ok ${name} (${Math.round(performance.now() - begun)} ms)`);
  } catch (fault) {
    process.exitCode = 1;
    console.log(`failed ${name}: ${fault.message}`);
  }
}

const checked = (page) =>
  page.$$eval("input[data-tick]:checked", (boxes) => boxes.map((box) => box.dataset.tick));

await test("nothing is asked for but the page itself", async () => {
  const { page, context, asked } = await opened(shelf);
  await page.waitForTimeout(100);
  assert.deepEqual(asked, [shelf]);
  await context.close();
});

await test("ticks survive a reload, in their revision alone, until they are cleared", async () => {
  const { page, context } = await opened(shelf);
  assert.deepEqual(await checked(page), []);
  await page.locator('input[data-tick^="part-"]').nth(1).click();
  await page.locator("#step-1 + label").click();
  const ticked = await checked(page);
  assert.equal(ticked.length, 2);
  await page.reload();
  assert.deepEqual(await checked(page), ticked);
  const done = page.locator('nav a[href="#step-1"]');
  assert.match(await done.getAttribute("class"), /is-done/);
  await page.goto(later);
  assert.deepEqual(await checked(page), []);
  await page.goto(shelf);
  assert.deepEqual(await checked(page), ticked);
  page.once("dialog", (dialog) => dialog.dismiss());
  await page.locator("footer button").click();
  assert.deepEqual(await checked(page), ticked);
  page.once("dialog", (dialog) => dialog.accept());
  await page.locator("footer button").click();
  assert.deepEqual(await checked(page), []);
  await page.reload();
  assert.deepEqual(await checked(page), []);
  await context.close();
});

await test("keys alone reach the plan and tick a box", async () => {
  const { page, context } = await opened(shelf);
  const focused = (what) => page.evaluate(what);
  await page.keyboard.press("Tab");
  assert.equal(await focused("document.activeElement.className"), "skip");
  await page.keyboard.press("Enter");
  assert.equal(await focused("document.activeElement.tagName"), "MAIN");
  let tabs = 0;
  do {
    await page.keyboard.press("Tab");
    tabs += 1;
    assert.ok(tabs < 400, "no box was reached");
  } while (!(await focused('document.activeElement.matches("input[data-tick]")')));
  const outline = await focused("getComputedStyle(document.activeElement).outlineStyle");
  assert.notEqual(outline, "none");
  await page.keyboard.press("Space");
  assert.equal((await checked(page)).length, 1);
  await context.close();
});

await test("no page is wider than a small phone", async () => {
  await Promise.all([bench, cabinet].map(async (url) => {
    const { page, context } = await opened(url, phone);
    // WCAG 2.2, success criterion 1.4.10: nothing is moved sideways at 320 [from memory].
    for (const width of [360, 320]) {
      await page.setViewportSize({ width, height: 700 });
      const [wide, room] = await page.evaluate(() => [
        document.scrollingElement.scrollWidth,
        document.documentElement.clientWidth,
      ]);
      assert.equal(room, width);
      assert.ok(wide <= room, `${url}: ${wide} in ${room}`);
    }
    await context.close();
  }));
});

await test("what is wider than a phone is moved by keys and made larger", async () => {
  const { page, context } = await opened(cabinet, phone);
  const table = page.locator('.scroll[tabindex="0"]').first();
  await table.focus();
  await page.keyboard.press("ArrowRight");
  await page.waitForFunction(() => document.activeElement.scrollLeft > 0);
  const sheet = page.locator('[aria-labelledby="parts"] .sheet').first();
  const width = () => sheet.locator("svg").first().evaluate((svg) => svg.getBoundingClientRect().width);
  const before = await width();
  assert.ok(before <= 360, String(before));
  const larger = page.locator('[aria-labelledby="parts"] button.larger').first();
  await larger.tap();
  assert.ok((await width()) > before * 1.5);
  assert.equal(await larger.getAttribute("aria-pressed"), "true");
  await larger.tap();
  assert.equal(await width(), before);
  await context.close();
});

/** How light a colour is, from 0 to 255. */
const light = (colour) => {
  const parts = colour.match(/[\d.]+/g).slice(0, 3).map(Number);
  return parts.reduce((sum, part) => sum + part, 0) / 3;
};

await test("a dark page has light letters and light lines", async () => {
  const { page, context } = await opened(shelf);
  for (const colorScheme of schemes) {
    await page.emulateMedia({ colorScheme });
    const colours = await page.evaluate(() => {
      const of = (what, property) => getComputedStyle(document.querySelector(what))[property];
      return {
        paper: of("html", "backgroundColor"),
        ink: of("main", "color"),
        line: of(".cover svg .l0", "stroke"),
        sheet: of(".cover .sheet", "backgroundColor"),
      };
    });
    const [dark, bright] = colorScheme === "dark" ? ["paper", "ink"] : ["ink", "paper"];
    assert.ok(light(colours[dark]) < 60 && light(colours[bright]) > 200, JSON.stringify(colours));
    const [back, line] = [light(colours.sheet), light(colours.line)];
    assert.ok(colorScheme === "dark" ? line - back > 150 : back - line > 200, `${line} on ${back}`);
  }
  await context.close();
});

await test("without its script the page says all the same", async () => {
  const text = async (options) => {
    const { page, context } = await opened(shelf, options);
    const words = await page.locator("main").innerText();
    const foot = await page.locator("footer").isVisible();
    await context.close();
    return [words.replace(/\s+/g, ""), foot];
  };
  const [words, foot] = await text({});
  const [without, no_foot] = await text({ javaScriptEnabled: false });
  assert.equal(without, words);
  assert.deepEqual([foot, no_foot], [true, false]);
});

await test("it prints on paper of its own, without what is for a screen", async () => {
  const { page, context } = await opened(bench, { colorScheme: "dark" });
  await page.pdf({ path: printed, format: "A4", preferCSSPageSize: true });
  await page.emulateMedia({ media: "print" });
  assert.equal(await page.locator("header").isVisible(), false);
  const [ink, room] = await page.evaluate(() => [
    getComputedStyle(document.querySelector(".cover svg .l0")).stroke,
    getComputedStyle(document.querySelector("nav").parentElement).position,
  ]);
  assert.ok(light(ink) < 10, ink);
  assert.equal(room, "static");
  await context.close();
});

/** Rules of WCAG 2.2 AA and good practice in colour schemes of a page; what they find, in words. */
async function faults(url, options, colorSchemes) {
  const { page, context } = await opened(url, options);
  await page.evaluate(axe);
  const told = [];
  for (const colorScheme of colorSchemes) {
    await page.emulateMedia({ colorScheme });
    const found = await page.evaluate(async () => {
      const { violations, passes } = await axe.run(document, {
        resultTypes: ["violations"],
        rules: { "target-size": { enabled: true } },
      });
      const words = violations.map(({ id, help, nodes }) => {
        const places = nodes.slice(0, 3).map((node) => `${node.html.slice(0, 200)} ${node.failureSummary}`);
        return `${id}: ${help} (${nodes.length})\n${places.join("\n")}`;
      });
      return { words, passes: passes.length };
    });
    assert.ok(found.passes > 20, `${found.passes} rules looked at`);
    told.push(...found.words);
  }
  await context.close();
  return told;
}

await test("rules of accessibility find nothing, by day and in the dark, wide and narrow", async () => {
  const found = await Promise.all([
    faults(shelf, desk, schemes),
    faults(shelf, phone, schemes),
    faults(cabinet, desk, ["light"]),
  ]);
  assert.deepEqual(found.flat(), []);
});

await browser.close();
