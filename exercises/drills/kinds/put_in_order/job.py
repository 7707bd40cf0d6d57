"""What an edit is for, and what is special this time: the parts that procedures are made from."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from exercises.drills.beliefs.telling_apart import MOST
from exercises.drills.judging.rules import Rule
from exercises.drills.kinds.put_in_order.decoy import Decoy
from exercises.drills.kinds.put_in_order.procedure import Before, Flaw, Procedure
from exercises.drills.kinds.put_in_order.six_steps import NEEDS, RULES
from exercises.drills.kinds.put_in_order.steps import SAID_LONGER
from exercises.drills.setting.draw import Draw

MOST_DECOYS = 3
REWORDED = 0.3  # how often a step is said otherwise, where it can be
# How likely are modes and marks of other edits, what any edit may have, and what belongs to a
# circumstance.
MODES, MARKS, OTHER, SPECIAL = 0.27, 0.24, 0.43, 0.25


@dataclass(frozen=True, slots=True, kw_only=True)
class OrderedJob:
    """An edit: its six steps, and decoys for them.

    `marks` and `modes` are those of other edits. Of each group, and of `others`, one at most is
    drawn.

    `first` are steps that come before the six. `tags` say what it records, and where.
    """

    name: str
    task: str
    steps: Mapping[str, str]
    marks: Sequence[Decoy]
    modes: Sequence[Decoy]
    others: Sequence[Decoy]
    rule: Rule
    tags: frozenset[str]
    first: Mapping[str, str] = field(default_factory=dict)
    rules: Sequence[Before] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Circumstance:
    """What is special this time: steps before the six, before recording, and after them.

    Without a `rule`, feedback names the job’s. A job fits that has all tags of `only` and none
    of `never`. `otherwise` says some of its steps in other words.
    """

    name: str
    told: str
    rule: Rule | None = None
    first: Mapping[str, str] = field(default_factory=dict)
    again: Mapping[str, str] = field(default_factory=dict)
    last: Mapping[str, str] = field(default_factory=dict)
    rules: Sequence[Before] = ()
    flaws: Sequence[Flaw] = ()
    decoys: Sequence[Decoy] = ()
    needs: Mapping[str, str] = field(default_factory=dict)
    otherwise: Mapping[str, str] = field(default_factory=dict)
    only: frozenset[str] = frozenset()
    never: frozenset[str] = frozenset()

    def fits(self, job: OrderedJob) -> bool:
        return self.only <= job.tags and not self.never & job.tags


def made(job: OrderedJob, special: Circumstance, draw: Draw) -> Procedure:
    """The procedure, with one to three decoys drawn for it."""
    decoys = drawn(job, special, draw)
    return Procedure(
        name=f"{job.name}, {special.name}",
        task=f"{job.task} {special.told}",
        steps=worded(
            in_order(job, special),
            {**special.otherwise, "record": SAID_LONGER[job.steps["record"]]},
            draw,
        ),
        rules=(*special.rules, *job.rules, *RULES),
        flaws=flaws_of(special, decoys),
        rule=special.rule or job.rule,
        decoys={decoy.step: (decoy.text, decoy.why) for decoy in decoys},
        needs={**NEEDS, **special.needs},
    )


def in_order(job: OrderedJob, special: Circumstance) -> dict[str, str]:
    """Its steps in an order that works."""
    till_rehearsed = [step for step in job.steps if step not in ("record", "look")]
    return {
        **special.first,
        **job.first,
        **{step: job.steps[step] for step in till_rehearsed},
        **special.again,
        "record": job.steps["record"],
        "look": job.steps["look"],
        **special.last,
    }


def worded(steps: Mapping[str, str], otherwise: Mapping[str, str], draw: Draw) -> dict[str, str]:
    """The steps, some of them in other words."""
    other = {step: text for step, text in otherwise.items() if draw.chance(REWORDED)}
    return {**steps, **other}


def drawn(job: OrderedJob, special: Circumstance, draw: Draw) -> list[Decoy]:
    """One to three decoys, none of whose texts is one of the steps’."""
    mode, mark, other = map(draw.pick, (job.modes, job.marks, job.others))
    chances = {mode: MODES, mark: MARKS, other: OTHER}
    offered = [*special.decoys, *chances]
    likely = [decoy for decoy in offered if draw.chance(chances.get(decoy, SPECIAL))]
    found = {decoy.instead or decoy.step: decoy for decoy in likely or [draw.pick(offered)]}
    texts = set(in_order(job, special).values())
    return [decoy for decoy in found.values() if decoy.text not in texts][:MOST_DECOYS]


def flaws_of(special: Circumstance, decoys: Sequence[Decoy]) -> tuple[Flaw, ...]:
    """What believers do: as many beliefs as can be told apart, each once."""
    found: dict[str, Flaw] = {}
    for flaw in (*(flaw for decoy in decoys for flaw in decoy.flaws), *special.flaws):
        taken = {flaw.step for flaw in found.values()} | {each.instead for each in found.values()}
        if flaw.step not in taken:
            found.setdefault(flaw.belief, flaw)
    return tuple(found.values())[:MOST]
