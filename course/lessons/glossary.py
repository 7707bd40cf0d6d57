"""The trade's words: one file, `glossary.toml`, which says how an entry is written."""

import re
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path
from typing import Any, Self

from django.utils.text import slugify

from course.lessons.problems import LessonProblem
from course.lessons.toml import Place, load_toml

FILE = "glossary.toml"
KEYS = {
    "term": str,
    "means": str,
    "forms": list,
    "not_before": list,
    "not_after": list,
    "taught": str,
}
NEEDED = {"term", "means"}
TAUGHT = re.compile(r"(?P<slug>[a-z0-9-]+)#(?P<section>[a-z0-9-]+)")
BRACKETED = re.compile(r"(?P<before>[^\[\]]*)\[(?P<linked>[^\[\]]+)\](?P<behind>[^\[\]]*)")


@dataclass(frozen=True, kw_only=True)
class Term:
    """An entry. `forms` are all ways of writing it; in brackets, what of them is linked."""

    term: str
    means: str
    forms: tuple[str, ...] = ()
    not_before: tuple[str, ...] = ()
    not_after: tuple[str, ...] = ()
    taught: str = ""
    automatic: bool = True
    line: int = 0

    @property
    def slug(self) -> str:
        return slugify(self.term)

    @property
    def names(self) -> set[str]:
        """What the entry answers to when a lesson marks a term, in small letters."""
        linked = (BRACKETED.sub(r"\g<linked>", form) for form in self.forms)
        return {name.casefold() for name in (self.term, *linked)}

    def patterns(self) -> list[tuple[str, str]]:
        """Each form that is found by itself, with a pattern from its first word.

        The one group of the pattern is what is linked.
        """
        if not self.automatic:
            return []
        own = [] if any("[" in form for form in self.forms) else [self.term]
        return [(form, self._pattern(form)) for form in (*own, *self.forms)]

    def _pattern(self, form: str) -> str:
        parts = BRACKETED.fullmatch(form)
        before, linked, behind = parts.groups() if parts else ("", form, "")
        others = "|".join(map(re.escape, self.not_before))
        barred = rf"(?! (?:{others})(?![\w-]))" if others else ""
        whole = f"{re.escape(before)}({re.escape(linked)}){re.escape(behind)}"
        after = "".join(rf"(?<!{re.escape(word)} )" for word in self.not_after)
        return rf"{after}{whole}(?![\w-]){barred}"


@dataclass(frozen=True)
class Glossary:
    terms: tuple[Term, ...] = ()

    @classmethod
    def read(cls, folder: Path) -> Self:
        """The glossary of a folder of lessons; raises LessonProblem for a mistake in it."""
        path = folder / FILE
        if not path.exists():
            return cls()
        text = path.read_text(encoding="utf-8")
        given = load_toml(text, 1)
        entries, place = given.get("terms", []), Place(text, 1)
        terms = [_term(each, place.line_of(r"\[\[terms\]\]", n)) for n, each in enumerate(entries)]
        _refuse_doubles(terms)
        return cls(tuple(sorted(terms, key=lambda term: term.term.casefold())))

    @cached_property
    def named(self) -> dict[str, Term]:
        """By every name, and by slug."""
        names = {name: term for term in self.terms for name in term.names}
        return names | {term.slug: term for term in self.terms}

    @cached_property
    def finder(self) -> tuple[re.Pattern[str], list[Term]]:
        """One pattern for all forms, the longest first; its groups are the terms in order."""
        found = [(form, pattern, term) for term in self.terms for form, pattern in term.patterns()]
        found.sort(key=lambda each: -len(each[0]))
        one = "|".join(pattern for _, pattern, _ in found) or r"(?!)"
        # Said once before all: no place that begins no word is tried with every one of them.
        return re.compile(rf"(?<![\w-])(?:{one})", re.IGNORECASE), [term for *_, term in found]


NO_GLOSSARY = Glossary()


def _term(given: Any, line: int) -> Term:
    if not isinstance(given, dict) or not set(given) >= NEEDED:
        raise LessonProblem(line, "A term has term and means.")
    for key, value in given.items():
        if not isinstance(value, {**KEYS, "automatic": bool}.get(key, ())):
            raise LessonProblem(line, f"{key} is not known here, or is of the wrong kind.")
    if given.get("taught") and not TAUGHT.fullmatch(given["taught"]):
        raise LessonProblem(line, "taught is written lesson#section.")
    lists = {
        key: tuple(map(str, given.get(key, ()))) for key in ("forms", "not_before", "not_after")
    }
    return Term(**{**given, **lists}, line=line)


def _refuse_doubles(terms: list[Term]) -> None:
    owner: dict[str, Term] = {}
    for term in terms:
        for name in term.names:
            other = owner.setdefault(name, term)
            if other is not term:
                raise LessonProblem(term.line, f"“{name}” is a name of “{other.term}” already.")
