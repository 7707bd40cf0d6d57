"""What it costs to hear a tape, and to meter it: ``python -m tests.bench.sound``.

Times are processor time, given as how much faster than the tape plays. Memory is what
Python and numpy hold at most beside the loops that are kept anyway.
"""

import json
import time
import tracemalloc
from collections.abc import Callable

from exercises.signal.meters import vu
from exercises.signal.sound.hearing import Hearing
from exercises.signal.sound.noise import room_tone
from exercises.signal.sound.samples import RATE
from exercises.signal.sound.soundtrack import Soundtrack
from exercises.signal.sound.wav import file, sixteen_bits
from exercises.signal.speech.line import lines
from exercises.signal.speech.reel import reel
from exercises.tape import (
    Assemble,
    Bench,
    Machines,
    Rate,
    SoundLevel,
    Source,
    Take,
    Tape,
    record,
)
from exercises.tape.machines import SoundMode

BENCH = Bench.default(Rate.R25)
SECOND = 25
LONG = 600 * SECOND
KNOB = range(-200, 210, 10)


def hearing(setting: SoundLevel, *, seconds: int) -> Hearing:
    """So much of ten minutes of talk, recorded at this setting."""
    names = sorted(lines()) * 20
    soundtracks = {"talk": Soundtrack(reel(*names, begin=6000), room_tone())}
    source = Source("talk", (Take(0, LONG + 10 * SECOND),))
    edit = Assemble(source, in_=150, out=150 + LONG, at=0, machines=Machines(sound=setting))
    tape = record(Tape.blank(LONG + 100), edit, BENCH, 0)
    return Hearing(tape, BENCH, soundtracks, SECOND, SECOND * (1 + seconds))


def processor_time(work: Callable[[], object]) -> float:
    work()
    began = time.process_time()
    work()
    return time.process_time() - began


def most_memory(seconds: int) -> int:
    """Bytes while so much is streamed."""
    heard = hearing(SoundLevel(SoundMode.AUTOMATIC), seconds=seconds)
    tracemalloc.start()
    for piece in heard.stream():
        sixteen_bits(piece)
    held = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    return held


def knob_positions() -> None:
    """Six seconds at each position of a knob: the clip, and the needle over it."""
    for gain in KNOB:
        samples = hearing(SoundLevel(SoundMode.LIMITER, gain), seconds=6).samples()
        file(samples)
        vu.readings(samples)


def main() -> None:
    figures: dict[str, float] = {}
    for mode in SoundMode:
        heard = hearing(SoundLevel(mode, 60), seconds=60)
        figures[f"heard {mode}, times real time"] = 60 / processor_time(heard.samples)
    samples = hearing(SoundLevel(), seconds=60).samples()
    figures["metered, times real time"] = 60 / processor_time(lambda: vu.deflections(samples))
    figures[f"{len(KNOB)} knob positions of 6 s, s"] = processor_time(knob_positions)
    most_memory(2)
    for seconds in (10, 100, 500):
        figures[f"memory for {seconds} s, kB"] = most_memory(seconds) / 1000
    figures["a second as 16 bits, kB"] = 2 * RATE / 1000
    rounded = {name: round(value, 2) for name, value in figures.items()}
    for name, value in rounded.items():
        print(f"{name:32} {value:12,.2f}")
    print(json.dumps(rounded))


if __name__ == "__main__":
    main()
