"""What was written, as a kind of drill: it has one question, the same from every seed."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.kind import Kind, Verdict
from exercises.drills.kinds import free_answer
from exercises.drills.own import bad_edit, mode, pictured, written
from exercises.drills.own.described import Described
from exercises.drills.own.made import DescribedEdits
from exercises.drills.own.pictured import PictureTask
from exercises.drills.own.written import WrittenTask
from exercises.drills.question import Question


@dataclass(frozen=True, slots=True, kw_only=True)
class Form:
    """A form that an instructor's own drill can have.

    `purpose` tells learners what it asks, `offer` tells instructors what there is to write.
    """

    slug: str
    title: str
    purpose: str
    offer: str
    template: str
    by_hand: bool
    make: Callable[[Json, str, str], Question | None]
    grade: Callable[[Question, Mapping[str, Any]], Verdict]


def _mode(spec: Json, skill: str, situation: str) -> Question | None:
    return mode.question(Described.from_json(spec), skill=skill, situation=situation)


def _bad_edit(spec: Json, skill: str, situation: str) -> Question | None:
    return bad_edit.question(DescribedEdits.from_json(spec), skill=skill, situation=situation)


def _text(spec: Json, skill: str, situation: str) -> Question:
    return written.question(WrittenTask.from_json(spec), skill=skill, situation=situation)


def _picture(spec: Json, skill: str, situation: str) -> Question:
    return pictured.question(PictureTask.from_json(spec), skill=skill, situation=situation)


FORMS: dict[str, Form] = {
    form.slug: form
    for form in (
        Form(
            slug="mode",
            title="Choose the mode",
            purpose="An edit master and a wanted change: assemble, insert, or is it impossible?",
            offer="Describe an edit master and a wanted change. The tape model works out the mode.",
            template="drills/kinds/choose_the_mode.html",
            by_hand=False,
            make=_mode,
            grade=mode.grade,
        ),
        Form(
            slug="bad-edit",
            title="Spot the bad edit",
            purpose="Edits that were made, and what is seen and heard: which is bad, and what now?",
            offer="Describe edits that were made. The tape model finds the bad one and its mend.",
            template="drills/kinds/spot_the_bad_edit.html",
            by_hand=False,
            make=_bad_edit,
            grade=bad_edit.grade,
        ),
        Form(
            slug="text",
            title="In your own words",
            purpose="Your instructor reads what you write.",
            offer="Set a task that is answered in words. You read each answer.",
            template="drills/own/written.html",
            by_hand=True,
            make=_text,
            grade=free_answer.grade,
        ),
        Form(
            slug="picture",
            title="Send a picture",
            purpose="Your instructor looks at the picture that you take.",
            offer="Set a task that is answered with a picture. You look at each one.",
            template="drills/own/picture.html",
            by_hand=True,
            make=_picture,
            grade=pictured.grade,
        ),
    )
}


def own_kind(
    *,
    slug: str,
    form: str,
    title: str,
    skill: str,
    revision: int,
    spec: Json,
    own: int | None = None,
) -> Kind:
    """The kind that a revision makes; `own` is the key that it is kept under."""
    of = FORMS[form]

    @cache
    def made() -> Question | None:
        return of.make(spec, skill, f"revision-{revision}")

    return Kind(
        slug=slug,
        title=title,
        purpose=of.purpose,
        skills=(skill,),
        lesson="",
        revision=revision,
        template=of.template,
        candidate=lambda draw, settings: made(),
        grade=of.grade,
        by_hand=of.by_hand,
        tells_bench=True,
        own=own,
    )
