"""A real Chromium: the system's own. In CI it must be there; elsewhere its absence is told."""

import os
import shutil
from typing import Any

import pytest

# Playwright runs an event loop in the test's thread; Django would refuse its database there.
os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"] = "true"

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
