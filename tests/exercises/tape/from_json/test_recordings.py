"""What a document says of how its recordings were made: read, and refused."""

import copy
from typing import Any

import pytest

from exercises.tape import (
    AutomaticGain,
    Bench,
    Carried,
    DocumentError,
    Drift,
    FaultKind,
    Levels,
    Limiter,
    Limits,
    Machines,
    Marks,
    Player,
    Rate,
    Recorder,
    SoundLevel,
    SoundMode,
    Span,
    faults,
    read_edit_session,
    simulate,
)

TAKE: dict[str, Any] = {
    "start": 100,
    "end": 900,
    "generation": 2,
    "levels": {"white": 90, "sound": -30, "room": -450},
    "chain": [430],
    "marks": {
        "words": [{"start": 100, "end": 120}, {"start": 120, "end": 140}],
        "breaths": [{"start": 890, "end": 900}],
        "noises": [{"start": 110, "end": 130}],
        "room_tone": [],
    },
    "sync": True,
}
EDIT: dict[str, Any] = {
    "mode": "assemble",
    "source": "A",
    "in": 300,
    "out": 400,
    "at": 500,
    "player": {"tracking": -20, "skew": 5, "drift": {"seed": 7, "tracking": 3, "skew": 1}},
    "recorder": {"name": "the lent one", "tracking": 4, "snr": 400},
    "picture_level": {"gain": -10},
    "sound_level": {"mode": "limiter", "gain": 60},
}
PASS = {
    "start": 0,
    "end": 500,
    "what": "opening",
    "levels": {"white": 60},
    "chain": [400],
    "marks": {"words": [{"start": 0, "end": 500}]},
    "recorder": {"name": "the lent one"},
}
TOLD: dict[str, Any] = {
    "bench": {
        "snr": 450,
        "limiter": {"threshold": 10, "ratio": 8},
        "automatic_gain": {"target": -10, "most": 150, "attack": 5, "release": 900},
        "limits": {"grade": 5, "skew": 7},
    },
    "master": {"length": 1000, "recorded": [PASS]},
    "sources": {"A": {"takes": [TAKE]}},
    "edits": [EDIT],
}


def test_take_is_read() -> None:
    take = read_edit_session(TOLD).sources["A"].takes[0]

    assert take.sync
    assert take.carried == Carried(
        Levels(white=90, sound=-30, room=-450),
        chain=(430,),
        marks=Marks(
            words=(Span(100, 120), Span(120, 140)),
            breaths=(Span(890, 900),),
            noises=(Span(110, 130),),
        ),
    )


def test_edit_is_read() -> None:
    assert read_edit_session(TOLD).edits[0].machines == Machines(
        player=Player(tracking=-20, skew=5, drift=Drift(7, tracking=3, skew=1)),
        recorder=Recorder("the lent one", tracking=4, snr=400),
        picture_gain=-10,
        sound=SoundLevel(SoundMode.LIMITER, 60),
    )


def test_bench_is_read() -> None:
    assert read_edit_session(TOLD).bench == Bench(
        Rate.R29_97,
        lock=150,
        relock=30,
        erase_gap=60,
        snr=450,
        limiter=Limiter(threshold=10, ratio=8),
        automatic_gain=AutomaticGain(target=-10, most=150, attack=5, release=900),
        limits=Limits(grade=5, skew=7),
    )


def test_pass_is_read_and_no_gain_changes_it() -> None:
    session = read_edit_session(TOLD | {"edits": []})

    made = session.master.picture.runs[0].value.made

    assert made.carried.levels == Levels(white=60)
    assert made.chain == (400,)
    assert made.machines.recorder == Recorder("the lent one")
    assert session.master.sound.runs[0].value.made == made
    found = faults(session.master, session.bench)
    assert [fault.measured.value for fault in found if fault.kind is FaultKind.FLAT_PICTURE] == [60]


def test_insert_is_read_like_an_assemble() -> None:
    document = changed("edits.0.mode", "insert")
    document["edits"][0] |= {"picture": True, "sound": False}

    assert (
        read_edit_session(document).edits[0].machines == read_edit_session(TOLD).edits[0].machines
    )


