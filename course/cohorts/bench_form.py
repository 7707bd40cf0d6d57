"""The form in which an instructor describes a bench."""

from typing import Any

from django import forms

from course.cohorts.bench_words import LABELS, METERS
from course.cohorts.benches import Bench
from course.cohorts.fields import SAID_PLAINLY, TextField, TitleField, refuse_unseen
from exercises.drills.setting.settings import LONGEST_ERASE_GAP, PRE_ROLL, SOURCE_RUN_UP

MOST_FRAMES = 20 * 30  # the longest pre-roll, in the frames of the faster line system


def number_field(label: str, least: int, most: int, hint: str) -> forms.IntegerField:
    wrong = f"Type a whole number from {least} to {most}."
    return forms.IntegerField(
        label=label,
        min_value=least,
        max_value=most,
        help_text=hint,
        error_messages={
            "required": SAID_PLAINLY["required"],
            "invalid": wrong,
            "min_value": wrong,
            "max_value": wrong,
        },
        widget=forms.NumberInput(attrs={"inputmode": "numeric"}),
    )


def refuse_unseen_in_lines(text: str) -> None:
    refuse_unseen("".join(text.splitlines()))


class BenchForm(forms.Form):
    name = TitleField(label=LABELS["name"], help_text="As it is called here: “Bench 1”.")
    line_system = forms.ChoiceField(label=LABELS["line_system"], choices=Bench.LineSystem.choices)
    drop_frame = forms.BooleanField(
        label=LABELS["drop_frame"], required=False, help_text="Only with 525 lines."
    )
    pre_roll = number_field(
        LABELS["pre_roll"], *PRE_ROLL, "How far both machines are wound back. Often 5."
    )
    source_run_up = number_field(
        LABELS["source_run_up"],
        *SOURCE_RUN_UP,
        "How long the camera should run before anything happens. Often 10.",
    )
    lock = number_field(
        LABELS["lock"],
        1,
        MOST_FRAMES,
        "From a standing start until the picture is steady. 5 seconds are 125 or 150 frames.",
    )
    relock = number_field(
        LABELS["relock"],
        1,
        MOST_FRAMES,
        "How long a playing machine’s picture rolls where pulses jump. Often 1 second.",
    )
    erase_gap = number_field(
        LABELS["erase_gap"],
        0,
        LONGEST_ERASE_GAP * 30,
        "How much tape the recorder wipes past an assemble. Try it on a tape that may be lost.",
    )
    meters = forms.MultipleChoiceField(
        label=LABELS["meters"],
        required=False,
        choices=[(meter.value, title) for meter, title in METERS.items()],
        widget=forms.CheckboxSelectMultiple,
    )
    who_to_ask = TextField(
        label=LABELS["who_to_ask"],
        required=False,
        max_length=120,
        validators=[refuse_unseen],
        help_text="A name, and where or how to reach them. Learners see it.",
    )
    local_rules = TextField(
        label=LABELS["local_rules"],
        required=False,
        max_length=1200,
        validators=[refuse_unseen_in_lines],
        widget=forms.Textarea(attrs={"rows": 6}),
        help_text="A rule a line. Lessons and checklists show them.",
    )

    def clean_local_rules(self) -> str:
        return "\n".join(self.cleaned_data["local_rules"].splitlines())

    def clean(self) -> dict[str, Any]:
        figures = super().clean() or {}
        if not self.errors:
            for figure, sentence in Bench(**figures).as_settings().refusals().items():
                self.add_error(figure, sentence)
        return figures


class BenchField(forms.ModelChoiceField):  # type: ignore[type-arg]
    """A bench by its name, and by the instructor's cohorts that work at it: `theirs`."""

    def label_from_instance(self, bench: Bench) -> str:
        cohorts = ", ".join(map(str, bench.theirs))  # type: ignore[attr-defined]
        return f"{bench} ({cohorts})" if cohorts else str(bench)


class BenchChoiceForm(forms.Form):
    """Which of an instructor's benches; nothing for the usual figures."""

    bench = BenchField(
        label="Bench",
        queryset=Bench.objects.none(),
        required=False,
        empty_label="the usual figures",
        error_messages={"invalid_choice": "You look after no such bench."},
    )

    def __init__(self, *args: Any, benches: Any, **options: Any) -> None:
        super().__init__(*args, **options)
        self.fields["bench"].queryset = benches  # type: ignore[attr-defined]
