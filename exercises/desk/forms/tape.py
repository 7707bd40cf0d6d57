"""What every form with an edit master has: the bench, the tape and what was recorded on it."""

from collections.abc import Iterator, Mapping, Sequence
from functools import cached_property
from typing import Any, NamedTuple

from django import forms

from course.cohorts.fields import SAID_PLAINLY, TitleField
from exercises.desk.forms.own import WHOLE, OwnForm
from exercises.drills.asks import Json
from exercises.drills.own import Drawn, DrawnEdits, OnMaster, Recorded
from exercises.forms.fields import LongTextField
from exercises.models import OwnRevision
from exercises.tape import SIDES, Rate, Side, TimecodeError, frame_of, label

TRACKS: dict[str, tuple[Side, ...]] = {"both": SIDES, "picture": SIDES[:1], "sound": SIDES[1:]}
TITLES = {"row": "Recording", "take": "Take", "edit": "Edit"}
PLACES = {"row": ("start", "end"), "take": ("start", "end"), "edit": ("at", "end")}
CHOSEN = SAID_PLAINLY | {"invalid_choice": "Choose one of the list."}


class CodeField(forms.CharField):
    """A frame, as time code. The form that holds it knows the rate."""

    widget = forms.TextInput(
        attrs={"class": "counter", "autocomplete": "off", "spellcheck": "false", "size": 11}
    )

    def __init__(self, **options: Any) -> None:
        super().__init__(max_length=40, error_messages=SAID_PLAINLY, **options)


def choice(text: str, options: Mapping[str, str], **more: Any) -> forms.ChoiceField:
    return forms.ChoiceField(
        label=text, choices=list(options.items()), error_messages=CHOSEN, **more
    )


def code(what: str) -> CodeField:
    return CodeField(label=what, required=False)


class Group(NamedTuple):
    """Fields that belong together, and whether the page shows them at once."""

    title: str
    fields: list[forms.BoundField]
    is_open: bool


