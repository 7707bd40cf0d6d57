"""Reads: what a sitting may ask next, and which of it is asked."""

from collections.abc import Callable
from dataclasses import dataclass

from course.cohorts.equipping import bench_of
from course.cohorts.models import Person
from exercises.drills.kind import Kind
from exercises.mastery.sitting import Candidate, next_drill
from exercises.models import Sitting
from exercises.standing.own_progress import OwnProgress, own_progress_of
from exercises.standing.scores import progress_of


@dataclass(frozen=True)
class Offer:
    """A drill that can be asked; `rights` from the latest answer back."""

    kind: Kind
    rights: tuple[bool, ...]


def next_kind(sitting: Sitting, taken: list[str]) -> Kind:
    """The drill to ask next, from all that the person has answered so far.

    `taken` are the drills that the sitting has asked, in order.
    """
    found = {each.kind.slug: each for each in fitting(sitting, offers(sitting, taken))}
    candidates = [Candidate(slug=slug, rights=each.rights) for slug, each in found.items()]
    return found[next_drill(candidates, taken)].kind


def offers(sitting: Sitting, taken: list[str]) -> list[Offer]:
    """The instructors' own drills, then the register's; what they read only where it is named."""
    person, named = sitting.person, sitting.kinds
    drills = own_offers(person, named, taken)
    drills += [Offer(each.kind, tuple(each.rights)) for each in progress_of(person)]
    return [each for each in drills if each.kind.slug in named or not each.kind.by_hand]


def own_offers(person: Person, named: list[str], taken: list[str]) -> list[Offer]:
    """An instructor's drill has one question: once a sitting, and no more once it was right."""
    return [
        Offer(each.kind, ())
        for each in own_progress_of(person)
        if each.kind.slug not in taken and (each.kind.slug in named or not is_known(each))
    ]


def is_known(own: OwnProgress) -> bool:
    return not own.is_new and own.last is not None and own.last.result.right


def fitting(sitting: Sitting, found: list[Offer]) -> list[Offer]:
    """Those that the sitting asks for, on its skills, at the person's bench.

    A wish that nothing fulfils is passed over: a drill may have been retired meanwhile.
    """
    bench = bench_of(sitting.person).as_settings()
    wishes: list[Callable[[Kind], bool]] = [
        lambda kind: not sitting.kinds or kind.slug in sitting.kinds,
        lambda kind: not sitting.skills or bool(set(sitting.skills) & set(kind.skills)),
        lambda kind: kind.is_at(bench),
    ]
    for wish in wishes:
        found = [each for each in found if wish(each.kind)] or found
    return found
