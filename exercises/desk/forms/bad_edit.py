"""Spot the bad edit, described by an instructor: a master, and the edits made on it."""

from collections.abc import Iterator
from typing import Any

from django import forms

from course.cohorts.fields import TitleField
from exercises.desk.forms.own import WHOLE
from exercises.desk.forms.tape import TRACKS, Group, OwnTapeForm, choice, code
from exercises.drills.own import DescribedEdits, DrawnEdits, Made, drawn_edits
from exercises.drills.setting.change import Mode
from exercises.models import OwnRevision
from exercises.tape import Rate, Side, label

EDITS = 4
NUMBERS = range(1, EDITS + 1)
NAMES = ("mode", "meant", "at", "end", "run_up", "beyond", "picture", "sound", "purpose")
SAID = ("picture", "sound", "purpose")  # the words of an edit
MEANT = {
    "": "All that it recorded",
    "both": "Picture and sound",
    "picture": "Picture only",
    "sound": "Sound only",
}


class OwnBadEditForm(OwnTapeForm):
    """Edits whose places on the master are left empty are not there."""

    template = "desk/write_bad_edit.html"
    ROWS = 4
    WORDS = OwnTapeForm.WORDS | {f"edit_{n}_{name}" for n in NUMBERS for name in SAID}

    def __init__(self, *args: Any, **options: Any) -> None:
        super().__init__(*args, **options)
        for number in NUMBERS:
            self.fields.update(edit_fields(number))

    @property
    def edits(self) -> list[Group]:
        """The fields of each edit, for the page."""
        return [self.group("edit", n, NAMES, opened=2) for n in NUMBERS]

    def clean(self) -> None:
        super().clean()
        for number in NUMBERS:
            self.check_range(f"edit_{number}_at", f"edit_{number}_end", self.frame("length"))
            self.check_placed("edit", number, SAID)
            if self.is_written(number):
                self.check_edit(number)
        self.check_order()

    def check_order(self) -> None:
        """No edit is left out before another: learners would count them otherwise."""
        written = [number for number in NUMBERS if self.is_written(number)]
        left_out = sorted(set(range(1, max(written, default=1))) - set(written))
        if not (written or self.errors):
            self.add_error("edit_1_at", "Write one edit at least.")
        elif left_out and not self.errors:
            self.add_error(f"edit_{left_out[0]}_at", "Write this edit before those after it.")

    def is_written(self, number: int) -> bool:
        places = (f"edit_{number}_{name}" for name in ("at", "end"))
        return all(self.frame(place) is not None for place in places)

    def check_edit(self, number: int) -> None:
        for name in SAID:
            field = f"edit_{number}_{name}"
            if not self.cleaned_data.get(field) and field not in self.errors:
                self.add_error(field, "This is still empty.")
        if not set(self.meant(number)) <= set(self.mode(number).tracks):
            self.add_error(f"edit_{number}_meant", "This mode doesn’t record that.")
        beyond = self.seconds(number, "beyond")
        if beyond is not None and beyond <= -self.lasts(number):
            self.add_error(f"edit_{number}_beyond", "Then the take ends before the edit begins.")

    def mode(self, number: int) -> Mode:
        return Mode(self.cleaned_data.get(f"edit_{number}_mode") or Mode.ASSEMBLE)

    def meant(self, number: int) -> tuple[Side, ...]:
        tracks = self.mode(number).tracks
        return TRACKS.get(self.cleaned_data.get(f"edit_{number}_meant", ""), tracks)

    def seconds(self, number: int, name: str) -> int | None:
        """What was typed in seconds, in frames; None where it is wrong, which is said there."""
        typed = self.cleaned_data.get(f"edit_{number}_{name}")
        wrong = f"edit_{number}_{name}" in self.errors
        return None if wrong else (typed or 0) * self.recorded_at.nominal

    def lasts(self, number: int) -> int:
        at, end = self.frame(f"edit_{number}_at"), self.frame(f"edit_{number}_end")
        return (end or 0) - (at or 0)

    def described(self) -> DescribedEdits:
        return DescribedEdits(**self.on_master(), edits=tuple(self.made()))

    def made(self) -> Iterator[Made]:
        for number in filter(self.is_written, NUMBERS):
            words = {name: self.cleaned_data.get(f"edit_{number}_{name}") for name in SAID}
            yield Made(
                mode=self.mode(number).value,
                meant=self.meant(number),
                at=self.frame(f"edit_{number}_at") or 0,
                end=self.frame(f"edit_{number}_end") or 0,
                run_up=self.seconds(number, "run_up") or 0,
                beyond=self.seconds(number, "beyond") or 0,
                **{name: said or f"shot {number}" for name, said in words.items()},
            )

    def drawn(self) -> DrawnEdits | None:
        if not self.can_be_drawn or not any(map(self.is_written, NUMBERS)):
            return None
        return drawn_edits(self.described())

    @classmethod
    def typed(cls, revision: OwnRevision) -> dict[str, Any]:
        rate = Rate(revision.spec["rate"])
        found = super().typed(revision)
        for n, edit in enumerate(revision.spec["edits"], 1):
            tracks = tuple(edit["meant"])
            meant = next(name for name, named in TRACKS.items() if named == tracks)
            places = {name: label(edit[name], rate) for name in ("at", "end")}
            lengths = {name: edit[name] // rate.nominal for name in ("run_up", "beyond")}
            as_made = tracks == Mode(edit["mode"]).tracks
            told = edit | places | lengths | {"meant": "" if as_made else meant}
            found |= {f"edit_{n}_{name}": value for name, value in told.items()}
        return found


def edit_fields(number: int) -> dict[str, forms.Field]:
    modes = {mode.value: mode.words for mode in Mode}
    fields: dict[str, forms.Field] = {
        "mode": choice("Mode", modes, required=False),
        "meant": choice("Meant to be new", MEANT, required=False),
        "at": code("Edit in"),
        "end": code("Edit out"),
        "run_up": seconds("Run-up of the take, seconds", least=0, initial=10),
        "beyond": seconds("After it the take runs, seconds", least=-60, initial=5),
        "picture": TitleField(label="Seen", required=False),
        "sound": TitleField(label="Heard", required=False),
        "purpose": TitleField(label="What it was for", required=False),
    }
    return {f"edit_{number}_{name}": field for name, field in fields.items()}


def seconds(text: str, *, least: int, initial: int) -> forms.IntegerField:
    return forms.IntegerField(
        label=text,
        required=False,
        min_value=least,
        max_value=120,
        initial=initial,
        error_messages=WHOLE,
    )
