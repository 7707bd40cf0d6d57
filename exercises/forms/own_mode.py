"""Choose the mode, described by an instructor: a master, the takes, the change."""

from collections.abc import Iterator, Mapping
from functools import cached_property
from typing import Any

from django import forms

from course.cohorts.fields import SAID_PLAINLY, TitleField
from exercises.drills.asks import Json
from exercises.drills.own import Described, Recorded
from exercises.forms.fields import LongTextField
from exercises.forms.own import OwnForm
from exercises.models import OwnRevision
from exercises.tape import Rate, TimecodeError, frame_of, label

ROWS, TAKES = 8, 4
WHOLE = SAID_PLAINLY | {"invalid": "Write a whole number."}
CHOSEN = SAID_PLAINLY | {"invalid_choice": "Choose one of the list."}
TRACKS = {"both": ("picture", "sound"), "picture": ("picture",), "sound": ("sound",)}


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


def code(number: int, what: str) -> CodeField:
    return CodeField(label=f"{what} {number}", required=False)


class OwnModeForm(OwnForm):
    """Rows and takes that are left empty are not there."""

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
    source = TitleField(label="Source tape", initial="Reel 4")
    picture = TitleField(label="What is seen there")
    sound = TitleField(label="What is heard there")
    tracks = choice(
        "What is to be new",
        {"both": "Picture and sound", "picture": "Picture only", "sound": "Sound only"},
    )
    at = CodeField(label="Edit in on the edit master")
    in_ = CodeField(label="Edit in on the source tape")
    out = CodeField(label="Edit out on the source tape")
    freed = choice(
        "What must stay",
        {
            "nothing": "All that plays now, apart from what is replaced",
            "after": "All before the edit in; the rest may go",
            "beside": "All before and after; both tracks may be replaced there",
        },
    )
    wish = LongTextField(label="The change wanted, in words")
    instead = LongTextField(
        label="What could be done instead (you may leave this out)",
        required=False,
        help_text="Shown after the answer, where no mode makes the change.",
    )

    def __init__(self, *args: Any, **options: Any) -> None:
        super().__init__(*args, **options)
        for number in range(1, ROWS + 1):
            self.fields.update(row_fields(number))
        for number in range(1, TAKES + 1):
            self.fields[f"take_{number}_start"] = code(number, "Start of take")
            self.fields[f"take_{number}_end"] = code(number, "End of take")

    @property
    def rows(self) -> list[list[forms.BoundField]]:
        """The fields of each row, for the page."""
        names = ("start", "end", "what", "name", "pulses")
        return [[self[f"row_{n}_{name}"] for name in names] for n in range(1, ROWS + 1)]

    @property
    def takes(self) -> list[list[forms.BoundField]]:
        return [[self[f"take_{n}_{end}"] for end in ("start", "end")] for n in range(1, TAKES + 1)]

    def clean(self) -> None:
        super().clean()
        length = self.frame("length")
        for number in range(1, ROWS + 1):
            self.check_range(f"row_{number}_start", f"row_{number}_end", length)
        self.check_takes()
        self.check_change(length)

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

    def check_takes(self) -> None:
        reached = 0
        for number in range(1, TAKES + 1):
            first, last = f"take_{number}_start", f"take_{number}_end"
            self.check_range(first, last)
            start, end = self.frame(first), self.frame(last)
            if start is None or end is None:
                continue
            if start < reached:
                self.add_error(first, "Takes are in order and don’t overlap.")
            reached = max(reached, end)
        if not (reached or self.errors):
            self.add_error("take_1_start", "Write one take at least.")

    def check_change(self, length: int | None) -> None:
        self.check_range("in_", "out")
        at, in_, out = (self.frame(name) for name in ("at", "in_", "out"))
        if length == 0:
            self.add_error("length", "A tape has some length.")
        if None not in (at, in_, out, length) and at + out - in_ > length:  # type: ignore[operator]
            self.add_error("at", "The change runs past the end of the edit master.")

    @property
    def can_be_drawn(self) -> bool:
        """Whether all that the tape model needs is there; words may still be missing."""
        words = {"title", "skill", "key", "story", "wish", "picture", "sound", "instead"}
        return not set(self.errors) - words

    def recorded(self) -> Iterator[Recorded]:
        data = self.cleaned_data
        for n in range(1, ROWS + 1):
            start, end = self.frame(f"row_{n}_start"), self.frame(f"row_{n}_end")
            if start is None or end is None:
                continue
            name = data[f"row_{n}_name"] or f"Shot {n}"
            chosen: dict[str, Any] = {
                "what": data[f"row_{n}_what"] or "both",
                "pulses": data[f"row_{n}_pulses"] or "anew",
            }
            yield Recorded(start=start, end=end, name=name, **chosen)

    def described(self) -> Described:
        """Valid forms only."""
        data = self.cleaned_data
        pairs = [(self.frame(a.name), self.frame(b.name)) for a, b in self.takes]
        frames: dict[str, Any] = {name: self.frame(name) for name in ("length", "at", "in_", "out")}
        plain = ("rate", "lock", "erase_gap", "story", "wish", "source", "picture", "sound")
        return Described(
            **frames,
            **{name: data.get(name, "") for name in (*plain, "freed", "instead")},
            recorded=tuple(self.recorded()),
            takes=tuple((a, b) for a, b in pairs if a is not None and b is not None),
            tracks=TRACKS[data["tracks"]],  # type: ignore[arg-type]
        )

    def spec(self) -> Json:
        return self.described().as_json()

    @classmethod
    def typed(cls, revision: OwnRevision) -> dict[str, Any]:
        spec = revision.spec
        rate = Rate(spec["rate"])
        codes = {name: label(spec[name], rate) for name in ("length", "at", "in_", "out")}
        found: dict[str, Any] = super().typed(revision) | spec | codes
        tracks = spec["tracks"]
        found["tracks"] = "both" if len(tracks) == len(TRACKS["both"]) else tracks[0]
        for n, row in enumerate(spec["recorded"], 1):
            spans = {"start": label(row["start"], rate), "end": label(row["end"], rate)}
            found |= {f"row_{n}_{name}": value for name, value in (row | spans).items()}
        for n, (start, end) in enumerate(spec["takes"], 1):
            found |= {f"take_{n}_start": label(start, rate), f"take_{n}_end": label(end, rate)}
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
        "anew": "Pulses that begin there",
        "on": "Pulses in phase with those before",
        "keep": "No pulses laid",
    }
    laid = choice(f"What recording {number} laid", what, initial="both", required=False)
    phase = choice(f"Pulses of recording {number}", pulses, initial="anew", required=False)
    return {
        f"row_{number}_start": code(number, "Start of recording"),
        f"row_{number}_end": code(number, "End of recording"),
        f"row_{number}_what": laid,
        f"row_{number}_name": TitleField(label=f"Name of recording {number}", required=False),
        f"row_{number}_pulses": phase,
    }
