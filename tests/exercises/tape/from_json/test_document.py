"""EditSession documents: the worked example to the letter, and everything that is refused."""

import copy
import json
from typing import Any

import pytest

from exercises.tape import DocumentError, Rate, answer_text, read_edit_session, simulate
from exercises.tape.from_json.document import read_document

WORKED: dict[str, Any] = {
    "rate": "29.97",
    "bench": {"lock": 150, "relock": 30, "erase_gap": 60},
    "master": {
        "length": 3000,
        "recorded": [{"start": 0, "end": 900, "what": "black", "generation": 1}],
    },
    "sources": {"A": {"takes": [{"start": 0, "end": 1500, "generation": 1}]}},
    "edits": [
        {"mode": "assemble", "source": "A", "in": 300, "out": 450, "at": 900},
        {
            "mode": "insert",
            "picture": True,
            "sound": False,
            "source": "A",
            "in": 200,
            "out": 260,
            "at": 950,
        },
    ],
}

LEFT_OUT = object()


def laid(start: int, end: int, source: str, first: int, generation: int) -> dict[str, Any]:
    return {
        "start": start,
        "end": end,
        "source": source,
        "in": first,
        "generation": generation,
        "settled": True,
    }


def state(start: int, end: int, name: str, edit: int | None) -> dict[str, Any]:
    return {"start": start, "end": end, "state": name, "edit": edit}


def test_worked_example_has_its_answer() -> None:
    assert simulate(WORKED) == {
        "tracks": {
            "control": [{"start": 0, "end": 1050}],
            "picture": [
                laid(0, 900, "black", 0, 1),
                laid(900, 950, "A", 300, 2),
                laid(950, 1010, "A", 200, 2),
                laid(1010, 1050, "A", 410, 2),
            ],
            "sound": [laid(0, 900, "black", 0, 1), laid(900, 1050, "A", 300, 2)],
        },
        "states": [
            state(0, 30, "relock", None),
            state(30, 1050, "clean", None),
            state(1050, 1110, "no-control", 0),
            state(1110, 3000, "no-control", None),
        ],
        "faults": [],
    }


def test_what_may_be_left_out_has_its_default() -> None:
    short = changed("rate", LEFT_OUT)
    del short["bench"], short["master"]["recorded"][0]["generation"]
    del short["sources"]["A"]["takes"][0]["generation"]

    assert read_edit_session(short) == read_edit_session(WORKED)
    assert read_edit_session(short).bench.rate is Rate.R29_97


def test_bench_of_25_has_its_own_defaults() -> None:
    bench = read_edit_session(changed("rate", "25") | {"bench": {"relock": 7}}).bench

    assert (bench.lock, bench.relock, bench.erase_gap) == (125, 7, 50)


@pytest.mark.parametrize("name", ["", "Tape 3", "Möwe\n\u2028", "\ud800", "__class__"])
def test_answer_is_one_line_of_ascii_whatever_a_source_is_called(name: str) -> None:
    document = changed("sources", {name: WORKED["sources"]["A"]})
    for edit in document["edits"]:
        edit["source"] = name

    text = answer_text(json.dumps(document).encode())

    assert text.isascii()
    assert text.splitlines() == [text]
    assert json.loads(text)["tracks"]["sound"][1]["source"] == name


def test_master_of_no_length_has_no_states() -> None:
    document = {"master": {"length": 0}, "sources": {}, "edits": []}

    assert simulate(document) == {
        "tracks": {"control": [], "picture": [], "sound": []},
        "states": [],
        "faults": [],
    }


def changed(path: str, value: object) -> dict[str, Any]:
    """The worked example with the value at ``path`` replaced, added or left out."""
    document = copy.deepcopy(WORKED)
    *way, last = [int(key) if key.isdigit() else key for key in path.split(".")]
    place: Any = document
    for key in way:
        place = place[key]
    if value is LEFT_OUT:
        del place[last]
    else:
        place[last] = value
    return document


