"""Read the bench: what is right follows from what is shown, and nothing else tells it."""

import re
from collections import Counter
from dataclasses import replace

import pytest

from exercises.drills.judging.reply import grade
from exercises.drills.kinds.read_the_bench import KIND as READ_THE_BENCH
from exercises.drills.kinds.read_the_bench import (
    codes,
    erasing,
    lamps,
    meters,
    monitors,
)
from exercises.drills.kinds.read_the_bench.loops import (
    LAST_ON,
    LEVEL_OFF,
    NOTHING_OFF,
    OTHERS_OFF,
    Loop,
)
from exercises.drills.question import Question
from exercises.drills.setting.settings import USUAL
from tests.exercises.drills.made import made, many

SEEDS = range(1000)
WHITE = 76.9  # IRE: the white bar at 525 lines (SMPTE EG 1)


def questions() -> list[Question]:
    return many(READ_THE_BENCH, len(SEEDS))


def of(name: str) -> list[Question]:
    return [each for each in questions() if each.situation == name]


def texts(question: Question) -> list[str]:
    return [question.asks[0].in_words(letter) for letter in question.asks[0].every()]


def right(question: Question) -> str:
    return question.asks[0].in_words(question.right["reply"])


def facts(question: Question) -> dict[str, str]:
    return dict(question.shown["facts"])


def test_nine_things_are_read_and_each_about_as_often() -> None:
    counts = Counter(question.situation for question in questions())

    assert len(counts) == 9
    assert max(counts.values()) < 1.5 * min(counts.values())


@pytest.mark.parametrize(
    ("loop", "reads", "reply"),
    [
        (Loop((False, False, False), 1), 153.8, LAST_ON),
        (Loop((True, False, True), 1), 51.3, OTHERS_OFF),
        (Loop((False, False, True), 1), 76.9, NOTHING_OFF),
        (Loop((False, False, True), 0.67), 51.5, LEVEL_OFF),
    ],
)
def test_ends_of_a_loop_tell_a_level_that_is_wrong_from_a_line_that_is(
    loop: Loop, reads: float, reply: str
) -> None:
    """Derived here: twice the level without an end, two thirds with two."""
    assert loop.reads(WHITE) == pytest.approx(reads, abs=0.1)
    assert loop.right(WHITE) == reply


def test_reading_of_a_loop_is_the_one_that_its_ends_make() -> None:
    for question in of("looped"):
        shown = facts(question)
        on = [value for term, value in shown.items() if term.startswith("75 Ω")].count("on")
        off_scale = shown["The white bar reads"] == "off the top of the display"

        assert off_scale == (on == 0) == (right(question) == LAST_ON)
        assert (right(question) == OTHERS_OFF) == (on == 2)


def test_level_of_two_thirds_can_be_the_level_itself() -> None:
    """So that the reading alone does not give the answer away."""
    found = {right(each) for each in of("looped") if two_thirds(facts(each)["The white bar reads"])}

    assert {OTHERS_OFF, LEVEL_OFF} <= found


def two_thirds(reading: str) -> bool:
    found = re.match(r"(\d+) (IRE|mV)", reading)
    return found is not None and 0.6 < int(found[1]) / (WHITE if found[2] == "IRE" else 700) < 0.75


def test_dew_comes_before_all_other_lamps() -> None:
    for question in of("lamps"):
        shown = facts(question)
        dew, reference, servo = (shown[name] for name in ("Dew", "Reference", "Servo lock"))
        expected = (
            lamps.STOP
            if dew == "lit"
            else lamps.LEAD
            if reference == "dark"
            else lamps.GO_ON
            if servo == "lit"
            else lamps.WAIT
        )

        assert right(question) == expected


def test_recorder_that_records_shows_the_tape_only_by_heads_of_its_own() -> None:
    recording = [each for each in of("monitor") if facts(each)["Recorder"].startswith("record")]

    for question in recording:
        heads = facts(question)["Heads that play while it records"] == "present"
        tape = heads and facts(question)["Its output switch"] == "tape"
        assert right(question) == (monitors.TAPE if tape else monitors.INPUT)


def test_insert_leaves_the_channel_that_is_not_chosen() -> None:
    for question in of("insert-on-channels"):
        shown = facts(question)
        chosen = shown["Chosen for the insert"]
        told = right(question).lower()

        for number in (1, 2):
            stays = shown[f"On channel {number} so far"].lower() in told
            assert stays == (str(number) not in chosen)


def test_knock_that_a_vu_meter_calls_soft_may_be_as_loud_as_is_permitted() -> None:
    knocks = [each for each in of("two-meters") if "winch" in facts(each)["Heard"]]
    stay = [facts(each) for each in knocks if right(each) == meters.STAY]

    assert stay
    for shown in stay:
        assert shown["VU meter, at its highest"].startswith("−")
        assert re.search(r"^[0-6] dB under|^at its", shown["Peak meter, at its highest"])


def test_recorder_without_erase_heads_on_the_drum_makes_no_insert_and_no_clean_edit_in() -> None:
    """A full-width head ahead of the drum is all that such a recorder has (common practice)."""
    for question in of("erase-heads"):
        shown, told = facts(question), right(question)
        over = shown["On the edit master at the edit in"] in (
            "an older recording",
            "the spare end of the last shot",
        )
        insert = shown["Edit"].startswith("insert")
        if shown["Erase heads on the drum"] == "fitted":
            assert told == (erasing.CLEAN if insert else erasing.WIPED)
        elif insert:
            assert told == erasing.CANNOT
        else:
            assert told == (erasing.COLOURED if over else erasing.WIPED)


def test_recorder_that_wipes_nothing_is_not_said_to_wipe() -> None:
    settings = replace(USUAL, bench=replace(USUAL.bench, erase_gap=0), either_rate=False)
    asked = [made(READ_THE_BENCH, seed, settings) for seed in range(200)]
    replies = [texts(each) for each in asked if each.situation == "erase-heads"]

    assert replies
    assert all(erasing.WIPED not in each for each in replies)


def test_code_is_left_by_an_insert_unless_it_lies_where_the_insert_records() -> None:
    for question in of("code-of-the-master"):
        shown, told = facts(question), right(question)
        over = "channel 2" in shown["Time code lies on"] and re.search(
            r"channel 2|both sound channels", shown["Edit"]
        )
        if shown["Edit"].startswith("insert"):
            assert told == (codes.NONE if over else codes.STAYS)
        else:
            from_player = "player" in shown["When it lays code, the recorder"]
            assert told == (codes.COPIED if from_player else codes.RUNS_ON)


def test_counter_is_gone_by_only_from_a_frame_that_is_found_again_and_over_pulses() -> None:
    for question in of("counter-to-zero"):
        shown = facts(question)
        alike = shown["The counter was set to zero"] in codes.ALIKE
        expected = (
            codes.BY_CODE
            if shown["Time code on the tape"] != "none"
            else codes.SLIPS
            if shown["From there to the shot"] != "pulses throughout"
            else codes.NOWHERE
            if alike
            else codes.BY_COUNTER
        )

        assert right(question) == expected


def test_wrong_reply_is_told_why() -> None:
    question = of("looped")[0]
    wrong = next(each for each in question.asks[0].every() if each != question.right["reply"])
    verdict = grade(question, {"reply": wrong})

    assert (verdict.right, verdict.score) == (False, 0)
    assert verdict.feedback["why_not"] == question.key["whys"][wrong]
