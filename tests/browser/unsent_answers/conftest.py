from collections.abc import Iterator

import pytest
from playwright.sync_api import BrowserContext, Page
from pytest_django.live_server_helper import LiveServer

from course.cohorts.models import Person
from tests.browser.site import enter_as


@pytest.fixture
def page(live_server: LiveServer, context: BrowserContext, mina: Person) -> Iterator[Page]:
    """Mina's, signed in."""
    enter_as(context, live_server.url, mina)
    page = context.new_page()
    yield page
    page.close()
