"""Choose the mode, described by an instructor: a master, the takes, the change."""

from typing import Any

from course.cohorts.fields import TitleField
from exercises.desk.forms.tape import TRACKS, CodeField, Group, OwnTapeForm, choice, code
from exercises.drills.own import Described, Drawn, drawn
from exercises.forms.fields import LongTextField
from exercises.models import OwnRevision
from exercises.tape import Rate, label

TAKES = 4


class OwnModeForm(OwnTapeForm):
    """Takes that are left empty are not there."""

    template = "desk/write_mode.html"
    WORDS = OwnTapeForm.WORDS | {"wish", "picture", "sound", "instead"}

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
            "nothing": "All but what is replaced",
            "after": "All before the change",
            "beside": "All before and after the change",
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
        for number in range(1, TAKES + 1):
            self.fields |= {
                f"take_{number}_start": code("Start"),
                f"take_{number}_end": code("End"),
            }

    @property
    def takes(self) -> list[Group]:
        ends = ("start", "end")
        return [self.group("take", n, ends, opened=1) for n in range(1, TAKES + 1)]

    def clean(self) -> None:
        super().clean()
        self.check_takes()
        self.check_change(self.frame("length"))

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
        if None not in (at, in_, out, length) and at + out - in_ > length:  # type: ignore[operator]
            self.add_error("at", "The change runs past the end of the edit master.")

    def described(self) -> Described:
        data = self.cleaned_data
        pairs = [
            (self.frame(a.name), self.frame(b.name))
            for a, b in (take.fields for take in self.takes)
        ]
        frames: dict[str, Any] = {name: self.frame(name) for name in ("at", "in_", "out")}
        plain = ("wish", "source", "picture", "sound", "freed", "instead")
        return Described(
            **self.on_master(),
            **frames,
            **{name: data.get(name, "") for name in plain},
            takes=tuple((a, b) for a, b in pairs if a is not None and b is not None),
            tracks=TRACKS[data["tracks"]],
        )

    def drawn(self) -> Drawn | None:
        return drawn(self.described()) if self.can_be_drawn else None

    @classmethod
    def typed(cls, revision: OwnRevision) -> dict[str, Any]:
        spec = revision.spec
        rate = Rate(spec["rate"])
        codes = {name: label(spec[name], rate) for name in ("at", "in_", "out")}
        tracks = spec["tracks"]
        both = "both" if len(tracks) == len(TRACKS["both"]) else tracks[0]
        found: dict[str, Any] = super().typed(revision) | codes | {"tracks": both}
        for n, (start, end) in enumerate(spec["takes"], 1):
            found |= {f"take_{n}_start": label(start, rate), f"take_{n}_end": label(end, rate)}
        return found