@pytest.mark.parametrize(
    ("path", "value"),
    [
        ("edits.0.player", {}),
        ("edits.0.recorder", {}),
        ("edits.0.picture_level", "automatic"),
        ("edits.0.sound_level", {}),
        ("sources.A.takes.0.levels", {}),
        ("sources.A.takes.0.marks", {}),
        ("sources.A.takes.0.chain", []),
        ("sources.A.takes.0.sync", False),
        ("bench.limits", {}),
        ("bench.limiter", {}),
        ("bench.automatic_gain", {}),
    ],
)
def test_saying_nothing_is_leaving_it_out(path: str, value: object) -> None:
    assert read_edit_session(changed(path, value)) == read_edit_session(changed(path, LEFT_OUT))


def test_levels_may_be_none() -> None:
    document = changed("sources.A.takes.0.levels", "none")

    assert read_edit_session(document).sources["A"].takes[0].carried.levels is None


LEFT_OUT = object()


def changed(path: str, value: object) -> dict[str, Any]:
    """The document with the value at ``path`` replaced, added or left out."""
    document = copy.deepcopy(TOLD)
    *way, last = [int(key) if key.isdigit() else key for key in path.split(".")]
    place: Any = document
    for key in way:
        place = place[key]
    if value is LEFT_OUT:
        del place[last]
    else:
        place[last] = value
    return document


