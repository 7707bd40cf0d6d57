"""A real Chromium: the system's own. In CI it must be there; elsewhere its absence is told."""

import os
import shutil
import time
from collections.abc import Callable, Iterator
from typing import Any

import pytest
from django.contrib.staticfiles.handlers import StaticFilesHandler
from django.http import HttpRequest
from django.http.response import HttpResponseBase
from playwright.sync_api import expect

# Playwright runs an event loop in the test's thread; Django would refuse its database there.
os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"] = "true"

expect.set_options(timeout=20_000)  # milliseconds: the machine may have other work too

CHROMIUM = next(filter(None, map(shutil.which, ("chromium", "chromium-browser"))), None)
NO_CHROMIUM = "There is no Chromium on the path: THE BROWSER TESTS ARE NOT RUN."
FLAGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--no-first-run",
]

Serve = Callable[[StaticFilesHandler, HttpRequest], HttpResponseBase]


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    for item in items:
        if "tests/browser" not in item.path.as_posix():
            continue
        item.add_marker(pytest.mark.browser)
        item.add_marker(pytest.mark.django_db(transaction=True))
        if not CHROMIUM and not os.environ.get("CI"):
            item.add_marker(pytest.mark.skip(reason=NO_CHROMIUM))


@pytest.fixture(scope="session")
def browser_type_launch_args(browser_type_launch_args: dict[str, Any]) -> dict[str, Any]:
    assert CHROMIUM, NO_CHROMIUM
    return {**browser_type_launch_args, "executable_path": CHROMIUM, "args": FLAGS}


@pytest.fixture(autouse=True, scope="session")
def static_files() -> Iterator[None]:
    """A browser asks for each once, as from a server.

    Where `LATE_SCRIPTS` is set, every script comes so many seconds after it was asked for. What a
    test looks at before its page is ready then shows. `--slowmo 300` shows the other kind: what a
    test looks for after the page has gone on.
    """
    late = float(os.environ.get("LATE_SCRIPTS", "0"))
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(StaticFilesHandler, "serve", serving(late, StaticFilesHandler.serve))
        yield


def serving(late: float, serve: Serve) -> Serve:
    def serve_file(handler: StaticFilesHandler, request: HttpRequest) -> HttpResponseBase:
        response = serve(handler, request)
        is_late = late and request.path.endswith(".js")
        if is_late:
            time.sleep(late)
        # A late one is asked for again, or only the first page would wait.
        response["Cache-Control"] = "no-store" if is_late else "max-age=3600"
        return response

    return serve_file
