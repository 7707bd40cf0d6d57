from collections import Counter

from exercises.drills.asks import Json
from exercises.drills.kind import slug_of
from exercises.drills.kinds.choose_the_mode import KIND as CHOOSE_MODE
from exercises.drills.kinds.choose_the_mode.answers import CANNOT
from exercises.drills.kinds.choose_the_mode.situations import WEIGHTS
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import USUAL
from exercises.tape import TapeMap
from tests.exercises.drills.frames import Machines, threaded
from tests.exercises.drills.made import made, many
from tests.exercises.drills.skeletons import skeleton

MANY = 400
TRACKS = {
    "assemble": ("picture", "sound"),
    "insert-picture": ("picture",),
    "insert-sound": ("sound",),
    "insert-both": ("picture", "sound"),
}


def asked(count: int = MANY) -> list[Question]:
    return many(CHOOSE_MODE, count)


def attempt(key: Json, mode: str) -> Machines:
    """The master, on machines that owe the drill nothing, after the change in one mode."""
    change = key["change"]
    edit = {name: change[name] for name in ("source", "in", "out", "at")}
    edit["mode"] = "assemble" if mode == "assemble" else "insert"
    edit |= {track: track in TRACKS[mode] for track in ("picture", "sound")}
    return threaded(key["session"], [*key["session"]["edits"], edit])


def gives(machines: Machines, want: Json) -> bool:
    """Whether every wanted frame is there; what rolled before may roll on."""
    start, end = want["start"], want["end"]
    wanted = [(want["source"], want["frame"] + n) for n in range(end - start)]
    if want["mixed"]:
        return False
    if not want["rolls"]:
        return machines.clean(want["track"])[start:end] == wanted
    copies = getattr(machines, want["track"])[start:end]
    there = [copy[:2] if copy else None for copy in copies]
    return there == wanted and all(machines.control[start:end])


def test_right_answer_is_right_for_an_independent_judge() -> None:
    for seed, question in enumerate(asked(15)):
        rights = [mode for mode in TRACKS if is_right(question.key, mode)]

        assert (rights or [CANNOT]) == [question.right["mode"]], seed


def is_right(key: Json, mode: str) -> bool:
    machines = attempt(key, mode)
    return all(gives(machines, want) for want in key["wants"])


def test_what_must_stay_is_all_that_plays_outside_the_change() -> None:
    """Nobody may lose anything that the wish doesn't give up, after the change or before it."""
    for seed, question in enumerate(asked(15)):
        change, before = question.key["change"], threaded(question.key["session"])
        at, end = change["at"], change["at"] + change["out"] - change["in"]

        for track in ("picture", "sound"):
            kept = stays(question.key, track)
            plays = {frame for frame, copy in enumerate(before.clean(track)) if copy}
            assert {frame for frame in plays if frame < at} <= kept, seed
            if track in change["tracks"]:
                assert not kept & set(range(at, end)), seed


def stays(key: Json, track: str) -> set[int]:
    """The frames of a track that are to play as before."""
    return {
        frame
        for want in key["wants"]
        if want["track"] == track and not want["new"] and not want["moved"]
        for frame in range(want["start"], want["end"])
    }


def test_new_wants_are_the_change_on_its_tracks() -> None:
    for question in asked(200):
        change = question.key["change"]
        new = [want for want in question.key["wants"] if want["new"]]
        frames = {
            (want["track"], want["start"] + n): (want["source"], want["frame"] + n)
            for want in new
            for n in range(want["end"] - want["start"])
        }

        assert frames == {
            (track, change["at"] + n): (change["source"], change["in"] + n)
            for track in change["tracks"]
            for n in range(change["out"] - change["in"])
        }


def test_every_situation_is_reached() -> None:
    assert {question.situation for question in asked()} == {
        slug_of(each.__name__) for each in WEIGHTS
    }
    assert len(WEIGHTS) >= 10


def test_right_answers_are_spread_over_the_options() -> None:
    counts = Counter(question.right["mode"] for question in asked())

    assert sorted(counts) == ["assemble", "cannot", "insert-both", "insert-picture", "insert-sound"]
    assert max(counts.values()) <= 0.35 * MANY
    assert min(counts.values()) >= 0.08 * MANY


def test_situation_has_several_wordings() -> None:
    for situation in WEIGHTS:
        drawn = [situation(Scene(Draw(seed), USUAL)) for seed in range(30)]
        found = {skeleton(f"{opening(each.scene)} {each.story} {each.wish}") for each in drawn}

        assert len(found) >= 4, situation


def test_map_before_the_answer_marks_no_faults() -> None:
    for question in asked(100):
        around = TapeMap.from_json(question.shown["map"])

        assert around.faults is None
        assert [mark.name for mark in around.marks] == ["edit in", "edit out"]


def test_facts_are_those_of_the_change() -> None:
    question = made(CHOOSE_MODE, 5)

    assert dict(question.shown["facts"]) == {
        "Source": "Tape 3: a hand in front of the lens. Heard with it: an accordion on the quay.",
        "The take runs": "from 00:08:42:00 to 00:09:05:06",
        "Edit in and out there": "from 00:08:49:21 to 00:08:59:20",
        "On the edit master": "from 00:02:06:12 to 00:02:16:11, 9 seconds 24 frames",
        "Bench": "Bench 2, 25 frames a second, pre-roll 5 seconds",
    }
