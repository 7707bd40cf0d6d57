"""All lessons, read once and kept in memory; a lesson is one file in `content/`.

A file's name is its place in the course and its slug: `07-assemble-and-insert.md`. A file
with a mistake is left out of the site, told in the log, and reported by `manage.py check`.
"""

import logging
import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cache, cached_property, lru_cache
from pathlib import Path
from typing import NamedTuple

from course.lessons import front
from course.lessons.blocks.figure import Figure
from course.lessons.claims import ClaimProblem, confirm
from course.lessons.glossary import FILE as GLOSSARY
from course.lessons.glossary import NO_GLOSSARY, Glossary, Term
from course.lessons.lesson import Front, Lesson
from course.lessons.markdown import Reader, lesson_url
from course.lessons.placeholders import filled, refuse_unknown
from course.lessons.problems import LessonProblem, Problem
from course.lessons.toml import Place
from course.made import name_of
from exercises.drills.asks import Json
from exercises.drills.register import KINDS
from exercises.drills.setting.bench_figures import BenchFigures

CONTENT = Path(__file__).parent / "content"
FILE_NAME = re.compile(r"[0-9]{2}-(?P<slug>[a-z0-9-]+)\.md")

logger = logging.getLogger(__name__)


@dataclass(frozen=True, eq=False)
class Shelf:
    """The lessons that could be read, in order, and what is wrong with the others."""

    lessons: tuple[Lesson, ...]
    problems: tuple[Problem, ...]
    glossary: Glossary = NO_GLOSSARY

    def find(self, slug: str) -> Lesson | None:
        return next((lesson for lesson in self.lessons if lesson.slug == slug), None)

    @cached_property
    def media(self) -> dict[str, Json]:
        """What the pictures and sounds in lessons are made from, by the name of the file."""
        figures = (
            part
            for lesson in self.lessons
            for part in lesson.all_parts()
            if isinstance(part, Figure)
        )
        return {name_of(spec): spec for figure in figures for spec in figure.media()}

    def before(self, lesson: Lesson) -> Lesson | None:
        return self.lessons[lesson.number - 2] if lesson.number > 1 else None

    def behind(self, lesson: Lesson) -> Lesson | None:
        return self.lessons[lesson.number] if lesson.number < len(self.lessons) else None

    def for_bench(self, lesson: Lesson, figures: BenchFigures) -> Lesson:
        """The lesson with the figures of a bench in the place of its placeholders."""
        return _filled(self, lesson.number, figures) if lesson.has_figures else lesson

    def teaches(self, term: Term) -> "LessonPlace | None":
        """Where a term is taught: as its entry says, or where it first stands in bold or at all."""
        return self._taught[term.slug]

    @cached_property
    def _taught(self) -> dict[str, "LessonPlace | None"]:
        uses = [(lesson.slug, use) for lesson in self.lessons for use in lesson.terms]
        uses.sort(key=lambda each: not each[1].marked)  # those in bold first, in order
        found: dict[str, tuple[str, str]] = {}
        for slug, use in uses:
            found.setdefault(use.term, (slug, use.section))
        told = {term.slug: term.taught.split("#") for term in self.glossary.terms if term.taught}
        places = {**found, **told}
        return {
            term.slug: self.place(*places[term.slug]) if term.slug in places else None
            for term in self.glossary.terms
        }

    def place(self, slug: str, section: str = "") -> "LessonPlace | None":
        """A place in a lesson; the lesson as a whole, where it has no such section."""
        lesson = self.find(slug)
        if lesson is None:
            return None
        titles = {each.id: each.title for each in lesson.sections}
        if section not in titles:
            return LessonPlace(lesson_url(slug), str(lesson))
        return LessonPlace(lesson_url(slug, section), f"{lesson}, “{titles[section]}”")


class LessonPlace(NamedTuple):
    """Where a rule is taught: a link, and what to call it."""

    url: str
    title: str


@lru_cache(maxsize=64)  # as many as a few benches have lessons with figures
def _filled(shelved: Shelf, number: int, figures: BenchFigures) -> Lesson:
    return filled(shelved.lessons[number - 1], figures)


@cache
def shelf() -> Shelf:
    read = read_shelf(CONTENT)
    for problem in read.problems:
        logger.error("Lesson left out: %s", problem)
    return read


def lesson_place(slug: str, section: str = "") -> LessonPlace | None:
    """The place in a lesson that a rule links to; None while there is no such lesson.

    A section that the lesson hasn't leads to the lesson as a whole.
    """
    return shelf().place(slug, section)


