#!/usr/bin/env python3
"""site.py pages FOLDER: a copy of the documents in which README.md is the first page and no link leads out of them.
site.py finish FOLDER: makes the search of a site work from a folder too, and looks whether anything in it asks for a network.

A browser lets a page that is opened from a folder neither fetch a file nor start a worker. So the index of the search is
a script beside the pages, and mkdocs' own lunr searches it inside the page.
"""

import json
import pathlib
import re
import shutil
import sys

PROJECT = pathlib.Path(__file__).resolve().parent.parent
LINK = re.compile(r"(!?)\[((?:[^\[\]]|\[[^\[\]]*\])*)\]\(([^)\s#]+)(#[^)\s]*)?\)")
REMARK = re.compile(r"^<!-- (?:before|exits|file|part of|not run): .+ -->\n", re.MULTILINE)
FENCED = re.compile(r"(^```.*?^```\s*?$)", re.MULTILINE | re.DOTALL)
ASKS = re.compile(r"<(?:script|img|iframe|link|source)\b[^>]*?(?:src|href)=[\"']?(?:https?:)?//[^\"' >]+", re.IGNORECASE)

SEARCH = """// Searches the pages in this page; no file is fetched and no worker started.
var found_pages = %s;
function index_of_pages() {
  return lunr(function () {
    this.ref("location");
    this.field("title", {boost: 10});
    this.field("text");
    found_pages.docs.forEach(function (page) { this.add(page); }, this);
  });
}
document.addEventListener("DOMContentLoaded", function () {
  var field = document.getElementById("mkdocs-search-query");
  var results = document.getElementById("mkdocs-search-results");
  var index = null;
  field.addEventListener("input", function () {
    index = index || index_of_pages();
    results.textContent = "";
    var words = lunr.tokenizer(field.value.trim()).filter(lunr.stopWordFilter).map(lunr.stemmer);
    if (words.length === 0 || field.value.trim().length < 2) return;
    var hits = index.query(function (query) {
      words.forEach(function (word) {
        query.term(word.toString(), {presence: lunr.Query.presence.REQUIRED, wildcard: lunr.Query.wildcard.TRAILING});
      });
    });
    if (hits.length === 0) results.textContent = "Nothing found.";
    hits.slice(0, 40).forEach(function (hit) {
      var page = found_pages.docs.find(function (one) { return one.location === hit.ref; });
      var article = document.createElement("article");
      var link = article.appendChild(document.createElement("h3")).appendChild(document.createElement("a"));
      link.href = base_url.replace(/\\/$/, "") + "/" + page.location;
      link.textContent = page.title;
      article.appendChild(document.createElement("p")).textContent = page.text.slice(0, 200);
      results.appendChild(article);
    });
  });
});
"""


def pages(into):
    shutil.rmtree(into, ignore_errors=True)
    sources = {PROJECT / "README.md": "index.md", PROJECT / "DEVELOPERS.md": "DEVELOPERS.md"}
    for path in (PROJECT / "docs").rglob("*"):
        if path.suffix in (".md", ".svg", ".json"):
            sources[path] = str(path.relative_to(PROJECT))
    for path, name in sources.items():
        target = into / name
        target.parent.mkdir(parents=True, exist_ok=True)
        if path.suffix != ".md":
            shutil.copy(path, target)
            continue

        def kept(link, path=path):
            picture, label, to, anchor = link.groups()
            if re.match(r"[a-z]+:", to):
                return link.group()
            at = (path.parent / to).resolve()
            if at == PROJECT / "README.md":
                up = "../" * (len(path.relative_to(PROJECT).parts) - 1)
                return f"{picture}[{label}]({up}index.md{anchor or ''})"
            return link.group() if at in sources else label  # a folder of the source is not on the site

        parts = FENCED.split(REMARK.sub("", path.read_text(encoding="utf-8")))
        target.write_text("".join(part if part.startswith("```") else LINK.sub(kept, part) for part in parts), encoding="utf-8")


def finish(site):
    index = json.loads((site / "search" / "search_index.json").read_text(encoding="utf-8"))
    (site / "search" / "main.js").write_text(SEARCH % json.dumps(index, ensure_ascii=False), encoding="utf-8")
    for name in ("search_index.json", "worker.js"):
        (site / "search" / name).unlink(missing_ok=True)
    asked = []
    for page in sorted(site.rglob("*.html")):
        text = page.read_text(encoding="utf-8")
        with_lunr = re.sub(r"(<script[^>]* src=\"?)([^\"> ]*)search/main\.js(\"?[^>]*></script>)",
                           r"\1\2search/lunr.js\3\n\1\2search/main.js\3", text)
        page.write_text(with_lunr, encoding="utf-8")
        asked += [f"{page.relative_to(site)}: {found}" for found in ASKS.findall(with_lunr)]
    for found in asked:
        print(f"asks for a network: {found}", file=sys.stderr)
    return 1 if asked else 0


if __name__ == "__main__":
    verb, folder = sys.argv[1], pathlib.Path(sys.argv[2]).resolve()
    sys.exit(finish(folder) if verb == "finish" else pages(folder) or 0)
