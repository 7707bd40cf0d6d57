"""The process that decodes: what it may use, and what the site says when that is not enough."""

import logging
import sys
import time
from io import BytesIO
from pathlib import Path

import pytest

from exercises.signal.photographs import PhotographRefused, PhotographsBusy, apart, photograph
from exercises.signal.photographs.apart import drawn_apart
from exercises.signal.photographs.limits import MOST_SCANS
from tests.photographs import file_of, layered, leads

WORK = "The picture takes too much work to read. Save it anew as a plain JPEG, and send that."


def as_process(monkeypatch: pytest.MonkeyPatch, program: str) -> None:
    monkeypatch.setattr(apart, "COMMAND", [sys.executable, "-c", program])


def refusal(content: bytes) -> str:
    with pytest.raises(PhotographRefused) as refused:
        drawn_apart(content)
    return str(refused.value)


def test_picture_that_takes_long_is_given_up(monkeypatch: pytest.MonkeyPatch) -> None:
    """What nobody counted: 3,000 scans, which would take a minute."""
    content = layered(3000, (5000, 5000))
    monkeypatch.setattr(apart, "SECONDS", 1)
    begun = time.process_time()

    assert refusal(content) == WORK
    assert time.process_time() - begun < 0.5  # the site itself does nothing meanwhile


def test_picture_that_takes_much_memory_is_given_up(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(apart, "MEMORY", 120_000_000)

    assert refusal(file_of(leads((5000, 5000)), "PNG")) == WORK


@pytest.mark.parametrize("form", ["PNG", "WEBP"])
def test_largest_picture_has_memory_enough(form: str) -> None:
    content = file_of(leads((5000, 5000), "RGBA"), form)

    assert photograph(BytesIO(content), len(content)).width == 2000


def test_as_many_scans_as_allowed_have_time_enough() -> None:
    content = layered(MOST_SCANS, (5000, 5000))

    assert photograph(BytesIO(content), len(content)).width == 2000


def test_decoder_that_crashes_refuses_the_picture(monkeypatch: pytest.MonkeyPatch) -> None:
    as_process(monkeypatch, "import os; os.abort()")

    assert refusal(b"") == "The picture is broken or cut short. Send it again."


def test_machine_that_does_not_get_to_it_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(apart, "PATIENCE", 0.2)
    as_process(monkeypatch, "import time; time.sleep(60)")
    with pytest.raises(PhotographsBusy):
        drawn_apart(b"")


def test_process_that_can_not_begin_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(apart, "COMMAND", ["no-such-program"])
    with pytest.raises(PhotographsBusy):
        drawn_apart(b"")


def test_fault_of_our_own_is_logged_and_blames_no_picture(
    monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    as_process(monkeypatch, "raise ImportError('no decoder')")
    with caplog.at_level(logging.ERROR), pytest.raises(PhotographsBusy):
        drawn_apart(b"")

    assert "no decoder" in caplog.text


def test_process_knows_none_of_the_site_s_secrets(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("SECRET_KEY", "of the site")
    as_process(monkeypatch, "import os; print(sorted(os.environ))")

    assert b"SECRET_KEY" not in drawn_apart(b"")


def test_process_can_write_no_file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """By the worker's own limits: what it runs in the decoder's stead is a program that writes."""
    target = tmp_path / "written"
    program = (
        "import pathlib, sys; from exercises.signal.photographs import drawing, worker\n"
        f"drawing.drawn_anew = pathlib.Path({str(target)!r}).write_bytes\n"
        "sys.exit(worker.main(*sys.argv[1:]))"
    )
    as_process(monkeypatch, program)
    with pytest.raises(PhotographsBusy):
        drawn_apart(b"something")

    assert not target.read_bytes()