REFUSED = [
    # Keys
    ("colour", 1, "colour: is not known here"),
    ("bench.colour", 1, "bench.colour: is not known here"),
    ("bench.a b\n", 1, 'bench["a b\\n"]: is not known here'),
    ("master.colour", 1, "master.colour: is not known here"),
    ("master.recorded.0.in", 1, "master.recorded[0].in: is not known here"),
    ("sources.A.name", "A", "sources.A.name: is not known here"),
    ("sources.A.takes.0.what", "x", "sources.A.takes[0].what: is not known here"),
    ("edits.0.colour", 1, "edits[0].colour: is not known here"),
    ("edits.1.colour", 1, "edits[1].colour: is not known here"),
    ("master", LEFT_OUT, "master: is missing"),
    ("sources", LEFT_OUT, "sources: is missing"),
    ("edits", LEFT_OUT, "edits: is missing"),
    ("master.length", LEFT_OUT, "master.length: is missing"),
    ("master.recorded.0.start", LEFT_OUT, "master.recorded[0].start: is missing"),
    ("master.recorded.0.end", LEFT_OUT, "master.recorded[0].end: is missing"),
    ("master.recorded.0.what", LEFT_OUT, "master.recorded[0].what: is missing"),
    ("sources.A.takes", LEFT_OUT, "sources.A.takes: is missing"),
    ("sources.A.takes.0.start", LEFT_OUT, "sources.A.takes[0].start: is missing"),
    ("sources.A.takes.0.end", LEFT_OUT, "sources.A.takes[0].end: is missing"),
    ("edits.0.mode", LEFT_OUT, "edits[0].mode: is missing"),
    ("edits.0.source", LEFT_OUT, "edits[0].source: is missing"),
    ("edits.0.in", LEFT_OUT, "edits[0].in: is missing"),
    ("edits.0.out", LEFT_OUT, "edits[0].out: is missing"),
    ("edits.0.at", LEFT_OUT, "edits[0].at: is missing"),
    ("edits.1.picture", LEFT_OUT, "edits[1].picture: is missing"),
    ("edits.1.sound", LEFT_OUT, "edits[1].sound: is missing"),
    # Shapes
    ("bench", [], "bench: must be an object, not a list"),
    ("bench", None, "bench: must be an object, not null"),
    ("master", 3000, "master: must be an object, not 3000"),
    ("master.recorded", {}, "master.recorded: must be a list, not an object"),
    ("master.recorded", None, "master.recorded: must be a list, not null"),
    ("master.recorded.0", 0, "master.recorded[0]: must be an object, not 0"),
    ("sources", [], "sources: must be an object, not a list"),
    ("sources.A", [], "sources.A: must be an object, not a list"),
    ("sources.A.takes", "x", 'sources.A.takes: must be a list, not "x"'),
    ("sources.A.takes.0", [0, 9], "sources.A.takes[0]: must be an object, not a list"),
    ("edits", {}, "edits: must be a list, not an object"),
    ("edits.0", "assemble", 'edits[0]: must be an object, not "assemble"'),
    # Numbers
    ("master.length", -1, "master.length: must be at least 0, not -1"),
    ("master.length", 1e3, "master.length: must be a whole number, not 1000.0"),
    ("bench.lock", -1, "bench.lock: must be at least 0, not -1"),
    ("bench.relock", 1.5, "bench.relock: must be a whole number, not 1.5"),
    ("bench.erase_gap", "60", 'bench.erase_gap: must be a whole number, not "60"'),
    ("bench.lock", None, "bench.lock: must be a whole number, not null"),
    ("edits.0.in", True, "edits[0].in: must be a whole number, not true"),
    ("edits.0.in", -1, "edits[0].in: must be at least 0, not -1"),
    ("edits.0.in", 300.0, "edits[0].in: must be a whole number, not 300.0"),
    ("edits.0.out", "450", 'edits[0].out: must be a whole number, not "450"'),
    ("edits.0.out", float("inf"), "edits[0].out: must be a whole number, not Infinity"),
    ("edits.0.at", float("nan"), "edits[0].at: must be a whole number, not NaN"),
    ("edits.0.at", -5, "edits[0].at: must be at least 0, not -5"),
    ("edits.0.at", [900], "edits[0].at: must be a whole number, not a list"),
    ("edits.0.at", 10**9 + 1, "edits[0].at: must be at most 1000000000"),
    ("edits.0.at", 10**400, "edits[0].at: must be at most 1000000000"),
    ("edits.0.at", -(10**400), "edits[0].at: must be at least 0, not a number beyond all bounds"),
    (
        "sources.A.takes.0.generation",
        0,
        "sources.A.takes[0].generation: must be at least 1, not 0",
    ),
    (
        "master.recorded.0.generation",
        False,
        "master.recorded[0].generation: must be a whole number, not false",
    ),
    # Ranges
    ("master.recorded.0.end", 0, "master.recorded[0].end: must be after start (0), not 0"),
    (
        "master.recorded.0.end",
        3001,
        "master.recorded[0].end: is past the end of the tape (3000)",
    ),
    (
        "master.recorded",
        [
            {"start": 0, "end": 10, "what": "a"},
            {"start": 9, "end": 20, "what": "b"},
        ],
        "master.recorded[1].start: begins before the end of the one before it (10)",
    ),
    (
        "sources.A.takes.0.start",
        1500,
        "sources.A.takes[0].end: must be after start (1500), not 1500",
    ),
    (
        "sources.A.takes",
        [{"start": 5, "end": 10}, {"start": 0, "end": 5}],
        "sources.A.takes[1].start: begins before the end of the one before it (10)",
    ),
    ("edits.0.out", 300, "edits[0].out: must be after in (300), not 300"),
    ("edits.0.out", 299, "edits[0].out: must be after in (300), not 299"),
    (
        "edits.0.at",
        2851,
        "edits[0].at: the recording would run past the end of the tape (3000)",
    ),
    # Words
    ("rate", "30", 'rate: must be "29.97" or "25", not "30"'),
    ("rate", 25, 'rate: must be "29.97" or "25", not 25'),
    ("rate", None, 'rate: must be "29.97" or "25", not null'),
    ("master.recorded.0.what", 5, "master.recorded[0].what: must be text, not 5"),
    ("edits.0.mode", "Assemble", 'edits[0].mode: must be "assemble" or "insert", not "Assemble"'),
    ("edits.0.mode", {}, 'edits[0].mode: must be "assemble" or "insert", not an object'),
    ("edits.0.source", "B", "edits[0].source: is not one of the sources"),
    ("edits.0.source", 1, "edits[0].source: must be text, not 1"),
    ("edits.0.source", ["A"], "edits[0].source: must be text, not a list"),
    (
        "edits.0.picture",
        True,
        "edits[0].picture: is not said by an assemble: it records picture and sound",
    ),
    ("edits.1.picture", 1, "edits[1].picture: must be true or false, not 1"),
    ("edits.1.sound", "no", 'edits[1].sound: must be true or false, not "no"'),
    ("edits.1.picture", False, "edits[1]: an insert records at least one of picture and sound"),
]


