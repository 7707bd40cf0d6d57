"""What the replies say of tapes, against the tape model."""

import re
from itertools import product

import pytest

from exercises.drills.beliefs.telling_apart import subsets
from exercises.drills.judging.rules import ONE_RECORDER, OTHERS_TAPE
from exercises.drills.kinds.can_this_bench import KIND as CAN_THIS_BENCH
from exercises.drills.kinds.can_this_bench import answers
from exercises.drills.kinds.can_this_bench.effect import OPTIONS
from exercises.drills.kinds.can_this_bench.effects import EFFECTS
from exercises.drills.setting.draw import Draw
from exercises.mastery.misconceptions import MISCONCEPTIONS
from exercises.tape import Assemble, Bench, Condition, Insert, Source, Take, Tape, play, record
from tests.exercises.drills.made import many

ENOUGH = 40
RECORDERS = (ONE_RECORDER, OTHERS_TAPE)
ANSWERS = [text for name, text in vars(answers).items() if name.isupper()]
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


def test_there_are_enough_effects_and_each_is_asked_about() -> None:
    asked = {question.situation for question in many(CAN_THIS_BENCH, 1_000)}

    assert asked == {effect.name.replace(" ", "-") for effect in EFFECTS}
    assert len(asked) == len(EFFECTS) >= ENOUGH


def test_effect_has_four_different_answers_and_the_right_one_among_them() -> None:
    for effect, seed in product(EFFECTS, range(20)):
        texts = effect.texts(Draw(seed))

        assert len(set(texts)) == len(texts) == OPTIONS, (effect.name, seed)
        assert {effect.right, *effect.held} <= set(texts), (effect.name, seed)


def test_every_set_of_its_beliefs_has_an_answer_of_its_own() -> None:
    for effect in EFFECTS:
        sets = subsets(effect.beliefs)

        assert len({effect.believed(held) for held in sets}) == len(sets), effect.name
        assert set(effect.held) <= set(effect.wrong), effect.name
        assert set(effect.beliefs) <= set(MISCONCEPTIONS), effect.name


def test_answer_is_right_for_one_effect_and_wrong_for_another() -> None:
    for answer in ANSWERS:
        right = [effect.name for effect in EFFECTS if effect.right == answer]
        wrong = [effect.name for effect in EFFECTS if answer in effect.wrong]

        assert len(right) >= 2, answer
        assert len(wrong) >= len(right), answer


def test_effects_answer_in_the_same_words() -> None:
    said = {text for effect in EFFECTS for text in effect.whys}

    assert said == set(ANSWERS)


def test_film_is_built_on_one_recorder_and_anothers_tape_is_asked_about() -> None:
    """Common practice, and lesson 5."""
    rights = {rule: {each.right for each in EFFECTS if each.rule == rule} for rule in RECORDERS}

    assert rights == {ONE_RECORDER: {answers.WAIT}, OTHERS_TAPE: {answers.TRIAL}}


def test_recorders_tracking_is_turned_only_while_it_plays() -> None:
    """Lesson 5: while it records, it stays at its fixed position."""
    turned = [effect.wish for effect in EFFECTS if effect.right == answers.RECORDER_TRACKING]

    assert turned
    assert all(re.search("Nothing is recorded|can’t be recorded on", wish) for wish in turned)


@pytest.mark.parametrize(
    "name", ["an insert without erase heads on the drum", "a film of inserts planned"]
)
def test_drum_without_erase_heads_makes_no_clean_insert(name: str) -> None:
    """Erasing by the drum’s own heads, or not: mrbetamax.com, videocide.com, m2w.net."""
    effect = next(each for each in EFFECTS if each.name == name)

    assert answers.INSERT_PICTURE in effect.wrong
    assert "false colour" in effect.wrong[answers.INSERT_PICTURE]


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


def test_hole_is_filled_by_no_single_recording() -> None:
    """Lesson 7: neither mode fills it and joins what follows."""
    tape = record(FILM, Assemble(SHOTS, 2000, 2600, END + 180), BENCH)
    insert = inserted(tape, END, 180, picture=True, sound=True)
    assemble = record(tape, Assemble(SHOTS, 3000, 3180, END), BENCH)

    assert not clean(insert, END, END + 780)
    assert not clean(assemble, END, END + 780)


def test_late_last_shot_is_mended_by_one_assemble() -> None:
    late = record(FILM, Assemble(SHOTS, 2000, 2300, END + 2), BENCH)

    assert not clean(late, END, END + 300)
    assert clean(record(late, Assemble(SHOTS, 2000, 2300, END), BENCH), END, END + 300)


def test_early_mark_costs_two_frames_and_nothing_else() -> None:
    assert clean(record(FILM, Assemble(SHOTS, 2000, 2300, END - 2), BENCH), 30, END + 298)


def test_take_without_run_up_begins_unsteady_even_behind_black() -> None:
    late = Source("Tape 2", (Take(0, 600),))
    assert not clean(record(FILM, Assemble(late, 0, 300, END), BENCH), END, END + 300)


def test_edit_across_takes_that_touch_rolls() -> None:
    touching = Source("Tape 2", (Take(0, 600), Take(600, 1500)))
    one = record(FILM, Assemble(touching, 400, 900, END), BENCH)
    first = record(FILM, Assemble(touching, 400, 600, END), BENCH)
    two = record(first, Assemble(touching, 800, 1100, END + 200), BENCH)

    assert not clean(one, END, END + 500)
    assert clean(two, END, END + 500)


def test_black_that_stands_plays_between_two_inserts() -> None:
    tape = Tape.blank(6000).with_pass(0, 6000, "black")
    tape = inserted(tape, 1000, 300, picture=True, sound=True)

    assert clean(inserted(tape, 1360, 300, picture=True, sound=True), 30, 1660)
