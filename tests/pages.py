"""What a page says, read out of its HTML."""

from html.parser import HTMLParser
from typing import Any, Protocol

VOID = {"area", "br", "hr", "img", "input", "link", "meta", "rect", "path", "source", "wbr"}


class Page(Protocol):
    """Any response that has a page in it, from a test client too."""

    @property
    def content(self) -> Any: ...


class Reader(HTMLParser):
    """Collects the text of every element that has a tag, and a class if one is given."""

    def __init__(self, tag: str, css_class: str) -> None:
        super().__init__()
        self.tag, self.css_class = tag, css_class
        self.open: list[bool] = []
        self.found: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag in VOID:
            return
        classes = (dict(attrs).get("class") or "").split()
        wanted = tag == self.tag and (not self.css_class or self.css_class in classes)
        if wanted:
            self.found.append("")
        self.open.append(wanted)

    def handle_endtag(self, tag: str) -> None:
        if tag not in VOID:
            self.open.pop()

    def handle_data(self, data: str) -> None:
        if any(self.open):
            self.found[-1] += data


def texts(response: Page, tag: str, css_class: str = "") -> list[str]:
    """The text of each such element, its spaces made single."""
    reader = Reader(tag, css_class)
    reader.feed(response.content.decode())
    return [" ".join(text.split()) for text in reader.found]


def heading(response: Page) -> str:
    (text,) = texts(response, "h1")
    return text


def notices(response: Page) -> list[str]:
    """What the page says at its top about what was done."""
    return texts(response, "li", "notice")


def refusals(response: Page) -> list[str]:
    """What the page says is wrong: with the form as a whole, then with its fields."""
    lists = texts(response, "ul", "errorlist")
    return texts(response, "p", "notice") + lists