T, E = "sources.A.takes.0", "edits.0"
REFUSED = [
    # Keys
    (f"{T}.levels.hue", 1, "sources.A.takes[0].levels.hue: is not known here"),
    (f"{T}.marks.coughs", [], "sources.A.takes[0].marks.coughs: is not known here"),
    (f"{T}.marks.words.0.text", "", "sources.A.takes[0].marks.words[0].text: is not known here"),
    (f"{T}.marks.words.0.end", LEFT_OUT, "sources.A.takes[0].marks.words[0].end: is missing"),
    (f"{T}.recorder", {}, "sources.A.takes[0].recorder: is not known here"),
    ("master.recorded.0.sync", True, "master.recorded[0].sync: is not known here"),
    (f"{E}.player.azimuth", 1, "edits[0].player.azimuth: is not known here"),
    (f"{E}.player.drift.seed", LEFT_OUT, "edits[0].player.drift.seed: is missing"),
    (f"{E}.recorder.skew", 1, "edits[0].recorder.skew: is not known here"),
    (f"{E}.picture_level.gain", LEFT_OUT, "edits[0].picture_level.gain: is missing"),
    (f"{E}.sound_level.release", 1, "edits[0].sound_level.release: is not known here"),
    (f"{E}.tracking", 1, "edits[0].tracking: is not known here"),
    ("bench.limits.hum", 1, "bench.limits.hum: is not known here"),
    ("bench.limiter.attack", 1, "bench.limiter.attack: is not known here"),
    # Shapes
    (f"{T}.levels", 100, "sources.A.takes[0].levels: must be an object, not 100"),
    (f"{T}.levels", "loud", 'sources.A.takes[0].levels: must be "none", not "loud"'),
    (f"{T}.levels", None, "sources.A.takes[0].levels: must be an object, not null"),
    (f"{T}.marks", [], "sources.A.takes[0].marks: must be an object, not a list"),
    (f"{T}.marks.words", {}, "sources.A.takes[0].marks.words: must be a list, not an object"),
    (f"{T}.chain", 430, "sources.A.takes[0].chain: must be a list, not 430"),
    (f"{T}.sync", 1, "sources.A.takes[0].sync: must be true or false, not 1"),
    (f"{E}.player", 3, "edits[0].player: must be an object, not 3"),
    (f"{E}.player.drift", 3, "edits[0].player.drift: must be an object, not 3"),
    (f"{E}.recorder", "R", 'edits[0].recorder: must be an object, not "R"'),
    (f"{E}.recorder.name", 1, "edits[0].recorder.name: must be text, not 1"),
    (f"{E}.picture_level", "high", 'edits[0].picture_level: must be "automatic", not "high"'),
    (f"{E}.picture_level", 3, "edits[0].picture_level: must be an object, not 3"),
    (
        f"{E}.sound_level",
        "limiter",
        'edits[0].sound_level: must be an object, not "limiter"',
    ),
    (
        f"{E}.sound_level.mode",
        "agc",
        'edits[0].sound_level.mode: must be "by hand" or "limiter" or "automatic", not "agc"',
    ),
    ("bench.limits", [], "bench.limits: must be an object, not a list"),
    # Numbers
    (f"{T}.levels.white", -1, "sources.A.takes[0].levels.white: must be at least 0, not -1"),
    (f"{T}.levels.white", 141, "sources.A.takes[0].levels.white: must be at most 140"),
    (f"{T}.levels.sound", 201, "sources.A.takes[0].levels.sound: must be at most 200"),
    (
        f"{T}.levels.sound",
        -901,
        "sources.A.takes[0].levels.sound: must be at least -900, not -901",
    ),
    (
        f"{T}.levels.sound",
        0.5,
        "sources.A.takes[0].levels.sound: must be a whole number, not 0.5",
    ),
    (f"{T}.chain.0", 99, "sources.A.takes[0].chain[0]: must be at least 100, not 99"),
    (f"{T}.chain.0", 901, "sources.A.takes[0].chain[0]: must be at most 900"),
    (f"{E}.player.tracking", 101, "edits[0].player.tracking: must be at most 100"),
    (f"{E}.player.skew", -201, "edits[0].player.skew: must be at least -200, not -201"),
    (f"{E}.player.drift.seed", -1, "edits[0].player.drift.seed: must be at least 0, not -1"),
    (
        f"{E}.player.drift.tracking",
        -1,
        "edits[0].player.drift.tracking: must be at least 0, not -1",
    ),
    (f"{E}.recorder.tracking", -101, "edits[0].recorder.tracking: must be at least -100, not -101"),
    (f"{E}.recorder.snr", 1000, "edits[0].recorder.snr: must be at most 900"),
    (f"{E}.picture_level.gain", 601, "edits[0].picture_level.gain: must be at most 600"),
    (
        f"{E}.sound_level.gain",
        True,
        "edits[0].sound_level.gain: must be a whole number, not true",
    ),
    ("bench.snr", 0, "bench.snr: must be at least 100, not 0"),
    ("bench.limiter.ratio", 0, "bench.limiter.ratio: must be at least 1, not 0"),
    ("bench.automatic_gain.release", 0, "bench.automatic_gain.release: must be at least 1, not 0"),
    ("bench.automatic_gain.most", -1, "bench.automatic_gain.most: must be at least 0, not -1"),
    ("bench.limits.grade", 6, "bench.limits.grade: must be at most 5"),
    ("bench.limits.grade", 0, "bench.limits.grade: must be at least 1, not 0"),
    ("bench.limits.recorders", 3, "bench.limits.recorders: must be at most 2"),
    # Ranges
    (
        f"{T}.marks.words.1.start",
        119,
        "sources.A.takes[0].marks.words[1].start: begins before the end of the one before it (120)",
    ),
    (
        f"{T}.marks.words.0.end",
        100,
        "sources.A.takes[0].marks.words[0].end: must be after start (100), not 100",
    ),
    (
        f"{T}.marks.words.0.start",
        99,
        "sources.A.takes[0].marks.words[0].start: is before the start of the recording (100)",
    ),
    (
        f"{T}.marks.breaths.0.end",
        901,
        "sources.A.takes[0].marks.breaths[0].end: is past the end of the recording (900)",
    ),
    (
        "master.recorded.0.marks.words.0.end",
        501,
        "master.recorded[0].marks.words[0].end: is past the end of the recording (500)",
    ),
    (
        f"{T}.chain",
        [430, 430, 430],
        "sources.A.takes[0].chain: has more recordings (3) than the generation (2)",
    ),
    (
        "bench.limits",
        {"flat_picture": 111},
        "bench.limits: flat_picture (111) must not be above clipped_picture (110)",
    ),
    (
        "bench.limits",
        {"sound_early": 100},
        "bench.limits: sound_early (100) must not be above sound_early_most (90)",
    ),
]


def test_drift_of_a_recording_over_a_day_long_is_refused() -> None:
    day = 24 * 3600 * 30
    document = changed("master.length", 10**9)
    document["edits"][0] |= {"in": 0, "out": day}
    simulate(document)

    document["edits"][0]["out"] += 1
    with pytest.raises(DocumentError) as refusal:
        simulate(document)

    assert str(refusal.value) == (
        "edits[0].player.drift: can't be told of a recording over a day long"
    )


@pytest.mark.parametrize(("path", "value", "line"), REFUSED)
def test_document_is_refused_with_the_path(path: str, value: object, line: str) -> None:
    with pytest.raises(DocumentError) as refusal:
        simulate(changed(path, value))

    assert str(refusal.value) == line
