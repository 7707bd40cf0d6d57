"""The text of a lesson: Markdown, and fenced blocks for what Markdown hasn't.

A fenced block's first word says what it is. Those of `blocks.register` are written as TOML. Beside
them there are

    drill        a place where a drill can be answered (TOML: slug, lead)
    example      a worked example; Markdown, blocks allowed; the title follows the word
    goes-wrong   what goes wrong, the same way
    caution      where work can hurt someone, the same way
    local-rules  the rules of the reader's workshop, and whom to ask; the block is empty

A block that holds other blocks has a longer fence than they have. A heading may end in
`{#name}`: links to a place in a lesson use that name. Links are `lesson:slug#name`, or
`term:name` for an entry of the glossary; `terms` says which words are linked by themselves.
"""

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import get_args

from django.urls import reverse
from django.utils.text import slugify
from markdown_it.token import Token

from course.lessons.blocks.register import BLOCKS, read_block
from course.lessons.glossary import NO_GLOSSARY, Glossary
from course.lessons.lesson import (
    Box,
    BoxKind,
    Diagram,
    LessonTable,
    Link,
    LocalRules,
    Part,
    PlacedDrill,
    Prose,
    Section,
)
from course.lessons.problems import LessonProblem
from course.lessons.rendered import grouped, html, plain
from course.lessons.terms import SCHEME, Linker
from course.lessons.toml import load_toml
from exercises.drills.register import KINDS

BOXES: tuple[BoxKind, ...] = get_args(BoxKind)
NAMED_HEADING = re.compile(r"(?P<title>.*\S)\s*\{#(?P<id>[a-z0-9-]+)\}")
LESSON_LINK = re.compile(r"lesson:(?P<slug>[a-z0-9-]+)(#(?P<section>[a-z0-9-]+))?")


