"""EditSession documents that ask for much work in few words, each for work of another kind."""

from collections.abc import Callable
from random import Random
from typing import Any

Document = dict[str, Any]

LONG = 1_000_000_000
DAY = 24 * 60 * 60 * 30  # frames, nearly
REEL = {"tape 1": {"takes": [{"start": 0, "end": 100_000_000}]}}


def black(length: int) -> Document:
    return {"length": length, "recorded": [{"start": 0, "end": length, "what": "black"}]}


def insert(first: int, at: int, frames: int, **made: Any) -> Document:
    shot = {"source": "tape 1", "in": first, "out": first + frames, "at": at}
    return {"mode": "insert", "picture": True, "sound": True, **shot, **made}


def session(edits: list[Document], **more: Any) -> Document:
    return {"master": black(LONG), "sources": REEL, "edits": edits} | more


def day_long_drifts(count: int = 300) -> Document:
    """86,000 seconds in each, in every one of which the player stands otherwise."""
    frames = DAY - 10_000
    drifts = [{"drift": {"tracking": 1, "skew": 1, "seed": seed}} for seed in range(count)]
    return session(
        [insert(300, 300 + n * DAY, frames, player=each) for n, each in enumerate(drifts)]
    )


def plan_of(shots: int) -> Document:
    """A cut every few seconds from three reels, on blank tape; the sound now and then its own."""
    random, at = Random(5), 2000
    picture: list[Document] = []
    sound: list[Document] = []
    for _ in range(shots):
        first, frames = random.randint(300, 5000), random.randint(40, 200)
        shot = {"source": f"reel {random.randint(1, 3)}", "in": first, "out": first + frames}
        picture.append({**shot, "at": at})
        if random.random() < 0.6:
            sound.append({**shot, "at": at})
        at += frames + random.choice((0, 0, 20))
    reels = ("reel 1", "reel 2", "reel 3", "black")
    sources = {name: {"takes": [{"start": 0, "end": 100_000}]} for name in reels}
    return {
        "rate": "25",
        "master": {"length": at + 5000},
        "sources": sources,
        "edits": [],
        "brief": {"picture": picture, "sound": sound},
        "plan": True,
    }


def plan_of_one_reel(shots: int) -> Document:
    """All from one reel and apart, the sound always a little later than its picture."""
    picture: list[Document] = [
        {"source": "tape 1", "in": first, "out": first + 40, "at": 2000 + 41 * n}
        for n in range(shots)
        for first in [300 + 37 * n % 3000]
    ]
    return {
        "master": {"length": 1_000_000},
        "sources": REEL | {"black": {"takes": [{"start": 0, "end": 1_000_000}]}},
        "edits": [],
        "brief": {
            "picture": picture,
            "sound": [{**shot, "at": shot["at"] + 7} for shot in picture],
            "tolerance": 5,
        },
        "plan": True,
    }


def many_takes() -> Document:
    """Each of the edits lays ten thousand runs, over as many."""
    takes = [{"start": 100 * n, "end": 100 * n + 90} for n in range(10_000)]
    edits = [insert(0, 7 * n, 990_000) for n in range(300)]
    return session(edits, sources={"tape 1": {"takes": takes}})


def many_edits() -> Document:
    random = Random(1)
    return session(
        [insert(random.randrange(10**6), random.randrange(10**7), 9) for _ in range(40_000)]
    )


def many_passes() -> Document:
    recorded = [{"start": 9 * n, "end": 9 * n + 9, "what": f"tape {n % 3}"} for n in range(100_000)]
    return {"master": {"length": LONG, "recorded": recorded}, "sources": {}, "edits": []}


def kept_over_and_over() -> Document:
    """Thousands of ranges that stay untouched, each over the whole of a cut-up tape."""
    kept = [{"track": "picture", "start": n, "end": 10**6} for n in range(9_000)]
    edits = [insert(300 + n, 120 * n, 10) for n in range(4_000)]
    return session(edits, brief={"untouched": kept})


def words_under_automatic_gain() -> Document:
    """Each run is heard from where its recording began, word by word."""
    words = [{"start": 100 * n, "end": 100 * n + 40} for n in range(20_000)]
    sources = {"tape 1": {"takes": [{"start": 0, "end": 10**7, "marks": {"words": words}}]}}
    whole = insert(300, 0, 2_000_000, sound_level={"mode": "automatic"})
    return session([whole, *(insert(300, 250 * n, 9) for n in range(5_000))], sources=sources)


HEAVY: dict[str, tuple[str, Callable[[], Document]]] = {
    "300 drifts of a day": ("edits[", day_long_drifts),
    "a plan of 120 shots": ("plan: ", lambda: plan_of(120)),
    "a plan of 40 shots, sound apart": ("plan: ", lambda: plan_of_one_reel(40)),
    "a plan of 300 shots, sound apart": ("plan: ", lambda: plan_of_one_reel(300)),
    "10,000 takes in each of 300 edits": ("edits[", many_takes),
    "40,000 edits": ("edits[", many_edits),
    "100,000 passes": ("master.recorded[", many_passes),
    "9,000 ranges kept over all": ("brief: ", kept_over_and_over),
    "20,000 words, heard 5,000 times": ("edits: ", words_under_automatic_gain),
}
