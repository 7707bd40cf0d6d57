"""What can happen at a bench, with four answers each: by what it is about."""

from exercises.drills.kinds.care_and_safety.case import CareCase
from exercises.drills.kinds.care_and_safety.cases import (
    covers,
    doubtful,
    electricity,
    emergencies,
    fit,
    handling,
    machines,
    magnets,
    people,
    rooms,
    unfit,
    warming,
)

CASES: tuple[CareCase, ...] = (
    *warming.CASES,
    *rooms.CASES,
    *unfit.CASES,
    *doubtful.CASES,
    *fit.CASES,
    *magnets.CASES,
    *handling.CASES,
    *machines.CASES,
    *covers.CASES,
    *electricity.CASES,
    *emergencies.CASES,
    *people.CASES,
)
