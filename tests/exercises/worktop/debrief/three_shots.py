"""Hands that leave something out, or do it wrong: the careful ones, changed in one thing."""

from collections.abc import Callable, Iterator
from typing import Any

from exercises.drills.setting.settings import USUAL
from exercises.worktop.debrief import Debrief, debrief
from exercises.worktop.laying_out import lay_out
from exercises.worktop.shelf import practicals
from tests.exercises.worktop.hands import Taken, by_the_plan

THREE_SHOTS = lay_out(practicals()["three-shots"], USUAL)
CAREFUL = tuple(by_the_plan(THREE_SHOTS))
SECOND = 25

Changing = Callable[[int, str, dict[str, Any]], Iterator[Taken]]


def hands(change: Changing) -> list[Taken]:
    """The careful hands, each action changed; `edit` counts the edits from 1 on."""
    taken: list[Taken] = []
    edit = 1
    for name, arguments in CAREFUL:
        taken += change(edit, name, arguments)
        edit += name == "look-back"
    return taken


def without(*names: str, edit: int | None = None) -> list[Taken]:
    """Nothing of these names is done, or not for one edit."""

    def change(number: int, name: str, arguments: dict[str, Any]) -> Iterator[Taken]:
        if name not in names or edit not in (None, number):
            yield name, arguments

    return hands(change)


def with_mark(edit: int, which: str, by: int) -> list[Taken]:
    """One mark of one edit moved by so many frames."""

    def change(number: int, name: str, arguments: dict[str, Any]) -> Iterator[Taken]:
        here = number == edit and arguments.get("which") == which
        yield name, {**arguments, "at": arguments["at"] + by} if here else arguments

    return hands(change)


def with_setting(name: str, *, edit: int | None = None, **arguments: Any) -> list[Taken]:
    """A control set otherwise, for one edit or for all."""

    def change(number: int, done: str, asked: dict[str, Any]) -> Iterator[Taken]:
        here = done == name and edit in (None, number)
        yield done, arguments if here else asked

    return hands(change)


def in_place_of(name: str, *others: Taken) -> list[Taken]:
    """Something else done wherever the careful hands do this."""

    def change(number: int, done: str, asked: dict[str, Any]) -> Iterator[Taken]:
        yield from others if done == name else [(done, asked)]

    return hands(change)


def one_edit(source_in: int, source_out: int, master_in: int) -> list[Taken]:
    marks = {"source_in": source_in, "source_out": source_out, "master_in": master_in}
    return [
        *(("mark", {"which": which, "at": at}) for which, at in marks.items()),
        ("rehearse", {}),
        ("record", {}),
        ("look-back", {}),
    ]


def first_alone(*edit: Taken) -> list[Taken]:
    """One edit from the first tape, with the machines set for it."""
    before = [each for each in CAREFUL[:10] if each[0] not in ("mode", "mark", "wind", "play")]
    assert [name for name, _ in before].count("load") == 2
    return [*before, ("mode", {"mode": "assemble"}), *edit]


def again_and_again() -> list[Taken]:
    """The last edit made four times."""
    *before, handing_in = CAREFUL
    return [*before, *3 * one_edit(475, 650, 58 * SECOND), handing_in]


def on_a_source_tape() -> list[Taken]:
    """A source tape put into the recorder, and recorded on, before all goes well."""
    return [
        ("load", {"machine": "recorder", "tape": "Tape 5"}),
        ("record", {}),
        ("take-out", {"machine": "recorder"}),
        *CAREFUL,
    ]


def told(actions: list[Taken]) -> Debrief:
    return debrief(THREE_SHOTS, actions)


def lost(found: Debrief) -> list[str]:
    """The lines of the rubric that were not got."""
    return [line["slug"] for line in found.rubric if line["got"] is False]


def kinds(found: Debrief) -> list[tuple[str, list[int]]]:
    """The mistakes, each with the edits that it comes from."""
    return [(each["kind"], each["edits"]) for each in found.mistakes]
