"""What the replies say of tapes, against the tape model."""

import pytest

from exercises.drills.can_this_bench import CAN_THIS_BENCH
from exercises.drills.can_this_bench.effect import Effect
from exercises.drills.can_this_bench.question import EFFECTS
from exercises.drills.telling_apart import subsets
from exercises.mastery.misconceptions import MISCONCEPTIONS
from exercises.tape import Assemble, Bench, Condition, Insert, Source, Take, Tape, play, record

EACH = pytest.mark.parametrize("effect", EFFECTS, ids=lambda each: each.name)
BENCH = Bench.default()
SHOTS = Source("Tape 1", (Take(0, 6000),))
FILM = record(Tape.blank(6000).with_pass(0, 600, "black"), Assemble(SHOTS, 300, 1500, 600), BENCH)
END = 1800


def clean(tape: Tape, start: int, end: int) -> bool:
    states = {s.state for s in play(tape, BENCH) if s.end > start and s.start < end}
    return states == {Condition.CLEAN}


def inserted(tape: Tape, at: int, frames: int, *, picture: bool, sound: bool) -> Tape:
    edit = Insert(SHOTS, 3000, 3000 + frames, at, picture=picture, sound=sound)
    return record(tape, edit, BENCH)


@EACH
def test_effect_has_four_different_answers(effect: Effect) -> None:
    assert len(set(effect.texts())) == 4


@EACH
def test_every_set_of_its_beliefs_has_an_answer_of_its_own(effect: Effect) -> None:
    sets = subsets(effect.beliefs())

    assert len({effect.believed(held) for held in sets}) == len(sets)
    assert [belief for belief in effect.beliefs() if belief not in MISCONCEPTIONS] == []


@EACH
def test_effect_is_asked_about(effect: Effect) -> None:
    asked = {CAN_THIS_BENCH.make(seed).situation for seed in range(400)}

    assert effect.name.replace(" ", "-") in asked


def test_cutaway_leaves_the_sound_and_all_around_it() -> None:
    tape = inserted(FILM, 1000, 120, picture=True, sound=False)

    assert tape.sound == FILM.sound
    assert clean(tape, 30, END)


def test_assemble_in_the_middle_takes_the_sound_and_ends_raggedly() -> None:
    tape = record(FILM, Assemble(SHOTS, 3000, 3120, 1000), BENCH)

    assert tape.sound != FILM.sound
    assert not clean(tape, 1120, 1200)


def test_sound_past_the_end_plays_once_black_is_assembled() -> None:
    alone = inserted(FILM, END, 240, picture=False, sound=True)
    black = Source("black", (Take(0, 6000),))
    laid = record(FILM, Assemble(black, 1000, 1240, END), BENCH)

    assert not clean(alone, END, END + 240)
    assert clean(inserted(laid, END, 240, picture=False, sound=True), END, END + 240)


def test_voice_may_begin_before_its_picture() -> None:
    tape = Tape.blank(6000).with_pass(0, 6000, "black")
    tape = inserted(tape, 1000, 300, picture=True, sound=True)
    picture = record(tape, Insert(SHOTS, 4060, 4300, 1300, picture=True, sound=False), BENCH)
    voice = record(picture, Insert(SHOTS, 4000, 4300, 1240, picture=False, sound=True), BENCH)

    assert clean(voice, 1000, 1540)
    at_cut = voice.sound.at(1300)
    assert at_cut is not None
    assert at_cut.tail(1300).value.frame == 4060


def test_nothing_moves_to_make_room() -> None:
    tape = inserted(FILM, 1000, 180, picture=True, sound=True)
    before, after = FILM.picture.at(1200), tape.picture.at(1200)

    assert before is not None
    assert after is not None
    assert after.tail(1200).value == before.tail(1200).value
