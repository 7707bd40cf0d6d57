import json
from dataclasses import replace

import pytest

from exercises.drills.settings import Meter, Settings
from exercises.tape import Bench, Rate

OWN = Settings(
    bench=replace(Bench.default(Rate.R29_97), lock=180, erase_gap=0, snr=430),
    drop_frame=True,
    pre_roll=210,
    source_run_up=300,
    meters=frozenset({Meter.VU, Meter.TRACKING}),
)


@pytest.mark.parametrize("rate", Rate)
def test_usual_settings_are_common_practice(rate: Rate) -> None:
    usual = Settings.usual(rate)

    assert usual.bench == Bench.default(rate)
    assert usual.pre_roll == usual.bench.lock == 5 * rate.nominal
    assert usual.source_run_up == 10 * rate.nominal
    assert usual.meters == set(Meter)


@pytest.mark.parametrize("settings", [OWN, Settings.usual()], ids=["own", "usual"])
def test_settings_come_back_from_json_as_they_were(settings: Settings) -> None:
    stored = json.loads(json.dumps(settings.as_json()))

    assert Settings.from_json(stored) == settings
