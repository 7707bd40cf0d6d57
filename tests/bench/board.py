"""The readiness board of 500 people with a million attempts, beside that of 12, in one run.

Attempts are put in by the thousand, summaries made by the command's own code and proved equal
to the attempts; then both pages are fetched in turn through the whole site. SQLite in a folder
of its own, or an empty database that DATABASE_URL names.
"""

import argparse
import json
import os
import statistics
import tempfile
import time
from collections.abc import Iterator
from datetime import timedelta
from random import Random
from typing import Any

from tests.bench.stopwatch import milliseconds

ROUNDS = 25
AT_ONCE = 5000
MOST = 3.0  # times the small page's time, at most


def main() -> None:
    options = read_options()
    with tempfile.TemporaryDirectory(prefix="run-up-bench-") as folder:
        prepare(folder)
        small = make_cohort("Small", 12)
        large = make_cohort("Large", options.people)
        seconds = fill(small, 12 * options.attempts // options.people)
        seconds += fill(large, options.attempts)
        proof = prove()
        report(options, measure(small, large), seconds, proof)


def read_options() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--people", type=int, default=500)
    parser.add_argument("--attempts", type=int, default=1_000_000)
    return parser.parse_args()


def prepare(folder: str) -> None:
    os.environ |= {
        "DJANGO_SETTINGS_MODULE": "course.settings",
        "DATA_DIR": folder,
        "SECRET_KEY": "only-for-the-bench-" * 3,
        "ALLOWED_HOSTS": "testserver",
        "HTTPS": "false",
        "DEBUG": "false",
    }
    import django
    from django.core.management import call_command

    django.setup()
    call_command("migrate", verbosity=0)
    call_command("collectstatic", interactive=False, verbosity=0)


def make_cohort(name: str, people: int) -> Any:
    from course.cohorts.models import Cohort, Membership, Person

    learners = Person.objects.bulk_create(
        Person(sign_in_name=f"{name.lower()}{n}", name=f"{name} {n:04}") for n in range(people)
    )
    cohort = Cohort.objects.create(name=name)
    Membership.objects.bulk_create(Membership(cohort=cohort, person=one) for one in learners)
    return cohort


def fill(cohort: Any, attempts: int) -> float:
    """Put in so many attempts, spread over people and skills; seconds taken."""
    from exercises.models import Asked, Attempt

    started = time.perf_counter()
    rows = made_up(cohort, attempts)
    for _ in range(0, attempts, AT_ONCE):
        pairs = [pair for pair, _ in zip(rows, range(AT_ONCE), strict=False)]
        Asked.objects.bulk_create(asked for asked, _ in pairs)
        Attempt.objects.bulk_create(attempt for _, attempt in pairs)
    return time.perf_counter() - started


def made_up(cohort: Any, attempts: int) -> Iterator[tuple[Any, Any]]:
    """Questions and answers that look like people's, without a question in them."""
    from django.utils import timezone

    from exercises.drills.register import KINDS
    from exercises.mastery.misconceptions import MISCONCEPTIONS
    from exercises.models import Asked, Attempt

    draw = Random(cohort.name).random
    people = list(cohort.learners.values_list("pk", flat=True))
    skills = sorted((slug, skill) for slug, kind in KINDS.items() for skill in kind.skills)
    beliefs = list(MISCONCEPTIONS)
    begun = timezone.now() - timedelta(days=28)
    for number in range(attempts):
        person = people[number % len(people)]
        drill, skill = skills[number // len(people) % len(skills)]
        right = draw() < 0.5 + person % 40 / 100
        at = begun + timedelta(days=28 * number / attempts)
        token = f"{cohort.pk}-{number}"
        shared: dict[str, Any] = {"person_id": person, "drill": drill, "seed": number}
        asked = Asked(**shared, token=token, revision=1, question={}, asked_at=at, latest=False)
        attempt = Attempt(
            **shared,
            asked=asked,
            skill=skill,
            situation="bench",
            revision=1,
            answer={},
            right=right,
            score=100 if right else 0,
            misconceptions=[] if right else [beliefs[int(draw() * 2) + person % 20]],
            feedback={},
            asked_at=at,
            answered_at=at + timedelta(seconds=40),
            key=token,
        )
        yield asked, attempt


def prove() -> dict[str, float]:
    """Make all summaries, prove them equal; seconds that each took."""
    from exercises.standing.summaries import differing, rebuild, who_has_answered

    people = who_has_answered()
    making = milliseconds(lambda: rebuild(people)) / 1000
    proving = milliseconds(lambda: check(list(differing(people)))) / 1000
    return {"summaries": len(people), "rebuild_s": making, "check_s": proving}


def check(wrong: list[Any]) -> None:
    if wrong:
        raise SystemExit(f"{len(wrong)} summaries differ from their attempts: {wrong[:3]}")


def measure(small: Any, large: Any) -> dict[str, Any]:
    """Both pages in turn: their times in milliseconds and their queries."""
    from django.test import Client

    from course.cohorts.models import Person

    teacher = Person.objects.create(sign_in_name="teacher", name="Teacher", role="instructor")
    client = Client()
    client.force_login(teacher)
    for cohort in (small, large):
        cohort.instructors.add(teacher)
        client.get(cohort.get_absolute_url())
    times: dict[str, list[float]] = {"small": [], "large": []}
    for _ in range(ROUNDS):
        for name, cohort in (("small", small), ("large", large)):
            times[name].append(milliseconds(lambda at=cohort: client.get(at.get_absolute_url())))  # type: ignore[misc]
    return {
        "small_ms": statistics.median(times["small"]),
        "large_ms": statistics.median(times["large"]),
        "small_queries": queries(client, small),
        "large_queries": queries(client, large),
    }


def queries(client: Any, cohort: Any) -> int:
    from django.db import connection
    from django.test.utils import CaptureQueriesContext

    with CaptureQueriesContext(connection) as captured:
        assert client.get(cohort.get_absolute_url()).status_code == 200
    return len(captured)


def report(
    options: argparse.Namespace, pages: dict[str, Any], filling: float, proof: dict[str, float]
) -> None:
    from django.db import connection

    ratio = pages["large_ms"] / pages["small_ms"]
    print(f"{options.people} people, {options.attempts:,} attempts, {connection.vendor}")
    print(f"  filled in {filling:.0f} s, summaries made in {proof['rebuild_s']:.1f} s")
    print(f"  all {proof['summaries']:.0f} proved equal in {proof['check_s']:.1f} s")
    for name in ("small", "large"):
        print(f"  {name}: {pages[f'{name}_ms']:.1f} ms, {pages[f'{name}_queries']} queries")
    print(f"  large ÷ small: {ratio:.2f} (at most {MOST})")
    print(json.dumps({**pages, **proof, "ratio": ratio, "database": connection.vendor}))


if __name__ == "__main__":
    main()
