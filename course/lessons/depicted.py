"""Checks of claims about the drawings, pictures and sounds of the lesson, and lip sync."""

from typing import Any

from course.lessons.blocks.edit_course import EditCourse
from course.lessons.blocks.figure import Figure
from course.lessons.blocks.levels import LevelsFigure
from course.lessons.blocks.scales import picture_scale
from course.lessons.blocks.sound import Heard
from course.lessons.figures import duration
from course.lessons.lesson import Answer, Lesson
from exercises.drills.kinds.spot_by_ear.described import over_line_up
from exercises.tape import Limits, Rate


def figure_says(lesson: Lesson, *, block: str, name: str, sentence: str) -> Answer:
    """Whether the words of a drawing, a picture or a sound have this sentence."""
    figure: Figure = lesson.figures(block)[name]
    return sentence in " ".join(figure.sentences())


def scale_place(lesson: Lesson, *, place: str, rate: str) -> Answer:
    """Where a named place of the picture level stands: “7.5 IRE”."""
    scale = picture_scale(Rate(rate))
    return scale.told(scale.places[place])


def level_drawn(lesson: Lesson, *, levels: str, name: str) -> Answer:
    """Where a mark or a range of a scale stands: “−10 to 0 VU”."""
    drawn: LevelsFigure = lesson.figures("levels")[levels]
    for level in drawn.levels:
        if level.name == name:
            return drawn.words(level)
    raise LookupError(f"no mark or range “{name}”")


def course_lasts(lesson: Lesson, *, edit_course: str, part: str) -> Answer:
    """How long a part of an edit lasts: pre_roll, length, post_roll, lock or unsettled."""
    drawn = _course(lesson, edit_course)
    return duration(getattr(drawn, part), Rate(drawn.rate))


def course_run_up(lesson: Lesson, *, edit_course: str, tape: str) -> Answer:
    """The run-up that there is on the source tape or on the edit master."""
    drawn = _course(lesson, edit_course)
    return duration(drawn.run_up[tape], Rate(drawn.rate))


def course_locked(lesson: Lesson, *, edit_course: str, tape: str) -> Answer:
    """How long before the edit in a machine is locked; below nothing, if it is late."""
    drawn = _course(lesson, edit_course)
    early = -drawn.locked(tape)
    return duration(early, Rate(drawn.rate)) if early >= 0 else "too late"


def course_code(lesson: Lesson, *, edit_course: str, tape: str, point: str) -> Answer:
    """The time code of a tape at a point of an edit: start, edit in, edit out or end."""
    drawn = _course(lesson, edit_course)
    times = {
        "start": -drawn.pre_roll,
        "edit in": 0,
        "edit out": drawn.length,
        "end": drawn.end,
    }
    return drawn.code(tape, times[point])


def sound_words(lesson: Lesson, *, sound: str) -> Answer:
    """The words that are heard in a sound."""
    stretch = _heard(lesson, sound).stretch
    runs = stretch.session.recorded().sound.laid.between(stretch.start, stretch.end)
    return " ".join(
        stretch.words(run) for run in runs if run.value.source in stretch.sounds
    ).strip()


def sound_pauses(lesson: Lesson, *, sound: str) -> Answer:
    """How loud the room gets in the pauses of a sound under automatic gain, in whole dB."""
    noise = _heard(lesson, sound).stretch.noisiest()
    return "soft" if noise is None else over_line_up(round(noise, -1))


def lip_sync_noticed(lesson: Lesson, *, frames: int, rate: str, sound: str) -> Answer:
    """Whether sound so many frames “early” or “late” is noticed: ITU-R BT.1359-1."""
    limits = {"early": Limits().sound_early, "late": Limits().sound_late}
    return frames * 1000 / Rate(rate).fraction > limits[sound]


def frames_unnoticed(lesson: Lesson, *, rate: str, sound: str) -> Answer:
    """The most whole frames that sound may be “early” or “late” and nobody notices."""
    frames = 0
    given: dict[str, Any] = {"rate": rate, "sound": sound}
    while not lip_sync_noticed(lesson, frames=frames + 1, **given):
        frames += 1
    return frames


def _course(lesson: Lesson, name: str) -> EditCourse:
    drawn: EditCourse = lesson.figures("edit-course")[name]
    return drawn


def _heard(lesson: Lesson, name: str) -> Heard:
    heard: Heard = lesson.figures("sound")[name]
    return heard
