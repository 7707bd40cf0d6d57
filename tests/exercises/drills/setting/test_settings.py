import json
from dataclasses import replace

import pytest

from exercises.drills.setting.settings import Meter, Settings
from exercises.tape import Bench, Rate

OWN = Settings(
    bench=replace(Bench.default(Rate.R29_97), lock=180, erase_gap=0, snr=430, drop_frame=True),
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


@pytest.mark.parametrize("settings", [OWN, *map(Settings.usual, Rate)])
def test_bench_that_can_be_has_no_refusals(settings: Settings) -> None:
    assert settings.refusals() == {}


def test_every_figure_beyond_its_limit_is_refused() -> None:
    second = OWN.bench.rate.nominal
    low = replace(
        OWN,
        bench=replace(OWN.bench, lock=second - 1, relock=0, erase_gap=-1),
        pre_roll=second - 1,
        source_run_up=0,
    )
    high = replace(
        OWN,
        bench=replace(OWN.bench, lock=601, relock=602, erase_gap=301),
        pre_roll=601,
        source_run_up=1801,
    )

    figures = {"pre_roll", "source_run_up", "lock", "relock", "erase_gap"}
    assert set(low.refusals()) == figures
    assert set(high.refusals()) == figures - {"lock"}
