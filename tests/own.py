"""Drills of an instructor, for tests: what is typed, and drills made of it."""

from io import BytesIO

from course.cohorts.models import Cohort, Person
from exercises.attempts import ask, submit
from exercises.desk import Text, publish, write
from exercises.forms.own import OwnForm, OwnPictureForm, OwnTextForm
from exercises.forms.own_mode import OwnModeForm
from exercises.models import OwnDrill, Upload
from exercises.signal.photographs import photograph
from tests.photographs import file_of, leads

# A picture over the middle of a shot that was assembled after a minute of black.
CUTAWAY = {
    "title": "A gull over the winch",
    "skill": "replacing-inside-it",
    "key": "a" * 32,
    "rate": "25",
    "lock": "5",
    "erase_gap": "2",
    "length": "00:10:00:00",
    "story": "Black was recorded for a minute, then the winch was assembled after it.",
    "row_1_start": "00:00:00:00",
    "row_1_end": "00:01:00:00",
    "row_1_what": "black",
    "row_1_pulses": "anew",
    "row_2_start": "00:01:00:00",
    "row_2_end": "00:01:30:00",
    "row_2_what": "both",
    "row_2_name": "the winch",
    "row_2_pulses": "on",
    "source": "Reel 4",
    "picture": "a gull on the railing",
    "sound": "wind",
    "take_1_start": "00:05:00:00",
    "take_1_end": "00:05:40:00",
    "tracks": "picture",
    "at": "00:01:10:00",
    "in_": "00:05:10:00",
    "out": "00:05:16:00",
    "freed": "nothing",
    "wish": "The gull is to be seen for six seconds; the winch goes on being heard.",
    "instead": "",
}
NOTE = {
    "title": "A note for tomorrow",
    "skill": "planning-and-time-code",
    "key": "b" * 32,
    "task": "Write the note that you leave at our bench.",
    "rubric": "where the film ends\nwhich recorder",
    "least": "20",
    "most": "500",
}

LEADS = {
    "title": "The leads of our recorder",
    "skill": "planning-and-time-code",
    "key": "f" * 32,
    "task": "Photograph the back of the recorder with every lead connected.",
    "rubric": "both sound leads\nthe picture lead",
}


def text_of(form: OwnForm) -> Text:
    assert form.is_valid(), form.errors
    return form.text()


def mode_text(**changed: str) -> Text:
    return text_of(OwnModeForm(CUTAWAY | changed))


def note_text(**changed: str) -> Text:
    return text_of(OwnTextForm(NOTE | changed))


def picture_sent(person: Person, drill: OwnDrill) -> Upload:
    """An answer to a drill that asks for a picture."""
    content = file_of(leads((600, 400)))
    made = photograph(BytesIO(content), len(content))
    asked = ask(person, drill.kind)
    return submit(asked, {"picture": made.digest}, photograph=made).upload


def leads_text(**changed: str) -> Text:
    return text_of(OwnPictureForm(LEADS | changed))


def published(by: Person, cohort: Cohort, *, form: str = "mode") -> OwnDrill:
    text, key = {
        "mode": (mode_text(), CUTAWAY["key"]),
        "text": (note_text(), NOTE["key"]),
        "picture": (leads_text(), LEADS["key"]),
    }[form]
    drill = write(by, form, text, key=key)
    publish(drill, by, [cohort])
    return OwnDrill.objects.get(pk=drill.pk)
