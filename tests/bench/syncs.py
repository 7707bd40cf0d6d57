"""How often an answer has the disk written through: fsync and fdatasync, as strace counts them.

Answers come one after another, each by a learner of their own, over one connection. The first few
are not counted: threads open their database then. On SQLite; PostgreSQL syncs in its own process.
"""

import json
import os
import shutil
import tempfile
from collections import Counter
from pathlib import Path

from tests.bench.answer import Request, free_port, one_answer, prepare, send, start_server, wait_for

ANSWERS = 100
FIRST = 20
CALLS = ("fsync", "fdatasync")


def main() -> None:
    if not shutil.which("strace"):
        raise SystemExit("This bench needs strace.")
    os.environ.pop("DATABASE_URL", None)
    with tempfile.TemporaryDirectory(prefix="run-up-bench-") as folder:
        prepare(folder)
        requests = [one_answer(number) for number in range(FIRST + ANSWERS)]
        close_own()
        report(counted(requests, Path(folder) / "calls"))


def close_own() -> None:
    """This process leaves the database to the site: its connection would keep the WAL there."""
    from django.db import connections

    connections.close_all()


def counted(requests: list[Request], calls: Path) -> Counter[str]:
    """The calls that all but the first requests cost."""
    port = free_port()
    # -D: the server itself is the process that was started, and can be ended.
    tracing = ["strace", "-D", "-f", "-qq", "-e", f"trace={','.join(CALLS)}", "-o", str(calls)]
    server = start_server(port, under=tracing)
    try:
        wait_for(port)
        send(port, requests[:FIRST])
        before = made(calls)
        send(port, requests[FIRST:])
        return made(calls) - before
    finally:
        server.terminate()
        server.wait()


def made(calls: Path) -> Counter[str]:
    """Each kind of call made so far; one that another thread interrupts has two lines."""
    lines = calls.read_text().splitlines()
    begun = [line.split(maxsplit=1)[1] for line in lines if "resumed>" not in line]
    return Counter(name for line in begun for name in CALLS if line.startswith(f"{name}("))


def report(calls: Counter[str]) -> None:
    print(f"{ANSWERS} answers, one after another\n")
    print("call        an answer")
    figures = {name: round(calls[name] / ANSWERS, 2) for name in CALLS}
    for name, number in figures.items():
        print(f"{name:10}  {number:9.2f}")
    print(json.dumps({"answers": ANSWERS, **figures}))


if __name__ == "__main__":
    main()