class Reader:
    """Reads one lesson's text; the sections and links met on the way are kept here."""

    def __init__(self, glossary: Glossary = NO_GLOSSARY) -> None:
        self.sections: list[Section] = []
        self.terms = Linker(glossary)
        self.links: list[Link] = []
        self._ids: set[str] = set()
        self._maps: dict[str, Diagram] = {}
        self._drills = self._tables = 0

    def parts(self, text: str, first_line: int) -> tuple[Part, ...]:
        """The parts of a text that begins on `first_line` of its file."""
        return tuple(self._parts(text, first_line))

    def _parts(self, text: str, first_line: int) -> Iterator[Part]:
        prose: list[Token] = []
        for tokens in grouped(text):
            token = tokens[0]
            line = first_line + (token.map[0] if token.map else 0)
            if prose and token.tag == "h2":
                yield _prose(prose)
                prose = []
            if token.type != "fence" and token.type != "table_open":
                prose += self._prepared(tokens, first_line)
                continue
            if prose:
                yield _prose(prose)
                prose = []
            if token.type == "fence":
                yield self._fence(token, line)
            else:
                yield self._table(self._prepared(tokens, first_line))
        if prose:
            yield _prose(prose)

    def _fence(self, token: Token, line: int) -> Part:
        kind, _, title = token.info.strip().partition(" ")
        if kind in BLOCKS:
            return self._block(kind, token.content, line)
        if kind == "drill":
            return self._drill(token.content, line)
        if kind == "local-rules":
            return LocalRules(section=self._section("Rules of your workshop", 3, line))
        for box in BOXES:
            if kind == box:
                return self._box(box, title.strip(), token.content, line)
        known = ", ".join((*BLOCKS, "drill", "local-rules", *BOXES))
        raise LessonProblem(line, f"There is no block “{kind}”; there are {known}.")

    def _table(self, tokens: list[Token]) -> LessonTable:
        self._tables += 1
        heads = [plain([two]) for one, two in pairwise(tokens) if one.type == "th_open"]
        label = f"Table {self._tables}: {', '.join(filter(None, heads))}"
        return LessonTable(html=html(tokens), text=plain(tokens), label=label)

    def _drill(self, source: str, line: int) -> PlacedDrill:
        given = load_toml(source, line + 1)
        if not {"slug"} <= set(given) <= {"slug", "lead"}:
            raise LessonProblem(line, "A block “drill” has slug, may have lead, and nothing else.")
        slug, lead = str(given["slug"]), str(given.get("lead", ""))
        if slug not in KINDS:
            raise LessonProblem(line, f"There is no drill “{slug}”; there are {', '.join(KINDS)}.")
        self._drills += 1
        return PlacedDrill(number=self._drills, slug=slug, title=KINDS[slug].title, lead=lead)

    def _block(self, kind: str, source: str, line: int) -> Part:
        block = read_block(kind, source, line, self._maps)
        self._claim_id(block.id, line)
        if isinstance(block, Diagram):
            self._maps[block.name] = block
        return block

    def _box(self, kind: BoxKind, title: str, source: str, line: int) -> Box:
        if not title:
            raise LessonProblem(line, f"A block “{kind}” has a title behind the word.")
        section = self._section(title, 3, line)
        return Box(kind=kind, section=section, parts=self.parts(source, line + 1))

    def _prepared(self, tokens: list[Token], first_line: int) -> list[Token]:
        """Tokens with their headings named and their links resolved."""
        for index, token in enumerate(tokens):
            line = first_line + (token.map[0] if token.map else 0)
            if token.type == "fence":
                raise LessonProblem(line, "A fenced block stands at the left margin.")
            if token.type == "heading_open":
                self._heading(token, tokens[index + 1], line)
            for child in token.children or ():
                self._inline(child, line)
        self.terms.link(tokens, self._here(), first_line)
        return tokens

    def _here(self) -> str:
        """The heading of the first order that was met last."""
        return next((each.id for each in reversed(self.sections) if each.level == 2), "")

    def _heading(self, token: Token, content: Token, line: int) -> None:
        if token.tag not in ("h2", "h3"):
            raise LessonProblem(line, "Headings are ## or ###; the title is in the head.")
        section = self._section(content.content, int(token.tag[1]), line)
        token.attrSet("id", section.id)
        last = (content.children or [])[-1]
        last.content = re.sub(r"\s*\{#[a-z0-9-]+\}$", "", last.content)

    def _section(self, heading: str, level: int, line: int) -> Section:
        named = NAMED_HEADING.fullmatch(heading)
        title = named["title"] if named else heading
        section = Section(id=named["id"] if named else slugify(title), title=title, level=level)
        self._claim_id(section.id, line)
        self.sections.append(section)
        return section

    def _claim_id(self, name: str, line: int) -> None:
        if not name:
            raise LessonProblem(line, "A heading has words, or a name: {#name}.")
        if name in self._ids:
            raise LessonProblem(line, f"The name “{name}” is used twice; give one {{#another}}.")
        self._ids.add(name)

    def _inline(self, token: Token, line: int) -> None:
        if token.type == "image":
            raise LessonProblem(line, "Pictures are drawn by a block, not linked.")
        if token.type != "link_open":
            return
        href = str(token.attrGet("href"))
        if href.startswith(SCHEME):
            name = href.removeprefix(SCHEME)
            token.attrSet("href", self.terms.address(name, self._here(), line))
            token.attrSet("class", "term")
            return
        target = LESSON_LINK.fullmatch(href)
        if target is None:
            raise LessonProblem(
                line, f"Links go to lesson:slug#name or term:name, not to “{href}”."
            )
        self.links.append(Link(slug=target["slug"], section=target["section"] or "", line=line))
        token.attrSet("href", lesson_url(target["slug"], target["section"] or ""))


def lesson_url(slug: str, section: str = "") -> str:
    return reverse("lesson", args=[slug]) + (f"#{section}" if section else "")


def _prose(tokens: Sequence[Token]) -> Prose:
    section = str(tokens[0].attrGet("id") or "")
    return Prose(html=html(tokens), text=plain(tokens), section=section)
