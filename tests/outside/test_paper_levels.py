"""Levels on paper against the standards' own figures, in volts.

Sources: 0 VU is +4 dBu, 1.2277 V (IEC 60268-17, ANSI C16.5-1942); its scale ends at +3. White
is 714.3 mV over blanking at 100 IRE, 1 IRE is 7.143 mV, black 7.5 IRE (SMPTE 170M); at 625 lines
white is 700 mV and black 0 (ITU-R BT.1700). Bars by their four levels: ITU-R BT.471; 75 % white
is 76.9 IRE (SMPTE EG 1), 525 mV at 625 lines (EBU D 23). Ambience 10 dB under the loudest speech:
common practice. Of the bands, 1 dB at line-up, 2 IRE at white, 1 IRE at black: operating
tolerances, from memory.
"""

import re
from collections.abc import Iterator

import pytest

from exercises.drills.kinds.levels_on_paper import KIND as PAPER_LEVELS
from exercises.drills.question import Question
from tests.exercises.drills.made import many

LINE_UP = 1.2277  # V
END = LINE_UP * 10 ** (3 / 20)
IRE = 7.143  # mV
WHITE = {"IRE": 714.3, "mV": 700}
BARS = {"75/7.5/75/7.5": 549.1, "100/7.5/75/7.5": 714.3, "75/0/75/0": 525, "100/0/75/0": 700}
BLACK = {"IRE": 53.6, "mV": 0}
UNDER_SPEECH = {"ambience": 10}  # dB
BANDS = {"dB": 1, "IRE": 2, "mV": 14}


def asked() -> Iterator[tuple[int, Question]]:
    """Seeds, and what is asked; where that is no level, left out."""
    for seed, question in enumerate(many(PAPER_LEVELS, 300)):
        if "turn" in question.right:
            yield seed, question


def reading(question: Question) -> float:
    text = question.shown["facts"][-1][1]
    found = re.search(r"([+−]?[\d.]+) (VU|IRE|mV)", text)
    assert found is not None
    return float(found[1].replace("−", "-"))


def belongs(question: Question, unit: str) -> float:
    """mV at which a picture level belongs."""
    if question.situation == "bars":
        named = re.search(r"bars (\S+),", dict(question.shown["facts"])["On the card"])
        assert named is not None
        return BARS[named[1]]
    return (BLACK if question.situation == "black" else WHITE)[unit]


def test_turn_brings_the_level_to_its_standard() -> None:
    """IEC 60268-17, SMPTE 170M, ITU-R BT.1700 and BT.471, in volts; ambience by common practice."""
    for seed, question in asked():
        level = reading(question) + question.right["turn"]
        unit = question.asks[0].as_json()["unit"]

        if unit == "dB":
            under = UNDER_SPEECH.get(question.situation, 0)
            volts = LINE_UP / 10 ** (under / 20)
            assert LINE_UP * 10 ** (level / 20) == pytest.approx(volts), seed
        else:
            millivolts = level * (IRE if unit == "IRE" else 1)
            assert millivolts == pytest.approx(belongs(question, unit), abs=1), seed


@pytest.mark.parametrize("unit", BANDS)
def test_band_is_what_benches_work_to(unit: str) -> None:
    """From memory: operating tolerances."""
    bands = {
        each.situation: each.key["band"]
        for _, each in asked()
        if each.asks[0].as_json()["unit"] == unit
    }

    assert {bands.pop("ambience", 2), bands.pop("black", BANDS[unit] / 2)} == {2, BANDS[unit] / 2}
    assert set(bands.values()) == {BANDS[unit]}


def test_whoever_takes_hotter_for_safer_goes_to_the_end_of_the_scale() -> None:
    """IEC 60268-17: the scale ends at +3 VU."""
    tone = next(each for _, each in asked() if each.situation == "tone")
    (_, _), (held, hot) = tone.believed

    assert held == ["hotter-is-better"]
    assert LINE_UP * 10 ** ((reading(tone) + hot["turn"]) / 20) == pytest.approx(END)
