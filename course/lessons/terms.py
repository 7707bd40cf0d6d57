"""Where a lesson uses the words of the glossary: the first use of each becomes a link.

Headings, links, code and the heads of tables are left as they are. A word in bold that
does not begin its paragraph or list item is marked as a term, and must have an entry; so
must the target of a link `term:name`.
"""

from collections.abc import Iterator
from dataclasses import replace

from django.urls import reverse
from markdown_it.token import Token

from course.lessons.glossary import Glossary, Term
from course.lessons.lesson import Use
from course.lessons.placeholders import PLACEHOLDER
from course.lessons.problems import LessonProblem

SCHEME = "term:"
LEFT_ALONE = ("heading_open", "th_open")


class Linker:
    """Links the terms of one lesson, each once."""

    def __init__(self, glossary: Glossary) -> None:
        self.glossary = glossary
        self.uses: dict[str, Use] = {}

    def link(self, tokens: list[Token], section: str, first_line: int) -> None:
        """Put links into the inline tokens of a block, in place."""
        for before, token in zip([None, *tokens], tokens, strict=False):
            if token.children and (before is None or before.type not in LEFT_ALONE):
                line = first_line + (token.map[0] if token.map else 0)
                token.children = list(self._linked(token.children, section, line))

    def address(self, name: str, section: str, line: int) -> str:
        """Where a link to a term leads, by its slug or one of its names."""
        term = self.glossary.named.get(name.casefold())
        if term is None:
            raise LessonProblem(line, f"There is no term “{name}” in the glossary.")
        self._is_first(term, section)
        return term_url(term)

    def _linked(self, children: list[Token], section: str, line: int) -> Iterator[Token]:
        begun, in_link, bold = False, False, list[Token]()
        for child in children:
            in_link = (in_link or child.type == "link_open") and child.type != "link_close"
            if bold or (child.type == "strong_open" and begun and self.glossary.terms):
                bold.append(child)
                if child.type == "strong_close":
                    yield from self._bold(bold, section, line)
                    bold = []
            elif child.type == "text" and not in_link:
                yield from self._text(child.content, section)
            else:
                yield child
            begun = begun or bool(child.content or child.nesting)

    def _bold(self, tokens: list[Token], section: str, line: int) -> list[Token]:
        """A term marked by bold: linked as a whole, if it is the lesson's first use."""
        words = "".join(token.content for token in tokens)
        term = self.glossary.named.get(words.casefold())
        if term is None:
            raise LessonProblem(line, f"“{words}” is in bold, and the glossary has no such term.")
        first = self._is_first(term, section, marked=True)
        if not first or any(token.type == "link_open" for token in tokens):
            return tokens
        opened, *inside, closed = tokens
        return [opened, *_link(term, inside), closed]

    def _text(self, text: str, section: str) -> Iterator[Token]:
        finder, terms = self.glossary.finder
        figures = [found.span() for found in PLACEHOLDER.finditer(text)]
        done = 0
        for found in finder.finditer(text):
            if any(start <= found.start() < end for start, end in figures):
                continue
            term = terms[(found.lastindex or 1) - 1]
            if self._is_first(term, section):
                start, end = found.span(found.lastindex or 1)
                yield _words(text[done:start])
                yield from _link(term, [_words(text[start:end])])
                done = end
        yield _words(text[done:])

    def _is_first(self, term: Term, section: str, *, marked: bool = False) -> bool:
        """Whether the lesson has not used it yet; from now on it has."""
        known = self.uses.get(term.slug)
        if known is None:
            self.uses[term.slug] = Use(term=term.slug, section=section, marked=marked)
        elif marked and not known.marked:
            self.uses[term.slug] = replace(known, section=section, marked=True)
        return known is None


def term_url(term: Term) -> str:
    return f"{reverse('glossary')}#{term.slug}"


def _words(text: str) -> Token:
    return Token("text", "", 0, content=text)


def _link(term: Term, inside: list[Token]) -> list[Token]:
    attributes: dict[str, str | int | float] = {"href": term_url(term), "class": "term"}
    return [Token("link_open", "a", 1, attrs=attributes), *inside, Token("link_close", "a", -1)]
