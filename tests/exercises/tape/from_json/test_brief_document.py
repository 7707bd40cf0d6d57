"""What a document asks of a session: a brief, the pace, a plan; and what is refused."""

from typing import Any

import pytest

from exercises.tape import Brief, DocumentError, Kept, Pace, Wanted, read_edit_session, simulate

Document = dict[str, Any]

SHOT = {"source": "A", "in": 300, "out": 400, "at": 500}


def document(**asked: object) -> Document:
    return {
        "master": {"length": 1000, "recorded": [{"start": 0, "end": 1000, "what": "leader"}]},
        "sources": {"A": {"takes": [{"start": 0, "end": 1500}]}},
        "edits": [{"mode": "insert", "picture": True, "sound": True, **SHOT}],
        **asked,
    }


def refusal(asked: Document) -> str:
    with pytest.raises(DocumentError) as refused:
        read_edit_session(asked)
    return str(refused.value)


def test_brief_is_read() -> None:
    session = read_edit_session(
        document(
            brief={
                "picture": [SHOT, {**SHOT, "at": 600, "tolerance": 0}],
                "sound": [{"source": "leader", "in": 0, "out": 10, "at": 0}],
                "tolerance": 2,
                "untouched": [{"track": "control", "start": 0, "end": 1000}],
                "highest_generation": 3,
                "black": "leader",
                "after": 1,
            },
            pace={"set_up": 30, "shuttle": 20},
        )
    )

    assert session.brief == Brief(
        (Wanted("picture", "A", 300, 400, 500, 2), Wanted("picture", "A", 300, 400, 600, 0)),
        (Wanted("sound", "leader", 0, 10, 0, 2),),
        (Kept("control", 0, 1000),),
        highest_generation=3,
        black="leader",
    )
    assert (session.after, session.plans) == (1, False)
    assert session.pace == Pace(150, 60, set_up=30, change=1800, shuttle=20)


def test_brief_may_ask_for_nothing() -> None:
    session = read_edit_session(document(brief={}))

    assert (session.brief, session.pace, session.plans) == (Brief(), None, False)


def test_brief_after_an_edit_speaks_of_the_master_as_it_left_it() -> None:
    kept = {"untouched": [{"track": "picture", "start": 0, "end": 1000}]}

    touched: Any = simulate(document(brief=kept))
    untouched: Any = simulate(document(brief={**kept, "after": 1}))

    assert [each["kind"] for each in touched["judgement"]["differences"]] == ["touched"]
    assert untouched["judgement"]["differences"] == []
    assert untouched["judgement"]["economy"]["recordings"] == 0


def test_document_without_a_brief_is_not_judged() -> None:
    assert sorted(simulate(document())) == ["faults", "states", "tracks"]


def shots(**shot: object) -> Document:
    return {"brief": {"picture": [{**SHOT, **shot}]}}


def untouched(**kept: object) -> Document:
    return {"brief": {"untouched": [{"track": "sound", "start": 0, "end": 10, **kept}]}}


@pytest.mark.parametrize(
    ("asked", "message"),
    [
        ({"brief": []}, "brief: must be an object, not a list"),
        ({"brief": {"video": []}}, "brief.video: is not known here"),
        ({"brief": {"picture": {}}}, "brief.picture: must be a list, not an object"),
        ({"brief": {"tolerance": -1}}, "brief.tolerance: must be at least 0, not -1"),
        ({"brief": {"tolerance": 1.5}}, "brief.tolerance: must be a whole number, not 1.5"),
        (
            {"brief": {"highest_generation": 0}},
            "brief.highest_generation: must be at least 1, not 0",
        ),
        ({"brief": {"black": "B"}}, "brief.black: is neither one of the sources nor on the master"),
        ({"brief": {"after": 2}}, "brief.after: must be at most 1"),
        (
            shots(source="B"),
            "brief.picture[0].source: is neither one of the sources nor on the master",
        ),
        (shots(out=300), "brief.picture[0].out: must be after in (300), not 300"),
        (
            shots(at=901),
            "brief.picture[0].at: the shot would run past the end of the tape (1000)",
        ),
        (shots(tolerance=True), "brief.picture[0].tolerance: must be a whole number, not true"),
        (shots(mode="insert"), "brief.picture[0].mode: is not known here"),
        (
            {"brief": {"sound": [SHOT, {**SHOT, "at": 599}]}},
            "brief.sound[1].at: begins before the end of the one before it (600)",
        ),
        (
            {"brief": {"sound": [{"source": "A", "in": 1, "out": 2}]}},
            "brief.sound[0].at: is missing",
        ),
        (
            untouched(track="video"),
            'brief.untouched[0].track: must be "picture" or "sound" or "control", not "video"',
        ),
        (untouched(end=0), "brief.untouched[0].end: must be after start (0), not 0"),
        (untouched(end=1001), "brief.untouched[0].end: is past the end of the tape (1000)"),
        (
            {
                "brief": {
                    "picture": [{**SHOT, "at": 0}, SHOT],
                    "untouched": [{"track": "picture", "start": 599, "end": 700}],
                }
            },
            "brief.untouched[0]: lies over brief.picture[1], which is wanted there",
        ),
        ({"plan": True}, "plan: is said only where there is a brief"),
        ({"pace": {}}, "pace: is said only where there is a brief"),
        ({"brief": {}, "plan": 1}, "plan: must be true or false, not 1"),
        ({"brief": {}, "pace": {"shuttle": 0}}, "pace.shuttle: must be at least 1, not 0"),
        ({"brief": {}, "pace": {"speed": 1}}, "pace.speed: is not known here"),
    ],
)
def test_what_can_not_be_asked_is_refused_with_its_path(asked: Document, message: str) -> None:
    assert refusal(document(**asked)) == message
