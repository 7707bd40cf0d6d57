"""A lesson as read: what its file says of it, and its text in parts."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any, ClassVar, Literal

from course.lessons.blocks.checklist import Checklist
from course.lessons.blocks.figure import Figure
from course.lessons.placeholders import fill
from exercises.drills.kind import Kind
from exercises.drills.register import KINDS
from exercises.tape import EditSession

Answer = str | int | bool
BoxKind = Literal["example", "goes-wrong", "caution"]
KICKERS: dict[BoxKind, str] = {
    "example": "Worked example",
    "goes-wrong": "What goes wrong",
    "caution": "Take care",
}


@dataclass(frozen=True, kw_only=True)
class Claim:
    """Something the lesson says that the tape model can confirm.

    `text` stands in the lesson word for word; `check` names an entry of
    `claims.CHECKS`, which is called with `given` and must answer `expect`.
    """

    text: str
    check: str
    given: dict[str, Any]
    expect: Answer
    line: int


@dataclass(frozen=True, kw_only=True)
class Section:
    """A place in a lesson that a link can name."""

    id: str
    title: str
    level: int = 2


@dataclass(frozen=True, kw_only=True)
class Prose:
    """Paragraphs and headings; `section` names the heading that it begins with, if it does."""

    part: ClassVar[str] = "prose"

    html: str
    text: str
    section: str = ""

    def texts(self) -> list[str]:
        return self.text.splitlines()


@dataclass(frozen=True, kw_only=True)
class LessonTable(Prose):
    """A table; `label` tells it from the others of the lesson."""

    part: ClassVar[str] = "table"

    label: str = "LessonTable"


@dataclass(frozen=True, kw_only=True)
class Panel:
    """One tape map of a diagram: a `TapeMap` as JSON, and its own line in a pair."""

    spec: dict[str, Any]
    line: str


@dataclass(frozen=True, kw_only=True)
class Diagram:
    """One tape map, or two side by side, drawn from a session document."""

    part: ClassVar[str] = "diagram"

    name: str
    title: str
    caption: str
    panels: tuple[Panel, ...]
    document: dict[str, Any] = field(repr=False)
    session: EditSession

    @property
    def id(self) -> str:
        """Apart from the names of sections, which may be the same word."""
        return f"map-{self.name}"

    def texts(self) -> list[str]:
        return [self.title, self.caption, *(panel.line for panel in self.panels)]


@dataclass(frozen=True, kw_only=True)
class PlacedDrill:
    """Where a drill can be answered without leaving the lesson."""

    part: ClassVar[str] = "drill"

    number: int
    slug: str
    title: str
    lead: str

    @property
    def id(self) -> str:
        return f"drill-{self.number}"

    def texts(self) -> list[str]:
        return [self.lead]


@dataclass(frozen=True, kw_only=True)
class Box:
    """Parts set apart: a worked example, what goes wrong, a caution."""

    part: ClassVar[str] = "box"

    kind: BoxKind
    section: Section
    parts: tuple["Part", ...]

    @property
    def kicker(self) -> str:
        return KICKERS[self.kind]

    def texts(self) -> list[str]:
        return [self.section.title]


@dataclass(frozen=True, kw_only=True)
class LocalRules:
    """Where the rules of the reader's own workshop stand, as the instructor wrote them."""

    part: ClassVar[str] = "local-rules"

    section: Section

    def texts(self) -> list[str]:
        return [self.section.title]


Part = Prose | LessonTable | Diagram | Figure | PlacedDrill | LocalRules | Checklist | Box


@dataclass(frozen=True, kw_only=True)
class Front:
    """What stands in the block `lesson` at the head of the file."""

    title: str
    slug: str
    minutes: int
    outcome: tuple[str, ...]
    drills: tuple[str, ...]
    summary: tuple[str, ...]
    sources: tuple[str, ...]
    claims: tuple[Claim, ...] = ()


@dataclass(frozen=True, kw_only=True)
class Link:
    """A link to another lesson, kept until all lessons are read and it can be checked."""

    slug: str
    section: str
    line: int


@dataclass(frozen=True, kw_only=True)
class Use:
    """Where a lesson uses a term first, or where it first has it in bold."""

    term: str
    section: str
    marked: bool


@dataclass(frozen=True, kw_only=True)
class Lesson:
    """A lesson; `number` is its place among the lessons that there are, from 1."""

    number: int
    front: Front
    parts: tuple[Part, ...]
    sections: tuple[Section, ...]
    links: tuple[Link, ...] = field(repr=False, default=())
    terms: tuple[Use, ...] = field(repr=False, default=())
    has_figures: bool = False

    def __str__(self) -> str:
        return f"Lesson {self.number}: {self.front.title}"

    @property
    def slug(self) -> str:
        return self.front.slug

    @property
    def title(self) -> str:
        return self.front.title

    @property
    def drills(self) -> tuple[Kind, ...]:
        """What to practise after this lesson."""
        return tuple(KINDS[slug] for slug in self.front.drills)

    @property
    def contents(self) -> tuple[Section, ...]:
        """The headings of the first order, for the list at the top."""
        return tuple(section for section in self.sections if section.level == 2)

    def all_parts(self) -> Iterator[Part]:
        """Every part in reading order, those inside boxes after their box."""
        yield from _walk(self.parts)

    def checklists(self) -> list[Checklist]:
        return [part for part in self.all_parts() if isinstance(part, Checklist)]

    def figures(self, part: str) -> dict[str, Any]:
        """The blocks of one kind that show something, or let it be heard, by name."""
        parts = self.all_parts()
        return {each.name: each for each in parts if isinstance(each, Figure) and each.part == part}

    def seen(self) -> list[Part]:
        """What counts as a diagram."""
        return [
            part
            for part in self.all_parts()
            if isinstance(part, Diagram) or (isinstance(part, Figure) and part.is_seen)
        ]

    def places(self) -> set[str]:
        """All that a link can lead to within the lesson."""
        blocks = (
            part for part in self.all_parts() if not isinstance(part, Prose | Box | LocalRules)
        )
        return {*(section.id for section in self.sections), *(block.id for block in blocks)}

    def diagrams(self) -> dict[str, Diagram]:
        return {part.name: part for part in self.all_parts() if isinstance(part, Diagram)}

    def texts(self) -> Iterator[str]:
        """All that a reader reads, a heading, paragraph, list item or table cell each.

        With the usual figures, where the text has a bench's.
        """
        yield self.title
        yield from map(fill, self.front.outcome)
        for part in self.all_parts():
            yield from map(fill, part.texts())
        yield from map(fill, self.front.summary)

    def text(self) -> str:
        return " ".join(" ".join(text.split()) for text in self.texts())


def _walk(parts: tuple[Part, ...]) -> Iterator[Part]:
    for part in parts:
        yield part
        if isinstance(part, Box):
            yield from _walk(part.parts)
