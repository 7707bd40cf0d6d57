"""Cassettes, and moving tape."""

from django import forms

from exercises.bench.forms.base import NO_NUMBER, HandsForm, MachineField, TimeField
from exercises.drills.asks import Json

STEPS = {
    "-10 s": (-10, 0),
    "-1 s": (-1, 0),
    "-1 frame": (0, -1),
    "+1 frame": (0, 1),
    "+1 s": (1, 0),
    "+10 s": (10, 0),
}


class LoadForm(HandsForm):
    action = "load"
    machine = MachineField()
    tape = forms.CharField(max_length=120, error_messages={"required": "Choose a cassette."})


class TakeOutForm(HandsForm):
    action = "take-out"
    machine = MachineField()


class WindForm(HandsForm):
    action = "wind"
    machine = MachineField()
    to = TimeField()


class StepForm(HandsForm):
    action = "step"
    machine = MachineField()
    by = forms.ChoiceField(
        choices=[(step, step) for step in STEPS],
        error_messages={
            "required": "Say how far.",
            "invalid_choice": "Step by a frame, a second, or ten seconds.",
        },
    )

    def arguments(self) -> Json:
        seconds, frames = STEPS[self.cleaned_data["by"]]
        by = seconds * self.bench.rate.nominal + frames
        return {"machine": self.cleaned_data["machine"], "by": by}


class NextTakeForm(HandsForm):
    action = "next-take"


class PlayForm(HandsForm):
    action = "play"
    machine = MachineField()
    seconds = forms.IntegerField(
        min_value=1,
        max_value=60,
        error_messages={
            "required": NO_NUMBER,
            "invalid": NO_NUMBER,
            "min_value": "Play for 1 to 60 seconds.",
            "max_value": "Play for 1 to 60 seconds.",
        },
    )

    def arguments(self) -> Json:
        frames = self.cleaned_data["seconds"] * self.bench.rate.nominal
        return {"machine": self.cleaned_data["machine"], "frames": frames}
