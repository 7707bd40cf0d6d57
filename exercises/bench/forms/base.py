"""What all forms of the bench have in common, and the fields that several of them have."""

import re
from decimal import Decimal
from typing import Any, ClassVar

from django import forms
from django.core.exceptions import ValidationError

from exercises.drills.asks import Json
from exercises.forms.fields import INCOMPLETE
from exercises.tape import Bench, Rate, TimecodeError, frame_of

NO_TIME = "Type a time as the counter shows it, HH:MM:SS:FF, or only SS:FF."
# From the right: what is left out on the left is nought.
SHORT = re.compile(r"(?:(?:([0-9]{1,2}):)?([0-9]{1,2}):)?([0-9]{1,2})([:;])([0-9]{1,2})")
NO_NUMBER = "Type a whole number."
MOST_ACTIONS = 100_000


class HandsForm(forms.Form):
    """`seen` is how many actions the page knew of that was sent; `now`, where a script says it."""

    action: ClassVar[str]

    seen = forms.IntegerField(min_value=0, max_value=MOST_ACTIONS, required=False)
    now = forms.IntegerField(min_value=0, max_value=MOST_ACTIONS, required=False)

    def __init__(self, *args: Any, bench: Bench, **options: Any) -> None:
        super().__init__(*args, **options)
        self.bench = bench
        for field in self.fields.values():
            if isinstance(field, TimeField):
                field.bench = bench

    def clean(self) -> dict[str, Any]:
        cleaned: dict[str, Any] = super().clean() or {}
        if cleaned.get("seen") is None and cleaned.get("now") is None:
            raise ValidationError(INCOMPLETE)
        return cleaned

    @property
    def known(self) -> int:
        """How many actions whoever sent it knew of."""
        now: int | None = self.cleaned_data.get("now")
        seen: int | None = self.cleaned_data.get("seen")
        return now if now is not None else seen or 0

    def arguments(self) -> Json:
        """What the action takes; valid forms only."""
        return {name: self.cleaned_data[name] for name in self.fields if name not in KNOWN}

    @property
    def refusal(self) -> str:
        """The first thing that is wrong, in a sentence."""
        return str(next(iter(self.errors.values()))[0])


KNOWN = ("seen", "now")


class TimeField(forms.CharField):
    """Time code, as the counters of the bench show it; a frame afterwards."""

    bench: Bench | None = None

    def __init__(self, **options: Any) -> None:
        options.setdefault("error_messages", {"required": NO_TIME, "max_length": NO_TIME})
        super().__init__(max_length=40, **options)

    def clean(self, value: Any) -> Any:
        text = super().clean(value)
        if not text:
            return None
        rate = self.bench.rate if self.bench else Rate.R25
        parts = SHORT.fullmatch(text)
        if parts is None:
            raise ValidationError(NO_TIME)
        *whole, mark, frames = padded(parts)
        if int(frames) >= rate.nominal:
            raise ValidationError(f"Frames run from 00 to {rate.nominal - 1}.")
        try:
            return frame_of(f"{':'.join(whole)}{mark}{frames}", rate)
        except TimecodeError as error:
            raise ValidationError(str(error)) from error


def padded(parts: "re.Match[str]") -> tuple[str, str, str, str, str]:
    """Hours, minutes, seconds, the mark before the frames, frames: two figures each."""
    hours, minutes, seconds, mark, frames = parts.groups(default="")
    return hours.zfill(2), minutes.zfill(2), seconds.zfill(2), mark, frames.zfill(2)


class MachineField(forms.ChoiceField):
    def __init__(self) -> None:
        super().__init__(
            choices=[("player", "player"), ("recorder", "recorder")],
            error_messages={
                "required": "Say which machine.",
                "invalid_choice": "There are two machines: the player and the recorder.",
            },
        )


class PlaceField(forms.IntegerField):
    """A place of a control, from the middle."""

    def __init__(self) -> None:
        super().__init__(error_messages={"invalid": NO_NUMBER, "required": NO_NUMBER})

    def clean(self, value: Any) -> Any:
        place = super().clean(value)
        if abs(place) > 1000:
            raise ValidationError("The control does not go so far.")
        return place


class GainField(forms.DecimalField):
    """Decibels, in tenths afterwards; 0 where nothing is typed."""

    def __init__(self, **options: Any) -> None:
        told = "Type a level in dB, such as -4.5."
        super().__init__(
            max_digits=5,
            decimal_places=1,
            error_messages={
                "invalid": told,
                "max_digits": told,
                "max_decimal_places": told,
                "max_whole_digits": told,
            },
            required=False,
            **options,
        )

    def clean(self, value: Any) -> Any:
        gain: Decimal | None = super().clean(value)
        return int(10 * gain) if gain is not None else 0
