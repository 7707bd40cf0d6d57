"""The controls of the two machines."""

from django import forms

from exercises.bench.forms.base import GainField, HandsForm, PlaceField
from exercises.drills.asks import Json
from exercises.tape import SoundMode

MADE: dict[str, Json] = {
    "assemble": {"mode": "assemble"},
    "insert-both": {"mode": "insert", "picture": True, "sound": True},
    "insert-picture": {"mode": "insert", "picture": True, "sound": False},
    "insert-sound": {"mode": "insert", "picture": False, "sound": True},
}
MODE_TITLES = {
    "assemble": "Assemble",
    "insert-both": "Insert picture and sound",
    "insert-picture": "Insert picture only",
    "insert-sound": "Insert sound only",
}
SOUND_TITLES = {
    SoundMode.BY_HAND: "By hand",
    SoundMode.LIMITER: "With the limiter",
    SoundMode.AUTOMATIC: "Automatic gain",
}


class TrackingForm(HandsForm):
    action = "tracking"
    to = PlaceField()


class SkewForm(HandsForm):
    action = "skew"
    to = PlaceField()


class RecorderTrackingForm(HandsForm):
    action = "recorder-tracking"
    to = PlaceField()


class ModeForm(HandsForm):
    action = "mode"
    made = forms.ChoiceField(
        choices=list(MODE_TITLES.items()),
        error_messages={
            "required": "Choose a mode.",
            "invalid_choice": "This recorder has no such mode.",
        },
    )

    def arguments(self) -> Json:
        return MADE[self.cleaned_data["made"]]


class PictureLevelForm(HandsForm):
    action = "picture-level"
    by = forms.ChoiceField(
        choices=[("automatic", "Automatic"), ("hand", "By hand")],
        error_messages={
            "required": "Choose automatic or by hand.",
            "invalid_choice": "Picture level is automatic or by hand.",
        },
    )
    gain = GainField()

    def arguments(self) -> Json:
        return {
            "gain": None if self.cleaned_data["by"] == "automatic" else self.cleaned_data["gain"]
        }


class SoundLevelForm(HandsForm):
    action = "sound-level"
    mode = forms.ChoiceField(
        choices=list(SOUND_TITLES.items()),
        error_messages={
            "required": "Choose how the sound level is set.",
            "invalid_choice": "Sound level is set by hand, with the limiter, or by automatic gain.",
        },
    )
    gain = GainField()


class MonitorForm(HandsForm):
    action = "monitor"
    shows = forms.ChoiceField(
        choices=[("input", "Its input"), ("tape", "Its tape")],
        error_messages={
            "required": "Choose what it shows.",
            "invalid_choice": "The recorder’s monitor shows its input or its tape.",
        },
    )
