"""Every action of the hands passes one of these: `form_of` finds which."""

from django.http import QueryDict

from exercises.bench.forms.base import HandsForm
from exercises.bench.forms.controls import (
    ModeForm,
    MonitorForm,
    PictureLevelForm,
    RecorderTrackingForm,
    SkewForm,
    SoundLevelForm,
    TrackingForm,
)
from exercises.bench.forms.edits import (
    HandInForm,
    LookBackForm,
    MarkForm,
    RecordForm,
    RehearseForm,
    StopForm,
    UnmarkForm,
)
from exercises.bench.forms.transport import (
    LoadForm,
    NextTakeForm,
    PlayForm,
    StepForm,
    TakeOutForm,
    WindForm,
)
from exercises.tape import Bench
from exercises.worktop.done import BenchRefused

FORMS: dict[str, type[HandsForm]] = {
    form.action: form
    for form in (
        LoadForm,
        TakeOutForm,
        WindForm,
        StepForm,
        NextTakeForm,
        PlayForm,
        TrackingForm,
        SkewForm,
        RecorderTrackingForm,
        ModeForm,
        PictureLevelForm,
        SoundLevelForm,
        MonitorForm,
        MarkForm,
        UnmarkForm,
        RehearseForm,
        RecordForm,
        StopForm,
        LookBackForm,
        HandInForm,
    )
}


def form_of(sent: QueryDict, bench: Bench) -> HandsForm:
    """Raises BenchRefused where no such action is known."""
    kind = FORMS.get(sent.get("action", ""))
    if kind is None:
        raise BenchRefused("This bench has no such control.")
    return kind(sent, bench=bench)
