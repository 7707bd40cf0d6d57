"""What all blocks have in common that show something, or let it be heard."""

from abc import ABC, abstractmethod
from dataclasses import dataclass
from typing import Any, ClassVar

from course.lessons.blocks.given import Given
from exercises.drills.asks import Json

KEYS = ("name", "title", "caption")


@dataclass(frozen=True, kw_only=True)
class Figure(ABC):
    """`part` is the block's own word, and the name of its template in `lessons/blocks/`."""

    part: ClassVar[str]
    is_figure: ClassVar[bool] = True
    is_seen: ClassVar[bool] = True  # it counts as a diagram
    in_details: ClassVar[bool] = True  # its words are not on the page otherwise

    name: str
    title: str
    caption: str

    @property
    def id(self) -> str:
        """Apart from the names of sections, which may be the same word."""
        return f"{self.part}-{self.name}"

    @property
    def template(self) -> str:
        return f"lessons/blocks/{self.part}.html"

    @abstractmethod
    def sentences(self) -> list[str]:
        """All that it shows, in full sentences, for those who don't see it."""

    def media(self) -> list[Json]:
        """The pictures and sounds that are made for it; see `exercises.drills.media.medium`."""
        return []

    def texts(self) -> list[str]:
        return [self.title, self.caption]


def common(given: Given) -> dict[str, Any]:
    """The keys that every figure has."""
    return {"name": given.name(), "title": given.text("title"), "caption": given.text("caption")}
