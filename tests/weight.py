"""How much a browser must fetch before a page stands, as a server sends it."""

import gzip
import re
from functools import cache
from pathlib import Path

import brotli
from django.contrib.staticfiles import finders

HEAVIEST = 100_000


def assets(page: str) -> set[str]:
    """The static files that the page asks for."""
    return set(re.findall(r'(?:href|src)="/static/([^"]+)"', page))


@cache
def sent(name: str) -> int:
    """Bytes of a static file as it is sent: brotli, where that helps."""
    path = finders.find(name)
    assert path, f"{name} is not among the static files"
    content = Path(path).read_bytes()
    return len(content) if name.endswith(".woff2") else len(brotli.compress(content))


def weight(page: bytes) -> int:
    files = {name for name in assets(page.decode()) if not name.endswith(".svg")}
    return len(gzip.compress(page, 6)) + sum(map(sent, files))
