"""Levels on paper against the standards' own figures, in volts.

Sources: 0 VU is +4 dBu, 1.2277 V (IEC 60268-17, ANSI C16.5-1942); its scale ends at +3. White
is 714.3 mV over blanking at 100 IRE, 1 IRE is 7.143 mV (SMPTE 170M). Of the bands, 1 dB at
line-up and 2 IRE: operating tolerances, from memory.
"""

import re

import pytest

from exercises.drills.paper_levels import PAPER_LEVELS

LINE_UP = 1.2277  # V
END = LINE_UP * 10 ** (3 / 20)
WHITE = 714.3  # mV
IRE = 7.143  # mV


def reading(text: str) -> int:
    found = re.search(r"([+−]?\d+) (VU|IRE)", text)
    assert found is not None
    return int(found[1].replace("−", "-"))


@pytest.mark.parametrize("seed", range(200))
def test_turn_brings_the_level_to_its_standard(seed: int) -> None:
    question = PAPER_LEVELS.make(seed)
    shown = reading(question.shown["facts"][1][1])
    turn = question.right["turn"]

    if question.asks[0].as_json()["unit"] == "IRE":
        assert (shown + turn) * IRE == pytest.approx(WHITE, rel=1e-3)
        assert question.key["band"] == 2
        return
    volts = LINE_UP * 10 ** (shown / 20)
    assert volts <= END
    assert volts * 10 ** (turn / 20) == pytest.approx(LINE_UP)
    assert question.key["band"] == 1


def test_whoever_takes_hotter_for_safer_goes_to_the_end_of_the_scale() -> None:
    tones = [PAPER_LEVELS.make(seed) for seed in range(400)]
    tone = next(each for each in tones if each.situation.startswith("tone"))
    (_, _), (held, hot) = tone.key["believed"]
    shown = reading(tone.shown["facts"][1][1])

    assert held == ["hotter-is-better"]
    assert LINE_UP * 10 ** ((shown + hot["turn"]) / 20) == pytest.approx(END)
