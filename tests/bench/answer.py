"""Answers a second under gunicorn, 16 learners at once, beside a floor in the same run.

The floor is the same stack with a signed-in view that inserts one row and renders a tiny
template. Rounds of both alternate; the ratio is of their medians.
"""

import json
import os
import socket
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from http.client import HTTPConnection
from typing import Any, NamedTuple

LEARNERS = 16
ANSWERS = 480  # a round
ROUNDS = 3
CSRF = "b" * 32


class Request(NamedTuple):
    path: str
    body: str
    session: str


def main() -> None:
    with tempfile.TemporaryDirectory(prefix="run-up-bench-") as folder:
        prepare(folder)
        rounds = make_rounds()
        port = free_port()
        server = start_server(port)
        try:
            wait_for(port)
            report([(rate(port, floor), rate(port, answers)) for floor, answers in rounds])
        finally:
            server.terminate()
            server.wait()


def prepare(folder: str) -> None:
    """An empty site of our own; a DATABASE_URL that is set is used as it is."""
    os.environ |= {
        "DJANGO_SETTINGS_MODULE": "course.settings",
        "DATA_DIR": folder,
        "SECRET_KEY": "only-for-the-bench-" * 3,
        "HTTPS": "false",
        "DEBUG": "false",
    }
    import django
    from django.core.management import call_command

    django.setup()
    call_command("migrate", verbosity=0)
    call_command("collectstatic", interactive=False, verbosity=0)


def make_rounds() -> list[tuple[list[Request], list[Request]]]:
    """Each round: as many requests to the floor as answers, each by a learner of its own."""
    requests = [one_answer(number) for number in range(ROUNDS * ANSWERS)]
    rounds = [requests[n * ANSWERS : (n + 1) * ANSWERS] for n in range(ROUNDS)]
    return [([r._replace(path="/floor/", body="") for r in each], each) for each in rounds]


def one_answer(number: int) -> Request:
    """A learner who has signed in, has answered once, and has a question open; their answer."""
    from urllib.parse import urlencode

    from django.contrib.auth import BACKEND_SESSION_KEY, HASH_SESSION_KEY, SESSION_KEY
    from django.contrib.sessions.backends.db import SessionStore
    from django.urls import reverse

    from course.cohorts.models import Person
    from exercises.drills.register import KINDS
    from exercises.practice.attempts import ask, submit
    from tests.answers import right_answer, typed

    kinds = list(KINDS.values())
    learner = Person.objects.create(sign_in_name=f"bench{number}", name=f"Learner {number}")
    before = ask(learner, kinds[(number + 1) % len(kinds)], seed=number)
    submit(before, right_answer(before))
    asked = ask(learner, kinds[number % len(kinds)], seed=number)
    session = SessionStore()
    session[SESSION_KEY] = str(learner.pk)
    session[BACKEND_SESSION_KEY] = "django.contrib.auth.backends.ModelBackend"
    session[HASH_SESSION_KEY] = learner.get_session_auth_hash()
    session.create()
    question = asked.as_question()
    answer = {ask.name: ask.every()[number % len(ask.every())] for ask in question.asks}
    fields = urlencode(typed(question, answer), doseq=True)
    assert session.session_key
    return Request(reverse("drill-answer", args=[asked.token]), fields, session.session_key)


def free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return int(probe.getsockname()[1])


def start_server(port: int, under: Sequence[str] = ()) -> subprocess.Popen[bytes]:
    """gunicorn, run by the program `under` which it is to be watched."""
    command = [*under, sys.executable, "-m", "gunicorn", "tests.bench.floor_site:application"]
    size = ["--workers", "2", "--threads", "8", "--keep-alive", "30"]
    return subprocess.Popen([*command, *size, "--bind", f"127.0.0.1:{port}", "--no-control-socket"])


def wait_for(port: int) -> None:
    for _ in range(100):
        try:
            connection = HTTPConnection("127.0.0.1", port)
            connection.request("GET", "/lessons/")
            connection.getresponse().read()
        except OSError:
            time.sleep(0.1)
        else:
            return
    raise SystemExit("gunicorn did not start")


def rate(port: int, requests: list[Request]) -> float:
    """Requests a second, sent by so many learners at once, each over a connection kept open."""
    shares = [requests[n::LEARNERS] for n in range(LEARNERS)]
    with ThreadPoolExecutor(LEARNERS) as pool:
        begun = time.perf_counter()
        list(pool.map(lambda share: send(port, share), shares))
        return len(requests) / (time.perf_counter() - begun)


def send(port: int, share: list[Request]) -> None:
    connection = HTTPConnection("127.0.0.1", port)
    for request in share:
        headers = {
            "Content-Type": "application/x-www-form-urlencoded",
            "Cookie": f"csrftoken={CSRF}; sessionid={request.session}",
            "X-CSRFToken": CSRF,
            "HX-Request": "true",
        }
        connection.request("POST", request.path, request.body, headers)
        response = connection.getresponse()
        page = response.read()
        assert response.status == 200, (response.status, page[:300])


def report(rates: list[tuple[float, float]]) -> None:
    floors, answers = (list(column) for column in zip(*rates, strict=True))
    print(f"{LEARNERS} learners at once, {ANSWERS} requests a round\n")
    print("round   floor/s   answers/s   ratio")
    for number, (floor, answer) in enumerate(rates, start=1):
        print(f"{number:5}   {floor:7.1f}   {answer:9.1f}   {answer / floor:5.2f}")
    figures: dict[str, Any] = {
        "learners": LEARNERS,
        "floor_per_second": round(statistics.median(floors), 1),
        "answers_per_second": round(statistics.median(answers), 1),
        "ratio": round(statistics.median(answers) / statistics.median(floors), 3),
    }
    print(json.dumps(figures))


if __name__ == "__main__":
    main()
