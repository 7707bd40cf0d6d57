"""Learners who answer without a pause, in a site of their own: `python -m … THREADS`.

Each answer that was acknowledged is a line of the output, its number. It goes on until it is
stopped.
"""

import os
import sys
from concurrent.futures import ThreadPoolExecutor
from io import BytesIO
from itertools import count
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from course.cohorts.models import Person
    from exercises.models import Attempt, OwnDrill

PICTURE_EVERY = 5


def main(threads: int) -> None:
    os.environ["DJANGO_SETTINGS_MODULE"] = "course.settings"
    import django

    django.setup()
    from tests.own import published
    from tests.people import CohortFactory, instructor, learner

    cohort = CohortFactory.create(name="Slipway group")
    leads = published(instructor("Ines Marlow"), cohort, form="picture")
    people = [learner(f"Mina{number} Tarrant", cohort) for number in range(threads)]
    print("ready", flush=True)
    with ThreadPoolExecutor(threads) as pool:
        list(pool.map(lambda person: go_on(person, leads), people))


def go_on(person: "Person", leads: "OwnDrill") -> None:
    for number in count(1):
        attempt = send_picture(person, leads) if not number % PICTURE_EVERY else answer(person)
        print(attempt.pk, flush=True)


def answer(person: "Person") -> "Attempt":
    from exercises.drills.register import KINDS
    from exercises.practice.attempts import ask, submit
    from tests.answers import right_answer

    asked = ask(person, KINDS["care-and-safety"])
    return submit(asked, right_answer(asked))


def send_picture(person: "Person", leads: "OwnDrill") -> "Attempt":
    from exercises.practice.attempts import ask, submit
    from exercises.signal.photographs import photograph
    from tests.photographs import file_of
    from tests.photographs import leads as drawn

    content = file_of(drawn((60, 40)))
    made = photograph(BytesIO(content), len(content))
    asked = ask(person, leads.kind)
    return submit(asked, {"picture": made.digest}, photograph=made)


if __name__ == "__main__":
    main(int(sys.argv[1]))
