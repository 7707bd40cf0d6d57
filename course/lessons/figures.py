"""Checks of claims about benches, and about noise through a chain of copies."""

import math

from course.lessons.lesson import Answer, Lesson
from exercises.tape import Bench, Rate, noise

MINUTES = 120  # seconds: what is shorter is told in seconds


def duration(frames: int, rate: Rate) -> str:
    """Frames in words: “2 seconds”, “1 second 5 frames”, “3 frames”; from 2 minutes on in those."""
    seconds, rest = divmod(frames, rate.nominal)
    minutes, seconds = divmod(seconds, 60) if seconds >= MINUTES else (0, seconds)
    counts = {"minute": minutes, "second": seconds, "frame": rest}
    return listed_counts(counts) or "0 seconds"


def listed_counts(counts: dict[str, int]) -> str:
    return " ".join(f"{n} {word}{'' if n == 1 else 's'}" for word, n in counts.items() if n)


def frames_in(lesson: Lesson, *, milliseconds: int, rate: str) -> Answer:
    """How many frames a stretch of time lasts, to the nearest: “5 frames”."""
    return f"{round(milliseconds * Rate(rate).fraction / 1000)} frames"


def bench_figure(lesson: Lesson, *, figure: str, rate: str) -> Answer:
    """A default of the bench: lock, relock or erase_gap."""
    bench = Bench.default(Rate(rate))
    return duration(getattr(bench, figure), bench.rate)


def pulses_a_second(lesson: Lesson, *, rate: str) -> Answer:
    return f"{float(Rate(rate).fraction):.2f}".removesuffix(".00")


def pulse_spacing(lesson: Lesson, *, millimetres_a_second: float, rate: str) -> Answer:
    """Millimetres of tape between two pulses, one pulse a frame."""
    return f"{millimetres_a_second / float(Rate(rate).fraction):.2f}"


def stripe_width(
    lesson: Lesson, *, millimetres_a_second: float, degrees: float, rate: str
) -> Answer:
    """Millimetres from stripe to stripe, two stripes a frame, at this angle to the tape."""
    along = millimetres_a_second / (2 * float(Rate(rate).fraction))
    return f"{along * math.sin(math.radians(degrees)):.2f}"


def chain_snr(lesson: Lesson, *, chain: list[float]) -> Answer:
    """Signal-to-noise in dB through a chain of recordings: their noise powers add."""
    return f"{noise.chain_snr(chain):.1f}"


def noise_grade(lesson: Lesson, *, grade: int) -> Answer:
    """Signal-to-noise in dB at a grade of ITU-R BT.500, by the CCIR formula."""
    return f"{noise.grade_snr(grade):.1f}"


def copies_cost(lesson: Lesson, *, copies: int) -> Answer:
    """What so many recordings alike cost in signal-to-noise, in whole dB, against one."""
    return f"{-noise.equal_copies_snr(0, copies):.0f} dB"
