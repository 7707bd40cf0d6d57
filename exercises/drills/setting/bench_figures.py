"""A bench as its instructor describes it: figures for drills, and words for people."""

from dataclasses import dataclass
from typing import Self

from exercises.drills.setting.settings import Settings


@dataclass(frozen=True, slots=True, kw_only=True)
class BenchFigures:
    """`name` is empty for the usual figures, which are common practice and no bench's own."""

    settings: Settings
    name: str = ""
    local_rules: str = ""
    who_to_ask: str = ""

    @classmethod
    def usual(cls) -> Self:
        return cls(settings=Settings.usual())

    def as_settings(self) -> Settings:
        return self.settings

    @property
    def rules(self) -> list[str]:
        """The rules of the workshop, one a line."""
        return [line.strip() for line in self.local_rules.splitlines() if line.strip()]