@pytest.mark.parametrize(("path", "value", "line"), REFUSED)
def test_document_is_refused_with_the_path(path: str, value: object, line: str) -> None:
    document = changed(path, value)

    with pytest.raises(DocumentError) as refusal:
        simulate(document)

    assert str(refusal.value) == line


@pytest.mark.parametrize("document", [None, [], "x", 1, True])
def test_document_that_is_no_object_is_refused(document: object) -> None:
    with pytest.raises(DocumentError, match=r"^document: must be an object, not "):
        simulate(document)


def test_key_that_is_not_text_is_refused() -> None:
    with pytest.raises(DocumentError, match=r"^sources: has a key that is not text: 1$"):
        simulate(WORKED | {"sources": {1: {"takes": []}}})


TEXTS = [
    (b"", "document: is empty"),
    (b" \n", "document: is empty"),
    (b"\xff{}", "document: is not UTF-8 text: byte 0 does not fit"),
    (b"{", "document: is not JSON: Expecting property name enclosed in double quotes"),
    (b"{} {}", "document: is not JSON: Extra data"),
    (b"{'a': 1}", "document: is not JSON: Expecting property name enclosed in double quotes"),
    (b"[" * 100_000, "document: is nested too deeply"),
    (b'{"a":' * 100_000, "document: is nested too deeply"),
    (b"9" * 10_000, "document: must be an object, not a number beyond all bounds"),
    (b'{"rate": "25", "rate": "25"}', "rate: stands twice"),
    (b'{"master": {"length": 1, "length": 1}}', "sources: is missing"),
    (
        b'{"master": {"length": 1, "length": 1}, "sources": {}, "edits": []}',
        "master.length: stands twice",
    ),
    (
        b'{"master": {"length": 1}, "sources": {"A": {}, "A": {}}, "edits": []}',
        "sources.A: stands twice",
    ),
    (b'{"master": {"length": NaN}, "sources": {}, "edits": []}', "master.length: must be a whole"),
    (b'{"master": {"length": 1E2}, "sources": {}, "edits": []}', "master.length: must be a whole"),
    (
        b'{"master": {"length": 1e999}, "sources": {}, "edits": []}',
        "master.length: must be a whole number, not Infinity",
    ),
    (
        b'{"master": {"length": ' + b"9" * 10_000 + b'}, "sources": {}, "edits": []}',
        "master.length: must be at most 1000000000",
    ),
]


@pytest.mark.parametrize(("raw", "line"), TEXTS)
def test_text_is_refused_in_one_line(raw: bytes, line: str) -> None:
    with pytest.raises(DocumentError) as refusal:
        answer_text(raw)

    assert str(refusal.value).startswith(line)
    assert str(refusal.value).splitlines() == [str(refusal.value)]


def test_text_with_a_byte_order_mark_is_read() -> None:
    assert read_document(b"\xef\xbb\xbf{}") == {}
