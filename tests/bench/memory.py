"""What one worker of the site holds in memory: ``python -m tests.bench.memory``.

The demo is served by one gunicorn worker with 8 threads, as `start` would. Eight browsers at once
ask for all that an instructor, a learner and newcomers find: every page that a link leads to, every
picture and sound on them, nothing kept from before. Counted is what the system counts as the
worker's own (resident set), at the beginning, at most, and after each round of all that.
"""

import json
import os
import re
import subprocess
import sys
import tempfile
import threading
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from html import unescape
from http.client import HTTPConnection
from pathlib import Path
from shutil import rmtree
from urllib.parse import urljoin, urlsplit

from tests.bench.answer import free_port, prepare, wait_for

THREADS = 8
NEWCOMERS = 6
ROUNDS = 2
GOAL = 250  # MB
LINK = re.compile(r'(?:href|src|data-src)="([^"#]+)')
ELSEWHERE = ("/static/", "/admin/", "/sign-")


def main() -> None:
    with tempfile.TemporaryDirectory(prefix="run-up-bench-") as folder:
        prepare(folder)
        browsers = people()
        with served() as (port, worker), watched(worker) as most:
            wait_for(port)
            first = resident(worker)
            held = []
            for _ in range(ROUNDS):
                rmtree(Path(folder) / "cache-made", ignore_errors=True)
                asked = sum(everything(port, session) for session in browsers)
                held.append(resident(worker))
            report(first, most[0], held, asked, processor(worker))


def people() -> list[str]:
    """The sessions of an instructor and a learner of the demo, and of newcomers who have begun."""
    from django.core.management import call_command

    from course.cohorts.models import Person
    from exercises.demo.cast import INSTRUCTOR, LEARNERS
    from exercises.drills.register import KINDS
    from exercises.practice.attempts import ask

    call_command("demo")
    cast = [Person.objects.get(sign_in_name=INSTRUCTOR[0])]
    cast.append(Person.objects.get(sign_in_name=LEARNERS[0].sign_in_name))
    for number in range(NEWCOMERS):
        newcomer = Person.objects.create(sign_in_name=f"bench{number}", name=f"Newcomer {number}")
        for kind in KINDS.values():
            ask(newcomer, kind, seed=number)
        cast.append(newcomer)
    return [session_of(person) for person in cast]


def session_of(person: object) -> str:
    from django.test import Client

    from course.cohorts.models import Person

    assert isinstance(person, Person)
    browser = Client()
    browser.force_login(person)
    return browser.cookies["sessionid"].value


@contextmanager
def served() -> Iterator[tuple[int, int]]:
    """The port, and the process of the one worker."""
    port = free_port()
    command = [sys.executable, "-m", "gunicorn", "course.wsgi", "--bind", f"127.0.0.1:{port}"]
    size = ["--workers", "1", "--threads", str(THREADS), "--timeout", "300"]
    server = subprocess.Popen([*command, *size, "--no-control-socket"])
    try:
        children = Path(f"/proc/{server.pid}/task/{server.pid}/children")
        while not (found := children.read_text().split()):
            time.sleep(0.1)
        yield port, int(found[0])
    finally:
        server.terminate()
        server.wait()


def resident(process: int) -> float:
    """MB."""
    status = Path(f"/proc/{process}/status").read_text()
    return int(re.findall(r"VmRSS:\s+(\d+) kB", status)[0]) * 1024 / 1e6


def processor(process: int) -> float:
    """Seconds of a processor that it has used (proc(5): fields 14 and 15 of stat)."""
    fields = Path(f"/proc/{process}/stat").read_text().rpartition(")")[2].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


@contextmanager
def watched(process: int) -> Iterator[list[float]]:
    """The most that it held so far, looked at ten times a second."""
    most, over = [0.0], threading.Event()

    def watch() -> None:
        while not over.wait(0.1):
            most[0] = max(most[0], resident(process))

    watcher = threading.Thread(target=watch)
    watcher.start()
    try:
        yield most
    finally:
        over.set()
        watcher.join()


def everything(port: int, session: str) -> int:
    """Ask for all that links lead to from the front page on; how many addresses that were."""
    seen, new = {"/"}, {"/"}
    with ThreadPoolExecutor(THREADS) as pool:
        while new:
            found = pool.map(lambda path: links_of(port, session, path), sorted(new))
            new = set().union(*found) - seen
            seen |= new
    return len(seen)


def links_of(port: int, session: str, path: str) -> set[str]:
    connection = HTTPConnection("127.0.0.1", port, timeout=300)
    connection.request("GET", path, headers={"Cookie": f"sessionid={session}"})
    response = connection.getresponse()
    content = response.read()
    connection.close()
    assert response.status < 500, (path, response.status)
    if "html" not in response.headers.get("Content-Type", ""):
        return set()
    links = {urljoin(path, unescape(link)) for link in LINK.findall(content.decode())}
    return {link for link in links if worth_asking(link)}


def worth_asking(link: str) -> bool:
    """An address of the site; of a list in several orders, one is enough."""
    parts = urlsplit(link)
    return not (parts.netloc or parts.scheme or parts.query or link.startswith(ELSEWHERE))


def report(first: float, most: float, held: list[float], asked: int, took: float) -> None:
    print(f"{asked} addresses a round, {THREADS} at once, {took:.0f} s of a processor in all\n")
    print(f"{'':24}{'MB':>8}   (goal after a round: {GOAL})")
    sizes = {"one page": first, "at most": most}
    sizes |= {f"after round {number}": size for number, size in enumerate(held, start=1)}
    for name, size in sizes.items():
        print(f"{name:24}{size:8.0f}")
    print(json.dumps({name: round(size) for name, size in sizes.items()} | {"s": round(took)}))


if __name__ == "__main__":
    main()
