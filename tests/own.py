"""Drills of an instructor, for tests: what is typed, and drills made of it."""

from io import BytesIO

from course.cohorts.models import Cohort, Person
from exercises.desk.forms.bad_edit import OwnBadEditForm
from exercises.desk.forms.mode import OwnModeForm
from exercises.desk.forms.own import OwnForm, OwnPictureForm, OwnTextForm
from exercises.desk.verbs import Text, publish, write
from exercises.models import OwnDrill, Upload
from exercises.practice.attempts import ask, submit
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
# An insert past the end of the pulses, where a minute of black and one shot were assembled.
UNSEEN = {
    "title": "The barge that nobody saw",
    "skill": "tracks-and-pulses",
    "key": "c" * 32,
    "rate": "25",
    "lock": "5",
    "erase_gap": "2",
    "length": "00:10:00:00",
    "story": "The tape had a minute of black on it and was blank after that.",
    "row_1_start": "00:00:00:00",
    "row_1_end": "00:01:00:00",
    "row_1_what": "black",
    "row_1_pulses": "anew",
    "edit_1_mode": "assemble",
    "edit_1_at": "00:01:00:00",
    "edit_1_end": "00:01:20:00",
    "edit_1_run_up": "10",
    "edit_1_beyond": "5",
    "edit_1_picture": "the keeper at his crank",
    "edit_1_sound": "the crank and the chain",
    "edit_1_purpose": "The keeper opens the bridge.",
    "edit_2_mode": "insert-both",
    "edit_2_at": "00:01:20:00",
    "edit_2_end": "00:01:28:00",
    "edit_2_run_up": "10",
    "edit_2_beyond": "5",
    "edit_2_picture": "a barge passing",
    "edit_2_sound": "its engine",
    "edit_2_purpose": "The barge goes through.",
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


def edits_text(**changed: str) -> Text:
    return text_of(OwnBadEditForm(UNSEEN | changed))


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
    typed, text = {
        "mode": (CUTAWAY, mode_text),
        "bad-edit": (UNSEEN, edits_text),
        "text": (NOTE, note_text),
        "picture": (LEADS, leads_text),
    }[form]
    drill = write(by, form, text(), key=f"{by.pk}-{typed['key']}"[:32])
    publish(drill, by, [cohort])
    return OwnDrill.objects.get(pk=drill.pk)