def read_shelf(folder: Path) -> Shelf:
    """Read every lesson in a folder; those with a problem are reported and left out."""
    lessons: dict[Path, Lesson] = {}
    problems: list[Problem] = []
    glossary = _read_glossary(folder, problems)
    for path in sorted(folder.glob("[0-9]*.md")):
        try:
            lesson = read_lesson(path, glossary)
            if lesson.slug in {each.slug for each in lessons.values()}:
                raise LessonProblem(3, f"Another lesson has the slug “{lesson.slug}”.")
            lessons[path] = lesson
        except LessonProblem as found:
            problems.append(Problem(str(path), found.line, found.problem))
    problems += [*_broken_links(lessons), *_broken_terms(folder, glossary, lessons)]
    broken = {problem.file for problem in problems}
    good = [lesson for path, lesson in lessons.items() if str(path) not in broken]
    numbered = tuple(replace(lesson, number=n) for n, lesson in enumerate(good, start=1))
    return Shelf(numbered, tuple(problems), glossary)


def _read_glossary(folder: Path, problems: list[Problem]) -> Glossary:
    try:
        return Glossary.read(folder)
    except LessonProblem as found:
        problems.append(Problem(str(folder / GLOSSARY), found.line, found.problem))
        return NO_GLOSSARY


def read_lesson(path: Path, glossary: Glossary = NO_GLOSSARY) -> Lesson:
    """One lesson; raises LessonProblem for the first thing that is wrong in it."""
    try:
        text = path.read_text(encoding="utf-8")
    except UnicodeDecodeError as error:
        raise LessonProblem(1, "A lesson is UTF-8 text.") from error
    parted = front.split(text)
    given = front.read_front(parted.toml, parted.toml_line)
    _refuse_name(path, given, parted)
    reader = Reader(glossary)
    parts = reader.parts(parted.body, parted.body_line)
    lesson = Lesson(
        number=0,
        front=given,
        parts=parts,
        sections=tuple(reader.sections),
        links=tuple(reader.links),
        terms=tuple(reader.terms.uses.values()),
        has_figures=refuse_unknown(text),
    )
    _refuse_claims(lesson)
    return lesson


def _refuse_name(path: Path, given: Front, parted: front.Split) -> None:
    place = Place(parted.toml, parted.toml_line)
    name = FILE_NAME.fullmatch(path.name)
    if name is None or name["slug"] != given.slug:
        raise place.problem("slug", f"A lesson with this slug is in a file NN-{given.slug}.md.")
    for drill in given.drills:
        if drill not in KINDS:
            raise place.problem("drills", f"There is no drill “{drill}”.")


def _refuse_claims(lesson: Lesson) -> None:
    text = lesson.text()
    for claim in lesson.front.claims:
        if " ".join(claim.text.split()) not in text:
            raise LessonProblem(claim.line, f"The lesson does not say “{claim.text}”.")
        if _is_figure(claim.expect) and str(claim.expect) not in claim.text:
            raise LessonProblem(claim.line, f"“{claim.text}” does not say {claim.expect!r}.")
        try:
            confirm(lesson, claim)
        except ClaimProblem as problem:
            raise LessonProblem(claim.line, str(problem)) from problem


def _is_figure(expect: object) -> bool:
    """Whether the sentence itself must show it: “2 seconds” and “43.0”, not a name or a yes."""
    return isinstance(expect, str) and any(letter.isdigit() for letter in expect)


def _broken_links(lessons: dict[Path, Lesson]) -> Iterator[Problem]:
    places = {lesson.slug: lesson.places() for lesson in lessons.values()}
    for path, lesson in lessons.items():
        for link in lesson.links:
            if link.slug not in places:
                yield Problem(str(path), link.line, f"There is no lesson “{link.slug}”.")
            elif link.section and link.section not in places[link.slug]:
                yield Problem(str(path), link.line, f"“{link.slug}” has no place “{link.section}”.")


def _broken_terms(
    folder: Path, glossary: Glossary, lessons: dict[Path, Lesson]
) -> Iterator[Problem]:
    sections = {lesson.slug: {each.id for each in lesson.sections} for lesson in lessons.values()}
    for term in glossary.terms:
        slug, _, section = term.taught.partition("#")
        unread = any(folder.glob(f"[0-9]*-{slug}.md")) and slug not in sections
        if slug and not unread and section not in sections.get(slug, ()):
            problem = f"“{term.term}” is taught at “{term.taught}”, and there is no such place."
            yield Problem(str(folder / GLOSSARY), term.line, problem)
