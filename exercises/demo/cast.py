"""Who is at Quay Street Media Workshop, and what its learners believe. All invented."""

from dataclasses import dataclass, field
from typing import Any

PASSWORD = "run-up at quay street"  # noqa: S105 - printed by `manage.py start`; for the demo only
ADMINISTRATOR = ("keeper", "Silas Wend")
INSTRUCTOR = ("orla", "Orla Penhale")
FELLOW = ("fenn", "Fenn Tolliver")  # teaches one of the groups with her

# Figures and rules of their bench; a little off the usual ones, as every bench is.
BENCH: dict[str, Any] = {
    "name": "Quay Street bench",
    "line_system": "625",
    "pre_roll": 6,
    "source_run_up": 10,
    "lock": 130,
    "relock": 25,
    "erase_gap": 44,
    "meters": ["picture-needle", "vu", "tracking"],
    "who_to_ask": "Orla Penhale, in the office beside the edit room",
    "local_rules": """\
Sign in at the office before you switch on, and sign out when you have switched off.
No food and no drink in the edit room.
Covers stay closed. Only Orla, who is licensed for it, opens a machine, for cleaning too.
If a machine smells, smokes or is wet, switch off at the wall, if you reach it dry, and fetch Orla.
If a tape is stuck, leave the power on and your hands off, and fetch Orla.
Nobody carries a machine. Ask Orla to have it moved.
Label a tape before it goes into a machine. It goes back to its case when it comes out.
Whoever gets a shock sees a doctor the same day. In a fire, get out first, then call.""",
}


@dataclass(frozen=True, kw_only=True)
class Learner:
    """Somebody with beliefs, each given up after so many days of practice (`never`: 99).

    `days` are the days before today on which they practised, `answers` how many each day,
    `slips` how often in a hundred they answer wrongly without believing it.
    """

    sign_in_name: str
    name: str
    cohort: int
    beliefs: dict[str, int] = field(default_factory=dict)
    days: tuple[int, ...]
    answers: int = 9
    slips: int = 5


# `cohort` counts in the order of `groups.GROUPS`.
LEARNERS = (
    Learner(
        sign_in_name="wren",
        name="Wren Castell",
        cohort=0,
        beliefs={"assemble-ends-clean": 3, "no-source-run-up": 5},
        days=(24, 22, 17, 15, 10, 8, 3, 1),
    ),
    Learner(
        sign_in_name="bram",
        name="Bram Ottery",
        cohort=0,
        beliefs={"insert-lays-pulses": 99, "plays-without-pulses": 4},
        days=(25, 18, 16, 11, 9, 4, 2),
    ),
    Learner(
        sign_in_name="nell",
        name="Nell Harrow",
        cohort=0,
        days=(25, 23, 18, 11, 4),
        answers=12,
        slips=3,
    ),
    Learner(
        sign_in_name="idris",
        name="Idris Pell",
        cohort=0,
        beliefs={"no-master-run-up": 2, "mend-later": 99},
        days=(23, 16, 9, 7, 2),
        slips=8,
    ),
    Learner(
        sign_in_name="maeve",
        name="Maeve Sallow",
        cohort=0,
        beliefs={"insert-ends-ragged": 4, "tape-fault": 2},
        days=(24, 21, 17, 14, 10, 3),
    ),
    Learner(sign_in_name="corin", name="Corin Wraxall", cohort=0, days=(19,), answers=3),
    Learner(
        sign_in_name="tamsin",
        name="Tamsin Orrell",
        cohort=0,
        beliefs={"assemble-picks-tracks": 2, "insert-pushes-along": 3},
        days=(26, 20, 19, 13, 12, 6, 5),
    ),
    Learner(
        sign_in_name="jonah",
        name="Jonah Brace",
        cohort=0,
        beliefs={"tape-fault": 99, "replay-repairs": 99},
        days=(20, 13, 6),
        slips=10,
    ),
    Learner(
        sign_in_name="sorrel",
        name="Sorrel Vane",
        cohort=0,
        beliefs={"no-source-run-up": 2},
        days=(27, 26, 20, 13, 6, 5, 1),
        answers=12,
    ),
    Learner(
        sign_in_name="ewan",
        name="Ewan Thrush",
        cohort=0,
        beliefs={"assemble-picks-tracks": 99, "assemble-ends-clean": 2},
        days=(21, 19, 14, 7),
    ),
    Learner(
        sign_in_name="lotte",
        name="Lotte Marsh",
        cohort=0,
        beliefs={"sound-needs-no-pulses": 3},
        days=(22, 20, 15, 13, 8, 6, 1),
    ),
    Learner(sign_in_name="piran", name="Piran Locke", cohort=0, days=()),
    Learner(
        sign_in_name="hester",
        name="Hester Quill",
        cohort=1,
        beliefs={"insert-lays-pulses": 2},
        days=(20, 13, 6),
        answers=6,
    ),
    Learner(
        sign_in_name="odo",
        name="Odo Farrant",
        cohort=1,
        beliefs={"insert-takes-both": 2},
        days=(13, 6),
        answers=6,
        slips=12,
    ),
    Learner(sign_in_name="mabyn", name="Mabyn Trew", cohort=1, days=()),
    Learner(
        sign_in_name="perran",
        name="Perran Hoad",
        cohort=2,
        beliefs={"no-master-run-up": 2},
        days=(132, 118, 97, 76),
        answers=6,
    ),
    Learner(sign_in_name="isla", name="Isla Venn", cohort=2, days=(130, 109, 83), answers=6),
    Learner(sign_in_name="tobit", name="Tobit Rusk", cohort=2, days=(125,), answers=5, slips=30),
)


@dataclass(frozen=True, kw_only=True)
class Signed:
    """A decision of the instructor, so many days before today; `withdrawn` gives the reason."""

    sign_in_name: str
    state: str
    ago: int
    note: str = ""
    withdrawn: str = ""


SIGNED = (
    Signed(
        sign_in_name="nell",
        state="supervised",
        ago=11,
        note="Always with me in the room. Headphones on before the first edit.",
    ),
    Signed(sign_in_name="nell", state="alone", ago=3),
    Signed(sign_in_name="hester", state="supervised", ago=4),
    Signed(sign_in_name="perran", state="alone", ago=68),
    Signed(
        sign_in_name="isla",
        state="supervised",
        ago=75,
        note="Beside somebody of the Tuesday group, for the camera group’s film only.",
    ),
    Signed(sign_in_name="bram", state="not-yet", ago=9, note="We talk about blank tape first."),
    Signed(sign_in_name="maeve", state="supervised", ago=3),
    Signed(sign_in_name="sorrel", state="supervised", ago=6),
    Signed(
        sign_in_name="tamsin",
        state="supervised",
        ago=12,
        withdrawn="Two edits were made over the end of the master on Saturday. We look at run-up"
        " together before the next bench time.",
    ),
)
