"""A site of a test under its web server, and a browser that signs in there."""

import re
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from http.cookiejar import CookieJar
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import NamedTuple
from urllib.error import HTTPError
from urllib.parse import urlencode
from urllib.request import HTTPCookieProcessor, OpenerDirector, build_opener

from tests.once import once
from tests.sites import ROOT, Site

QUAY_STREETS_PASSWORD = "run-up at quay street"


class Answer(NamedTuple):
    status: int
    page: str
    address: str


class Visitor:
    """Somebody at a browser."""

    def __init__(self, site: str) -> None:
        self.site, self.cookies = site, CookieJar()
        self.opener: OpenerDirector = build_opener(HTTPCookieProcessor(self.cookies))

    def get(self, path: str) -> Answer:
        return self.ask(path, None)

    def post(self, path: str, **fields: str) -> Answer:
        """Send a form, as the page of a form does."""
        token = next((each.value for each in self.cookies if each.name == "csrftoken"), "")
        return self.ask(path, urlencode({"csrfmiddlewaretoken": token, **fields}).encode())

    def ask(self, path: str, form: bytes | None) -> Answer:
        try:
            with self.opener.open(self.site + path, form, timeout=60) as answer:
                return Answer(answer.status, answer.read().decode(), answer.url)
        except HTTPError as error:
            with error:
                return Answer(error.code, error.read().decode(), error.url or "")

    def sign_in(self, name: str, password: str = QUAY_STREETS_PASSWORD) -> Answer:
        self.get("/sign-in/")
        return self.post("/sign-in/", sign_in_name=name, password=password)


@contextmanager
def served(site: Site, *, port: int = 0) -> Iterator[str]:
    """The address of the site while gunicorn serves it, with as many threads as README.md says.

    At the `port`, or at any that is free.
    """
    give_static_files(site)
    port = port or free_port()
    command = [sys.executable, "-m", "gunicorn", "course.wsgi", "--no-control-socket"]
    size = ["--workers", "1", "--threads", "8", "--bind", f"127.0.0.1:{port}"]
    server = subprocess.Popen([*command, *size], cwd=ROOT, env=site.environment())
    try:
        wait_for(port)
        yield f"http://127.0.0.1:{port}"
    finally:
        server.terminate()
        server.wait(20)


def give_static_files(site: Site) -> None:
    """As `collectstatic` does."""
    folder = site.data / "static"
    if not folder.exists():
        folder.symlink_to(once("static", collect))


def collect(folder: Path) -> None:
    """They are the same for every site."""
    with TemporaryDirectory(dir=folder.parent) as data:
        Site(Path(data)).manage("collectstatic", "--no-input", "--verbosity=0")
        Path(data, "static").rename(folder)


def free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return int(probe.getsockname()[1])


def wait_for(port: int) -> None:
    for _ in range(240):
        with socket.socket() as probe:
            if probe.connect_ex(("127.0.0.1", port)) == 0:
                return
        time.sleep(0.25)
    raise AssertionError("gunicorn did not start")


def heading(page: str) -> str:
    found = re.search(r"<h1[^>]*>(.*?)</h1>", page, re.DOTALL)
    return " ".join(re.sub(r"<[^>]+>", "", found[1]).split()) if found else ""


def question_in_words(visitor: Visitor) -> tuple[str, str]:
    """Where the answer to an open question goes, and the name of its field."""
    page = visitor.get("/drills/free-answer/").page
    action = re.search(r'action="(/answers/[^"]+|/drills/[^"]*answer[^"]*)"', page)
    field = re.search(r'<textarea[^>]* name="([^"]+)"', page)
    assert action, page
    assert field, page
    return action[1], field[1]