class OwnTapeForm(OwnForm):
    """Rows that are left empty are not there. `ROWS` recordings at the most."""

    ROWS = 8
    WORDS = frozenset({"title", "skill", "key", "story"})

    rate = choice("Frames a second", {rate.label: rate.label for rate in Rate}, initial="25")
    lock = forms.IntegerField(
        label="Run-up the bench needs, in seconds",
        min_value=1,
        max_value=30,
        initial=5,
        error_messages=WHOLE,
    )
    erase_gap = forms.IntegerField(
        label="Wiped past an assemble, in seconds",
        min_value=0,
        max_value=30,
        initial=2,
        error_messages=WHOLE,
    )
    length = CodeField(label="Length of the edit master", initial="00:10:00:00")
    story = LongTextField(label="How the edit master came to be")

    def __init__(self, *args: Any, **options: Any) -> None:
        super().__init__(*args, **options)
        for number in self.numbers:
            self.fields.update(row_fields(number))

    @property
    def numbers(self) -> range:
        return range(1, self.ROWS + 1)

    @property
    def rows(self) -> list[Group]:
        """The fields of each recording, for the page."""
        names = ("start", "end", "what", "name", "pulses")
        return [self.group("row", n, names, opened=2) for n in self.numbers]

    def group(self, kind: str, number: int, names: Sequence[str], *, opened: int) -> Group:
        """So many of a kind are opened at first; more where something is typed or wrong."""
        fields = [self[f"{kind}_{number}_{name}"] for name in names]
        first, last = (self[f"{kind}_{number}_{name}"] for name in PLACES[kind])
        written = bool(first.value() or last.value() or any(each.errors for each in fields))
        return Group(f"{TITLES[kind]} {number}", fields, number <= opened or written)

    def wrong(self) -> Iterator[str]:
        """What is wrong, where, in a sentence each."""
        for field in self:
            kind, _, number = field.name.partition("_")
            title = TITLES.get(kind)
            where = f"{title} {number[0]}, {field.label.lower()}" if title else field.label
            yield from (f"{where}: {error}" for error in field.errors)

    def described(self) -> OnMaster:
        """What was described; where all that the tape model needs is there."""
        raise TypeError(f"{type(self).__name__} does not say what it describes")

    def spec(self) -> Json:
        return self.described().as_json()

    def drawn(self) -> Drawn | DrawnEdits | None:
        """What the tape model makes of it so far; None where something is missing for it."""
        raise TypeError(f"{type(self).__name__} draws nothing")

    def clean(self) -> None:
        super().clean()
        length = self.frame("length")
        if length == 0:
            self.add_error("length", "A tape has some length.")
        for number in self.numbers:
            self.check_range(f"row_{number}_start", f"row_{number}_end", length)
            self.check_placed("row", number, ("name",))

    @cached_property
    def recorded_at(self) -> Rate:
        return Rate(self.cleaned_data.get("rate") or "25")

    def frame(self, name: str) -> int | None:
        """The frame typed in a field; None where it is empty or wrong, which is said there."""
        typed = self.cleaned_data.get(name)
        if not typed or name in self.errors:
            return None
        try:
            if ";" in typed:
                raise TimecodeError("Write : before the frames: these drills drop no labels.")
            return frame_of(typed, self.recorded_at)
        except TimecodeError as error:
            self.add_error(name, str(error))
            return None

    def check_range(self, first: str, last: str, length: int | None = None) -> None:
        start, end = self.frame(first), self.frame(last)
        if start is not None and not self.data.get(last) and last not in self.errors:
            self.add_error(last, "Say where it ends.")
        elif end is not None and not self.data.get(first) and first not in self.errors:
            self.add_error(first, "Say where it starts.")
        if start is not None and end is not None and start >= end:
            self.add_error(last, "It ends before it starts.")
        if length is not None and end is not None and end > length:
            self.add_error(last, "That lies past the end of the tape.")

    def check_placed(self, kind: str, number: int, words: Sequence[str]) -> None:
        """Words in a row that has no place would be lost."""
        first, last = (f"{kind}_{number}_{name}" for name in PLACES[kind])
        written = any(self.cleaned_data.get(f"{kind}_{number}_{name}") for name in words)
        if written and not (self.data.get(first) or self.data.get(last)):
            self.add_error(first, "Say where it starts, or empty this row.")

    @property
    def can_be_drawn(self) -> bool:
        """Whether all that the tape model needs is there; words may still be missing."""
        return self.is_bound and not set(self.errors) - self.WORDS

    def on_master(self) -> dict[str, Any]:
        """The part of what was described that every such drill has."""
        plain = ("rate", "lock", "erase_gap", "story")
        return {
            **{name: self.cleaned_data.get(name, "") for name in plain},
            "length": self.frame("length"),
            "recorded": tuple(self.recorded()),
        }

    def recorded(self) -> Iterator[Recorded]:
        data = self.cleaned_data
        for n in self.numbers:
            start, end = self.frame(f"row_{n}_start"), self.frame(f"row_{n}_end")
            if start is None or end is None:
                continue
            name = data[f"row_{n}_name"] or f"Shot {n}"
            chosen: dict[str, Any] = {
                "what": data[f"row_{n}_what"] or "both",
                "pulses": data[f"row_{n}_pulses"] or "anew",
            }
            yield Recorded(start=start, end=end, name=name, **chosen)

    @classmethod
    def typed(cls, revision: OwnRevision) -> dict[str, Any]:
        spec = revision.spec
        rate = Rate(spec["rate"])
        found: dict[str, Any] = super().typed(revision) | spec
        found["length"] = label(spec["length"], rate)
        for n, row in enumerate(spec["recorded"], 1):
            spans = {"start": label(row["start"], rate), "end": label(row["end"], rate)}
            found |= {f"row_{n}_{name}": value for name, value in (row | spans).items()}
        return found


def row_fields(number: int) -> dict[str, forms.Field]:
    what = {
        "both": "Picture and sound",
        "picture": "Picture only",
        "sound": "Sound only",
        "black": "Black",
        "nothing": "Nothing: wiped",
    }
    pulses = {
        "anew": "Begin anew",
        "on": "Run on",
        "keep": "None laid",
    }
    return {
        f"row_{number}_start": code("Start"),
        f"row_{number}_end": code("End"),
        f"row_{number}_what": choice("Laid", what, initial="both", required=False),
        f"row_{number}_name": TitleField(label="Name", required=False),
        f"row_{number}_pulses": choice("Pulses", pulses, initial="anew", required=False),
    }
